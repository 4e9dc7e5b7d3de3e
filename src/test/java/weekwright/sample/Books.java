package weekwright.sample;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * The sample's ledger: pay-outs of every charge so far, regular items, what was paid for materials, the hand-written rest
 * of {@link Slips}, and counted balances that agree with it all to the cent. Seeded.
 */
final class Books {
    private static final LocalDate OPENED = Diary.FIRST;
    private static final List<LocalDate> COUNTS = List.of(
            OPENED,
            LocalDate.of(2026, 3, 31),
            LocalDate.of(2026, 6, 30),
            LocalDate.of(2026, 9, 30),
            LocalDate.of(2026, 11, 22));

    /** One row by column name, and its place among the rows of a day. */
    private record Row(LocalDate date, int place, Map<String, String> cells) {}

    private static final String HEAD = "id,date,amount,kind,account,gross,fee,once,stage,task,material,payee,"
            + "foreign_amount,foreign_currency,rate,receipt,note";

    private final Path folder;
    private final Supporters supporters;
    private final Random random = new Random(85);
    private final List<Row> rows = new ArrayList<>();

    Books(Path folder, Supporters supporters) {
        this.folder = folder;
        this.supporters = supporters;
        payouts();
        regular();
        materials();
        Slips.all().forEach(cells -> add(LocalDate.parse(cells.get("date")), 3, cells));
        rows.sort(Comparator.comparing(Row::date).thenComparing(Row::place));
        count();
    }

    private void add(LocalDate date, int place, Map<String, String> cells) {
        if (!date.isBefore(OPENED) && !date.isAfter(Diary.LAST)) {
            cells.putIfAbsent("account", "bank");
            rows.add(new Row(date, place, cells));
        }
    }

    private void payouts() {
        List<Map<String, String>> levels = Csv.read(folder.resolve("pledge-levels.csv"));
        Map<YearMonth, Integer> charged = new HashMap<>();
        List<Map<String, String>> episodes = Csv.read(folder.resolve("episodes.csv"));
        for (Map<String, String> level : levels) {
            int days = Integer.parseInt(level.get("payout_days"));
            if (level.get("charged").equals("month")) {
                for (YearMonth month = YearMonth.of(2026, 1);
                        month.isBefore(YearMonth.of(2026, 12));
                        month = month.plusMonths(1)) {
                    payout(level.get("id"), month, month.atDay(1).plusDays(days), "charge of " + month);
                }
                continue;
            }
            for (Map<String, String> episode : episodes) {
                if (!episode.get("published").isEmpty()) {
                    LocalDate published = LocalDate.parse(episode.get("published"));
                    if (charged.merge(YearMonth.from(published), 1, Integer::sum) <= 4) {
                        payout(
                                level.get("id"),
                                YearMonth.from(published),
                                published.plusDays(days),
                                "no. " + episode.get("number"));
                    }
                }
            }
        }
    }

    private void payout(String level, YearMonth month, LocalDate date, String note) {
        BigDecimal[] charge = supporters.charge(level, month);
        add(
                date,
                1,
                cells(
                        "kind",
                        "payout",
                        "amount",
                        charge[1].toPlainString(),
                        "gross",
                        charge[0].toPlainString(),
                        "fee",
                        charge[0].subtract(charge[1]).toPlainString(),
                        "payee",
                        level,
                        "note",
                        note));
    }

    private void regular() {
        List<Map<String, String>> episodes = Csv.read(folder.resolve("episodes.csv"));
        for (Map<String, String> item : Csv.read(folder.resolve("regular.csv"))) {
            LocalDate from = LocalDate.parse(item.get("from"));
            boolean drawings = item.get("name").startsWith("Drawings");
            if (item.get("every").equals("episode")) {
                for (Map<String, String> episode : episodes) {
                    if (!episode.get("published").isEmpty()) {
                        regular(item, LocalDate.parse(episode.get("published")), "no. " + episode.get("number"), false);
                    }
                }
            } else {
                for (int month = 0; month < 12; month++) {
                    regular(item, from.plusMonths(month), "", drawings);
                }
            }
        }
    }

