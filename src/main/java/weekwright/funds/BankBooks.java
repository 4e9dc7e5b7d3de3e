package weekwright.funds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Money;

/** What the books know of the rows of a bank's file: which of them they have already, and what such rows were before. */
public final class BankBooks {
    private static final String AS_WRITTEN = "In the file: ";

    private BankBooks() {}

    /**
     * An entry of the books with a row's day, amount and account.
     *
     * @param sure the name or the reference is the same, too
     */
    public record Twin(LedgerEntry entry, boolean sure) {}

    /** What a row is likely to be. */
    public record Suggestion(LedgerEntry.Kind kind, Optional<Id> stage, String payee) {}

    private record Key(LocalDate date, Money amount) {}

    /**
     * For each row the entry that it is, by content. An entry answers for one row only, so that two equal payments of one
     * day of which the books have one leave one that is new; those with the same name go first.
     */
    public static List<Optional<Twin>> twins(List<BankRow> rows, List<LedgerEntry> ledger, String account) {
        Map<Key, List<LedgerEntry>> open = new HashMap<>();
        ledger.stream()
                .filter(entry -> entry.account().equals(account) && entry.kind() != LedgerEntry.Kind.COUNTED)
                .forEach(entry -> open.computeIfAbsent(new Key(entry.date(), entry.amount()), k -> new ArrayList<>())
                        .add(entry));
        Twin[] found = new Twin[rows.size()];
        for (boolean sure : new boolean[] {true, false}) {
            for (int i = 0; i < found.length; i++) {
                BankRow row = rows.get(i);
                List<LedgerEntry> same = open.getOrDefault(new Key(row.date(), row.amount()), List.of());
                if (found[i] != null) {
                    continue;
                }
                Optional<LedgerEntry> entry =
                        same.stream().filter(one -> !sure || named(one, row)).findFirst();
                if (entry.isPresent()) {
                    same.remove(entry.get());
                    found[i] = new Twin(entry.get(), sure);
                }
            }
        }
        List<Optional<Twin>> twins = new ArrayList<>();
        for (Twin twin : found) {
            twins.add(Optional.ofNullable(twin));
        }
        return twins;
    }

    private static boolean named(LedgerEntry entry, BankRow row) {
        boolean payee = !row.payee().isEmpty() && written(entry, row.payee());
        return payee || !row.reference().isEmpty() && entry.note().contains(row.reference());
    }

    /** Whether an entry has this name, or had it in the file it came from. */
    private static boolean written(LedgerEntry entry, String payee) {
        return folded(entry.payee()).equals(folded(payee))
                || entry.note().lines().anyMatch(line -> line.equals(AS_WRITTEN + payee));
    }

    private static String folded(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    }

    /** What the newest entry with that name and direction was; empty where there is none. */
    public static Optional<Suggestion> suggestion(List<LedgerEntry> ledger, String payee, boolean in) {
        LedgerEntry best = null;
        for (LedgerEntry entry : ledger) {
            boolean fits = !payee.isEmpty()
                    && entry.kind() != LedgerEntry.Kind.COUNTED
                    && entry.amount().isNegative() != in
                    && written(entry, payee);
            if (fits && (best == null || !entry.date().isBefore(best.date()))) {
                best = entry;
            }
        }
        return Optional.ofNullable(best).map(entry -> new Suggestion(entry.kind(), entry.stage(), entry.payee()));
    }

    /** The note of a row's entry: its reference, and the name in the file where the books have another. */
    public static String note(BankRow row, String payee) {
        String written = row.payee().isEmpty() || row.payee().equals(payee) ? "" : AS_WRITTEN + row.payee();
        return row.reference().isEmpty() || written.isEmpty()
                ? row.reference() + written
                : row.reference() + "\n" + written;
    }

    /** What the file says stood in the account at its end: the balance of its last day. Empty where it tells none. */
    public static Optional<BankRow> last(List<BankRow> rows) {
        List<BankRow> told =
                rows.stream().filter(row -> row.balance().isPresent()).toList();
        if (told.isEmpty()) {
            return Optional.empty();
        }
        BankRow first = told.get(0);
        BankRow end = told.get(told.size() - 1);
        return Optional.of(first.date().isAfter(end.date()) ? first : end);
    }
}
