package weekwright.files.bank;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import weekwright.base.Money;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Refused;
import weekwright.base.Text;
import weekwright.funds.BankRow;
import weekwright.funds.BankSource;
import weekwright.funds.BankSource.Decimals;

/**
 * The bookings of a file, read as its source says.
 *
 * @param rows in the file's order
 * @param unread what is wrong with each row that cannot be read, with its line
 * @param empty lines of rows without a day and an amount, and of those that move nothing
 */
public record BankReading(List<BankRow> rows, List<Problem> unread, List<Integer> empty) {
    private static final Pattern GAPS = Pattern.compile("\\s+");
    private static final int NAME_MOST = 200;
    private static final int NOTE_MOST = 1500;
    private static final Set<String> OUT = Set.of("out", "d", "dr", "db", "debit", "s", "soll", "-", "paid out");
    private static final Set<String> IN = Set.of("in", "c", "cr", "credit", "h", "haben", "+", "paid in");

    /**
     * @param currency the project's, ISO 4217
     * @param digits of the currency
     */
    public static BankReading of(BankTable table, BankSource source, String currency, int digits) {
        List<BankRow> rows = new ArrayList<>();
        List<Problem> unread = new ArrayList<>();
        List<Integer> empty = new ArrayList<>();
        Map<String, Optional<LocalDate>> days = new HashMap<>();
        for (BankTable.Row row : table.after(source.skip())) {
            Problems problems = new Problems();
            Optional<BankRow> read = new OneRow(row, source, currency, digits, days, problems).read();
            unread.addAll(problems.list().stream()
                    .map(problem -> problem.at("", row.line()))
                    .toList());
            if (!problems.isEmpty()) {
                continue;
            }
            read.ifPresentOrElse(rows::add, () -> empty.add(row.line()));
        }
        return new BankReading(List.copyOf(rows), List.copyOf(unread), List.copyOf(empty));
    }

    /** How many rows of the file are not among the bookings. */
    public int unreadRows() {
        return (int) unread.stream().map(Problem::line).distinct().count();
    }

    /**
     * Reads one row, and gathers what is wrong with it.
     *
     * @param days what was read already: many rows are of one day
     */
    private record OneRow(
            BankTable.Row row,
            BankSource source,
            String currency,
            int digits,
            Map<String, Optional<LocalDate>> days,
            Problems problems) {

        Optional<BankRow> read() {
            String day = row.cell(source.date());
            boolean nothing = day.isEmpty()
                    && cell(source.amount()).isEmpty()
                    && cell(source.out()).isEmpty()
                    && cell(source.in()).isEmpty();
            if (nothing) {
                return Optional.empty();
            }
            Optional<LocalDate> date = days.computeIfAbsent(day, text -> BankDates.read(text, source.dateOrder()));
            if (date.isEmpty()) {
                problems.fault(
                        "date",
                        day,
                        day.isEmpty()
                                ? "No day stands there"
                                : "is no day as " + source.dateOrder().words(),
                        "");
            }
            Optional<Money> amount = source.amount().isPresent() ? one() : two();
            String code = cell(source.currency());
            if (!code.isEmpty() && !code.equalsIgnoreCase(currency)) {
                problems.fault(
                        "currency", code, "is not the project's " + currency, "enter it by hand with the rate paid");
            }
            Optional<Money> balance = money(source.balance(), "balance");
            Optional<Money> gross = money(source.gross(), "gross").map(OneRow::size);
            Optional<Money> fee = money(source.fee(), "fee").map(OneRow::size);
            String payee = source.people() ? "" : text(cell(source.payee()), "payee", NAME_MOST);
            String reference = source.people() ? "" : text(cell(source.reference()), "reference", NOTE_MOST);
            return date.isEmpty() || amount.isEmpty() || amount.get().equals(Money.ZERO)
                    ? Optional.empty()
                    : Optional.of(
                            new BankRow(row.line(), date.get(), amount.get(), payee, reference, balance, gross, fee));
        }

        private String cell(Optional<Integer> column) {
            return column.map(row::cell).orElse("");
        }

        private static Money size(Money money) {
            return money.isNegative() ? money.negated() : money;
        }

        /** One column, with a sign or beside a word that says which way. */
        private Optional<Money> one() {
            Optional<Money> amount = needed(source.amount(), "amount");
            if (source.way().isEmpty()) {
                return amount;
            }
            String way = cell(source.way()).toLowerCase(Locale.ROOT);
            if (!OUT.contains(way) && !IN.contains(way)) {
                problems.fault("way", cell(source.way()), "says neither out nor in", "");
                return Optional.empty();
            }
            return amount.map(OneRow::size).map(size -> OUT.contains(way) ? size.negated() : size);
        }

        /** Two columns, of which one is filled; a sign in them does not matter. */
        private Optional<Money> two() {
            Optional<Money> out = money(source.out(), "out").map(OneRow::size).filter(m -> !m.equals(Money.ZERO));
            Optional<Money> in = money(source.in(), "in").map(OneRow::size).filter(m -> !m.equals(Money.ZERO));
            if (out.isPresent() && in.isPresent()) {
                problems.fault(
                        "out", cell(source.out()), "goes out and " + cell(source.in()) + " comes in at once", "");
            }
            return out.map(Money::negated).or(() -> in).or(() -> Optional.of(Money.ZERO));
        }

        private Optional<Money> needed(Optional<Integer> column, String name) {
            if (cell(column).isEmpty()) {
                problems.fault(name, "", "No amount stands there", "");
            }
            return money(column, name);
        }

        private Optional<Money> money(Optional<Integer> column, String name) {
            String text = cell(column);
            if (text.isEmpty()) {
                return Optional.empty();
            }
            Optional<Money> money = BankAmounts.read(text, source.decimals(), digits);
            if (money.isEmpty()) {
                problems.fault(
                        name,
                        text,
                        "is no amount with a decimal "
                                + (source.decimals() == Decimals.COMMA ? "comma" : "point")
                                + " and at most " + digits + " places",
                        "");
            }
            return money;
        }

        private String text(String text, String name, int most) {
            try {
                String clean = Text.checked(GAPS.matcher(text).replaceAll(" "), false);
                return clean.codePointCount(0, clean.length()) <= most
                        ? clean
                        : clean.substring(0, clean.offsetByCodePoints(0, most - 1)) + "…";
            } catch (Refused refused) {
                problems.add(Problem.fault(name, text, refused));
                return "";
            }
        }
    }
}
