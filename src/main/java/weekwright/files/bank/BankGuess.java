package weekwright.files.bank;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Pattern;
import weekwright.base.Codec;
import weekwright.base.Money;
import weekwright.funds.BankSource.DateOrder;
import weekwright.funds.BankSource.Decimals;

/**
 * What a file of a new source is likely to mean: columns by the words of their headings, else by what stands in them. Where
 * dates or amounts can be read in two ways that differ, nothing is guessed: the person is asked.
 */
public final class BankGuess {
    private static final int LOOKED_AT = 60;
    private static final Pattern PEOPLE = Pattern.compile(
            "(?iU)\\b(supporters?|members?|subscribers?|donors?|givers?|pledges?|unterstützer|mitglied|spender|abonné|donateur)");
    private static final Pattern ADDRESS = Pattern.compile("[^@\\s]+@[^@\\s]+\\.[^@\\s]+");
    /** Words of headings, in several languages, the first that is found in the order of the list. */
    private static final Map<String, Pattern> WORDS = new LinkedHashMap<>();

    static {
        word("date", "dat(e|um|a)|day|tag|buchungstag|fecha|booked");
        word("balance", "balance|saldo|solde");
        word("currency", "currency|währung|devise|moneda");
        word("fee", "fees?|gebühr(en)?|frais|commission");
        word("gross", "gross|brutto|brut");
        word("out", "debits?|soll|paid out|money out|withdrawals?|belastung|^out$");
        word("in", "credits?|haben|paid in|money in|deposits?|gutschrift|^in$");
        word("amount", "amount|betrag|umsatz|montant|importe|importo|bedrag|net|sum");
        word("payee", "payee|name|empfänger|begünstigter|auftraggeber|counterparty|payer|merchant|who|description");
        word(
                "reference",
                "reference|verwendungszweck|zweck|purpose|memo|details|narrative|text|message|note|buchungstext");
    }

    private BankGuess() {}

    private static void word(String role, String words) {
        WORDS.put(role, Pattern.compile("(?iU)(^|.*\\b)(" + words + ")(\\b.*|$)"));
    }

    /** The texts of a source's columns; those that cannot be said are empty. */
    public static Map<String, String> of(BankTable table, int digits) {
        Map<String, String> found = new LinkedHashMap<>();
        int skip = firstBooking(table, digits);
        found.put("skip", String.valueOf(skip));
        List<BankTable.Row> rows = table.after(skip).stream().limit(LOOKED_AT).toList();
        if (skip > 0) {
            headings(table.rows().get(skip - 1), found);
        }
        byContent(rows, digits, found);
        if (found.containsKey("amount")) {
            found.remove("out");
            found.remove("in");
        }
        found.put(
                "date_order",
                order(cells(table.after(skip), found, "date")).map(Codec::word).orElse(""));
        List<String> amounts = new ArrayList<>();
        for (String role : List.of("amount", "out", "in", "balance", "gross", "fee")) {
            amounts.addAll(cells(table.after(skip), found, role));
        }
        found.put("decimals", decimals(amounts, digits).map(Codec::word).orElse(""));
        found.put("people", people(table, skip, rows, found) ? "yes" : "");
        return found;
    }

    /** Whether the rows are likely to name supporters: fees are taken off, a heading says so, or there are electronic addresses. */
    private static boolean people(BankTable table, int skip, List<BankTable.Row> rows, Map<String, String> found) {
        return !found.getOrDefault("fee", "").isEmpty()
                || !found.getOrDefault("gross", "").isEmpty()
                || skip > 0
                        && table.rows().get(skip - 1).cells().stream()
                                .anyMatch(head -> PEOPLE.matcher(head).find())
                || rows.stream()
                        .flatMap(row -> row.cells().stream())
                        .anyMatch(cell -> ADDRESS.matcher(cell).find());
    }

    private static List<String> cells(List<BankTable.Row> rows, Map<String, String> found, String role) {
        if (found.getOrDefault(role, "").isEmpty()) {
            return List.of();
        }
        int column = Integer.parseInt(found.get(role));
        return rows.stream()
                .map(row -> row.cell(column))
                .filter(text -> !text.isEmpty())
                .toList();
    }

    /** Rows before the first that has a date in one cell and an amount in another. */
    private static int firstBooking(BankTable table, int digits) {
        for (int i = 0; i < Math.min(LOOKED_AT, table.rows().size()); i++) {
            List<String> cells = table.rows().get(i).cells();
            boolean date = cells.stream().anyMatch(BankGuess::isDate);
            boolean amount = cells.stream().anyMatch(text -> isAmount(text, digits) && !isDate(text));
            if (date && amount) {
                return i;
            }
        }
        return 0;
    }

    private static void headings(BankTable.Row heads, Map<String, String> found) {
        WORDS.forEach((role, words) -> {
            for (int column = 1; column <= heads.cells().size() && !found.containsKey(role); column++) {
                if (!taken(found, column)
                        && words.matcher(heads.cell(column).replace('_', ' ')).matches()) {
                    found.put(role, String.valueOf(column));
                }
            }
        });
    }

