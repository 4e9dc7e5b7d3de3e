package weekwright.funds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import weekwright.base.Id;
import weekwright.base.Money;

/** What the books know of the rows of a bank's file: which of them they have already, and what such rows were before. */
public final class BankBooks {
    private static final String AS_WRITTEN = "In the file: ";
    private static final Pattern GAPS = Pattern.compile("\\s+");

    private BankBooks() {}

    /**
     * An entry of the books with a row's day, amount and account.
     *
     * @param sure the name or the reference is the same, too; of supporters' money, gross and fee
     */
    public record Twin(LedgerEntry entry, boolean sure) {}

    /** What a row is likely to be. */
    public record Suggestion(LedgerEntry.Kind kind, Optional<Id> stage, String payee) {}

    /**
     * For each row the entry that it is, by content. An entry answers for one row only, so that two equal payments of one
     * day of which the books have one leave one that is new; those with the same name go first.
     */
    public static List<Optional<Twin>> twins(List<BankRow> rows, List<LedgerEntry> ledger, String account) {
        Map<LocalDate, Map<Money, List<LedgerEntry>>> open = new HashMap<>();
        ledger.stream()
                .filter(entry -> entry.account().equals(account) && entry.kind() != LedgerEntry.Kind.COUNTED)
                .filter(entry -> !DepositShare.is(entry))
                .forEach(entry -> open.computeIfAbsent(entry.date(), k -> new HashMap<>())
                        .computeIfAbsent(entry.amount(), k -> new ArrayList<>())
                        .add(entry));
        Twin[] found = new Twin[rows.size()];
        for (boolean sure : new boolean[] {true, false}) {
            for (int i = 0; i < found.length; i++) {
                BankRow row = rows.get(i);
                List<LedgerEntry> same = open.getOrDefault(row.date(), Map.of()).getOrDefault(row.amount(), List.of());
                if (found[i] != null) {
                    continue;
                }
                Optional<LedgerEntry> entry = same.stream()
                        .filter(one -> !sure || named(one, row) || paidOut(one, row))
                        .findFirst();
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
        boolean payee = !row.payee().isEmpty()
                && (folded(entry.payee()).equals(folded(row.payee()))
                        || entry.note().lines().anyMatch(line -> line.equals(AS_WRITTEN + row.payee())));
        return payee || !row.reference().isEmpty() && entry.note().contains(row.reference());
    }

    /** Supporters' money has no name in the books: the day, the sum and what it was before fees make it the same. */
    private static boolean paidOut(LedgerEntry entry, BankRow row) {
        return entry.kind() == LedgerEntry.Kind.PAYOUT
                && (row.gross().isEmpty() || row.gross().equals(entry.gross()))
                && (row.fee().isEmpty() || row.fee().equals(entry.fee()));
    }

    private static String folded(String name) {
        return GAPS.matcher(name.toLowerCase(Locale.ROOT)).replaceAll(" ");
    }

    /**
     * The newest entry of each name and direction, by the name in the books and by the one in the file that it came from;
     * made once for many rows.
     */
    public static final class Names {
        private final Map<String, LedgerEntry> inBooks = new HashMap<>();
        private final Map<String, LedgerEntry> inFiles = new HashMap<>();
        private final Map<LedgerEntry, Integer> places = new IdentityHashMap<>();

        public Names(List<LedgerEntry> ledger) {
            for (LedgerEntry entry : ledger) {
                if (entry.kind() == LedgerEntry.Kind.COUNTED) {
                    continue;
                }
                places.put(entry, places.size());
                boolean in = !entry.amount().isNegative();
                newest(inBooks, key(folded(entry.payee()), in), entry);
                if (entry.note().contains(AS_WRITTEN)) {
                    entry.note()
                            .lines()
                            .filter(line -> line.startsWith(AS_WRITTEN))
                            .forEach(line -> newest(inFiles, key(line.substring(AS_WRITTEN.length()), in), entry));
                }
            }
        }

        private static String key(String name, boolean in) {
            return (in ? "in " : "out ") + name;
        }

        private void newest(Map<String, LedgerEntry> newest, String key, LedgerEntry entry) {
            newest.merge(key, entry, this::later);
        }

        /** The one of the later day; of one day, the later in the books. */
        private LedgerEntry later(LedgerEntry one, LedgerEntry other) {
            int days = one.date().compareTo(other.date());
            return days > 0 || days == 0 && places.get(one) > places.get(other) ? one : other;
        }

        /** What the newest entry with that name and direction was; empty where there is none. */
        public Optional<Suggestion> suggestion(String payee, boolean in) {
            if (payee.isEmpty()) {
                return Optional.empty();
            }
            Optional<LedgerEntry> books = Optional.ofNullable(inBooks.get(key(folded(payee), in)));
            Optional<LedgerEntry> files = Optional.ofNullable(inFiles.get(key(payee, in)));
            return Stream.concat(books.stream(), files.stream())
                    .reduce(this::later)
                    .map(entry -> new Suggestion(entry.kind(), entry.stage(), entry.payee()));
        }
    }

    /**
     * The note of a row's entry: its reference, and the name in the file where the books have another. Of supporters' money
     * neither is kept.
     */
    public static String note(BankRow row, LedgerEntry.Kind kind, String payee) {
        if (kind == LedgerEntry.Kind.PAYOUT) {
            return "";
        }
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
