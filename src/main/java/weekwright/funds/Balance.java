package weekwright.funds;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.base.Money;
import weekwright.build.Settings;

/**
 * Money in the bank on the evening of a day, by rule 85: for each account the last counted balance and the rows after its
 * day; without one, the rows from the opening day on, and the opening cash on the account of the earliest row. Exact
 * sums; throws ArithmeticException past 64 bits.
 */
public final class Balance {
    private Balance() {}

    /** All accounts together. */
    public static Money on(LocalDate day, Settings settings, List<LedgerEntry> ledger) {
        return accounts(day, settings, ledger).values().stream().reduce(Money.ZERO, Money::plus);
    }

    /** By account; the project's one account has the empty name. */
    public static Map<String, Money> accounts(LocalDate day, Settings settings, List<LedgerEntry> ledger) {
        Map<String, LocalDate> counted = new LinkedHashMap<>();
        Map<String, Money> sums = new LinkedHashMap<>();
        String opening = ledger.stream().findFirst().map(LedgerEntry::account).orElse("");
        if (ledger.stream().anyMatch(entry -> entry.account().isEmpty())) {
            opening = "";
        }
        if (!day.isBefore(settings.openingDate())) {
            sums.put(opening, settings.openingCash());
        }
        for (LedgerEntry entry : ledger) {
            boolean later =
                    counted.get(entry.account()) == null || !entry.date().isBefore(counted.get(entry.account()));
            if (entry.kind() == LedgerEntry.Kind.COUNTED && !entry.date().isAfter(day) && later) {
                counted.put(entry.account(), entry.date());
                sums.put(entry.account(), entry.amount());
            }
        }
        for (LedgerEntry entry : ledger) {
            LocalDate last = counted.get(entry.account());
            boolean counts = last == null
                    ? !entry.date().isBefore(settings.openingDate())
                    : entry.date().isAfter(last);
            if (entry.kind() != LedgerEntry.Kind.COUNTED
                    && counts
                    && !entry.date().isAfter(day)) {
                sums.merge(entry.account(), entry.amount(), Money::plus);
            }
        }
        return sums;
    }
}
