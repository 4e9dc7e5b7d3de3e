package weekwright.funds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import weekwright.base.Money;
import weekwright.build.Settings;

/** Every counted balance against what the books said without it. */
public final class Counts {
    private Counts() {}

    /**
     * @param books what the rows since the count before come to
     * @param difference counted less books; plus when there is more money than the books say
     */
    public record Count(LedgerEntry entry, Money books, Money difference) {}

    /** In the order of their days; those of the day on which the books open say how the opening cash is parted. */
    public static List<Count> of(Settings settings, List<LedgerEntry> ledger) {
        List<Count> counts = new ArrayList<>();
        ledger.stream()
                .filter(entry ->
                        entry.kind() == LedgerEntry.Kind.COUNTED && entry.date().isAfter(settings.openingDate()))
                .sorted(Comparator.comparing(LedgerEntry::date))
                .forEach(entry -> {
                    LocalDate day = entry.date();
                    List<LedgerEntry> without = ledger.stream()
                            .filter(other -> other != entry
                                    && (other.kind() != LedgerEntry.Kind.COUNTED
                                            || other.date().isBefore(day)))
                            .toList();
                    Money books = Balance.accounts(day, settings, without).getOrDefault(entry.account(), Money.ZERO);
                    counts.add(new Count(entry, books, entry.amount().minus(books)));
                });
        return counts;
    }
}