    private static boolean taken(Map<String, String> found, int column) {
        return found.entrySet().stream()
                .anyMatch(one -> !one.getKey().equals("skip") && one.getValue().equals(String.valueOf(column)));
    }

    private static void byContent(List<BankTable.Row> rows, int digits, Map<String, String> found) {
        int width = rows.stream().mapToInt(row -> row.cells().size()).max().orElse(0);
        for (int column = 1; column <= width; column++) {
            int at = column;
            String number = String.valueOf(column);
            List<String> cells = rows.stream()
                    .map(row -> row.cell(at))
                    .filter(text -> !text.isEmpty())
                    .toList();
            if (taken(found, column) || cells.isEmpty()) {
                continue;
            }
            boolean two = found.containsKey("out") && found.containsKey("in");
            if (cells.stream().allMatch(BankGuess::isDate)) {
                found.putIfAbsent("date", number);
            } else if (cells.stream().allMatch(text -> isAmount(text, digits)) && !two) {
                found.putIfAbsent("amount", number);
            } else if (cells.stream().noneMatch(text -> isAmount(text, digits))) {
                found.putIfAbsent("payee", number);
            }
        }
    }

    private static boolean isDate(String text) {
        for (DateOrder order : DateOrder.values()) {
            if (BankDates.read(text, order).isPresent()) {
                return true;
            }
        }
        return false;
    }

    private static boolean isAmount(String text, int digits) {
        return BankAmounts.read(text, Decimals.POINT, digits).isPresent()
                || BankAmounts.read(text, Decimals.COMMA, digits).isPresent();
    }

    /** The order in which the most can be read, half of them at least; empty where two are that give other days. */
    public static Optional<DateOrder> order(List<String> dates) {
        return only(DateOrder.values(), dates, order -> text -> BankDates.read(text, order));
    }

    /** The way in which the most amounts can be read, half of them at least; empty where both are and differ. */
    static Optional<Decimals> decimals(List<String> amounts, int digits) {
        return only(Decimals.values(), amounts, decimals -> text -> BankAmounts.read(text, decimals, digits));
    }

    /** Each text is read once, however often it stands there. */
    private static <W, V> Optional<W> only(
            W[] ways, List<String> texts, Function<W, Function<String, Optional<V>>> reader) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        texts.forEach(text -> counts.merge(text, 1, Integer::sum));
        Optional<W> best = Optional.empty();
        List<Optional<V>> values = List.of();
        long most = Math.max(1, (texts.size() + 1) / 2) - 1;
        for (W way : ways) {
            List<Optional<V>> read = new ArrayList<>(counts.size());
            long count = 0;
            for (Map.Entry<String, Integer> one : counts.entrySet()) {
                Optional<V> value = reader.apply(way).apply(one.getKey());
                read.add(value);
                count += value.isPresent() ? one.getValue() : 0;
            }
            if (count > most) {
                best = Optional.of(way);
                values = read;
                most = count;
            } else if (best.isPresent() && count == most && !read.equals(values)) {
                best = Optional.empty();
            }
        }
        return best;
    }

    /** The two days that the first date which can be read in two ways is, and its text; empty where there is none. */
    public static Optional<Twofold> twofold(List<String> dates) {
        for (String text : dates) {
            Optional<LocalDate> dmy = BankDates.read(text, DateOrder.DMY);
            Optional<LocalDate> mdy = BankDates.read(text, DateOrder.MDY);
            Optional<LocalDate> ymd = BankDates.read(text, DateOrder.YMD);
            Optional<LocalDate> other = mdy.isPresent() ? mdy : ymd;
            if (dmy.isPresent() && other.isPresent() && !dmy.equals(other)) {
                return Optional.of(new Twofold(text, dmy.get(), other.get()));
            }
        }
        return Optional.empty();
    }

    /**
     * Why it cannot be said what stands before the cents: an amount that can be two, or two of which one has a comma and the
     * other a point. Empty where all agree.
     */
    public static Optional<Undecided> undecided(List<String> amounts, int digits) {
        Optional<String> comma = Optional.empty();
        Optional<String> point = Optional.empty();
        for (String text : amounts) {
            Optional<Money> one = BankAmounts.read(text, Decimals.COMMA, digits);
            Optional<Money> other = BankAmounts.read(text, Decimals.POINT, digits);
            if (one.isPresent() && other.isPresent() && !one.equals(other)) {
                return Optional.of(new Undecided(
                        text,
                        "can be " + one.get().text(digits) + " or "
                                + other.get().text(digits)));
            }
            comma = comma.or(() -> one.filter(money -> other.isEmpty()).map(money -> text));
            point = point.or(() -> other.filter(money -> one.isEmpty()).map(money -> text));
        }
        return comma.isPresent() && point.isPresent()
                ? Optional.of(
                        new Undecided(comma.get(), "has a decimal comma, and \"" + point.get() + "\" a decimal point"))
                : Optional.empty();
    }

    /** An amount that leaves open what stands before the cents, and why. */
    public record Undecided(String text, String rule) {}

    /** A date that can be two days. */
    public record Twofold(String text, LocalDate one, LocalDate other) {}
}