    private void regular(Map<String, String> item, LocalDate date, String note, boolean drawings) {
        BigDecimal amount = new BigDecimal(item.get("amount"));
        if (!item.get("spread").isEmpty()) {
            double spread = Double.parseDouble(item.get("spread")) / 100;
            double drawn = 1 + spread * Math.max(-2, Math.min(2, random.nextGaussian()));
            amount = amount.multiply(BigDecimal.valueOf(drawn)).setScale(2, RoundingMode.HALF_UP);
        }
        add(
                date,
                2,
                cells(
                        "kind",
                        drawings ? "drawings" : "regular",
                        "amount",
                        amount.toPlainString(),
                        "payee",
                        drawings ? "" : item.get("name"),
                        "note",
                        note));
    }

    private void materials() {
        for (Map<String, String> line : Csv.read(folder.resolve("materials.csv"))) {
            if (line.get("price_likely").isEmpty() || line.get("ordered").isEmpty()) {
                continue;
            }
            BigDecimal quantity =
                    line.get("quantity").isEmpty() ? BigDecimal.ONE : new BigDecimal(line.get("quantity"));
            int waste = line.get("waste").isEmpty() ? 0 : Integer.parseInt(line.get("waste"));
            BigDecimal bought = quantity.multiply(BigDecimal.valueOf(100 + waste, 2));
            BigDecimal expected = bought.multiply(new BigDecimal(line.get("price_likely")));
            BigDecimal paid = expected.multiply(BigDecimal.valueOf(95 + random.nextInt(17), 2))
                    .setScale(2, RoundingMode.HALF_UP);
            BigDecimal deposit = BigDecimal.ZERO;
            if (!line.get("deposit").isEmpty()) {
                deposit = expected.multiply(new BigDecimal(line.get("deposit")).movePointLeft(2))
                        .setScale(2, RoundingMode.HALF_UP);
                pay(line, LocalDate.parse(line.get("ordered")), deposit, "deposit");
            }
            if (!line.get("received").isEmpty()) {
                pay(
                        line,
                        LocalDate.parse(line.get("received")),
                        paid.subtract(deposit),
                        deposit.signum() > 0 ? "balance" : "");
            }
        }
    }

    private void pay(Map<String, String> line, LocalDate date, BigDecimal amount, String note) {
        Map<String, String> cells = cells(
                "kind", "material",
                "amount", amount.negate().toPlainString(),
                "stage", line.get("task").substring(0, line.get("task").indexOf('.')),
                "task", line.get("task"),
                "material", line.get("id"),
                "payee", line.get("supplier"),
                "note", note);
        if (line.get("id").equals("m.27") && note.equals("balance")) {
            cells.put("receipt", "2026-11-13-hoop-iron.png");
        }
        add(date, 4, cells);
    }

    private void count() {
        Map<String, BigDecimal> balance = new HashMap<>();
        balance.put("bank", new BigDecimal("5340.00"));
        balance.put("tin", new BigDecimal("160.00"));
        List<Row> counted = new ArrayList<>();
        for (LocalDate day : COUNTS) {
            for (String account : List.of("bank", "tin")) {
                BigDecimal sum = balance.get(account);
                for (Row row : rows) {
                    if (!row.date().isAfter(day)
                            && row.date().isAfter(OPENED)
                            && row.cells().get("account").equals(account)) {
                        sum = sum.add(new BigDecimal(row.cells().get("amount")));
                    }
                }
                counted.add(new Row(
                        day,
                        9,
                        cells(
                                "kind",
                                "counted",
                                "amount",
                                sum.toPlainString(),
                                "account",
                                account,
                                "note",
                                account.equals("bank") ? "statement" : "counted by both")));
            }
        }
        rows.addAll(counted);
        rows.sort(Comparator.comparing(Row::date).thenComparing(Row::place));
    }

    private static Map<String, String> cells(String... pairs) {
        Map<String, String> cells = new HashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            cells.put(pairs[i], pairs[i + 1]);
        }
        return cells;
    }

    /** The text of ledger.csv. */
    String text() {
        List<List<String>> written = new ArrayList<>();
        for (Row row : rows) {
            Map<String, String> cells = row.cells();
            cells.put("id", String.format(Locale.ROOT, "l%04d", written.size() + 1));
            cells.put("date", row.date().toString());
            written.add(Arrays.stream(HEAD.split(","))
                    .map(name -> cells.getOrDefault(name, ""))
                    .toList());
        }
        return Csv.text(HEAD, written);
    }
}
