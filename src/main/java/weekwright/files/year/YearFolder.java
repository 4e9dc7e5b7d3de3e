package weekwright.files.year;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import weekwright.base.Codec;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.build.EquipmentStore;
import weekwright.build.Said;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.Read;
import weekwright.files.KeptFiles;
import weekwright.files.csv.SheetCsv;
import weekwright.funds.ClosedMonthStore;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.StockItem;
import weekwright.funds.StockItemStore;
import weekwright.funds.TaxYear;

/**
 * A tax year as one folder for the accountant, in a zip file: every entry of the books, its receipt under the entry's name,
 * pay-outs with gross, fees and net, what was given, the equipment, the statements of closed months, and a page of words that
 * says what is what. All tables are for a spreadsheet, in which no text runs as a formula.
 */
public final class YearFolder {
    private final Read read;
    private final TaxYear year;
    private final LocalDate today;
    private final Settings settings;
    private final int digits;
    private final KeptFiles receipts;
    private final List<LedgerEntry> entries;
    /** The name in this folder of each entry's receipt. */
    private final Map<Id, String> named = new LinkedHashMap<>();

    private final Map<Id, Path> found = new LinkedHashMap<>();
    private final List<String> gone = new ArrayList<>();

    private YearFolder(Read read, TaxYear year, LocalDate today, KeptFiles receipts) {
        this.read = read;
        this.year = year;
        this.today = today;
        this.receipts = receipts;
        this.settings = SettingsStore.get(read);
        this.digits = settings.moneyDigits();
        this.entries = entries(read, year);
    }

    /** The entries of a year, by day. */
    public static List<LedgerEntry> entries(Read read, TaxYear year) {
        return LedgerEntryStore.between(read, year.from(), year.to()).stream()
                .map(stored -> stored.value())
                .toList();
    }

    /** @param receipts where they are kept */
    public static void write(Read read, TaxYear year, LocalDate today, KeptFiles receipts, OutputStream out)
            throws IOException {
        new YearFolder(read, year, today, receipts).write(out);
    }

    private void write(OutputStream out) throws IOException {
        receipts();
        try (ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8)) {
            Map<String, String> texts = new LinkedHashMap<>();
            texts.put("entries.csv", entries());
            texts.put("totals.csv", totals());
            texts.put("pay-outs.csv", payouts());
            texts.put("gifts.csv", gifts());
            texts.put("equipment.csv", equipment());
            texts.put("statements.csv", statements());
            text(zip, "README.txt", words());
            for (Map.Entry<String, String> one : texts.entrySet()) {
                text(zip, one.getKey(), one.getValue());
            }
            for (Map.Entry<Id, Path> one : found.entrySet()) {
                zip.putNextEntry(new ZipEntry(place(named.get(one.getKey()))));
                Files.copy(one.getValue(), zip);
                zip.closeEntry();
            }
        }
    }

    /** {@code receipts/2026-11-13_l0253.png}: by day and entry. */
    private void receipts() {
        for (LedgerEntry entry : entries) {
            if (entry.receipt().isEmpty()) {
                continue;
            }
            Optional<Path> file = receipts.find(entry.receipt());
            int dot = entry.receipt().lastIndexOf('.');
            String ending = dot < 0 ? "" : entry.receipt().substring(dot);
            if (file.isPresent()) {
                named.put(entry.id(), "receipts/" + entry.date() + "_" + entry.id() + ending);
                found.put(entry.id(), file.get());
            } else {
                gone.add(entry.id().value());
            }
        }
    }

    private String place(String name) {
        return "year-" + year.name() + "/" + name;
    }

    private void text(ZipOutputStream zip, String name, String text) throws IOException {
        zip.putNextEntry(new ZipEntry(place(name)));
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private String money(Optional<Money> money) {
        return money.map(one -> one.text(digits)).orElse("");
    }

    private static String id(Optional<Id> id) {
        return id.map(Id::value).orElse("");
    }

    private static String number(Optional<Quantity> quantity) {
        return quantity.map(Quantity::text).orElse("");
    }

    private String entries() {
        SheetCsv sheet = new SheetCsv(
                "date",
                "entry",
                "kind",
                "amount",
                "currency",
                "account",
                "to or from",
                "stage",
                "task",
                "material line",
                "gross",
                "fee",
                "paid in another currency",
                "its currency",
                "rate",
                "receipt",
                "note");
        for (LedgerEntry entry : entries) {
            sheet.figure(entry.date().toString())
                    .text(entry.id().value())
                    .figure(Codec.word(entry.kind()))
                    .figure(entry.amount().text(digits))
                    .figure(settings.project().currency())
                    .text(entry.account())
                    .text(entry.payee())
                    .text(id(entry.stage()))
                    .text(id(entry.task()))
                    .text(id(entry.material()))
                    .figure(money(entry.gross()))
                    .figure(money(entry.fee()))
                    .figure(number(entry.foreignAmount()))
                    .text(entry.foreignCurrency())
                    .figure(entry.ratePaid(digits).orElse(""))
                    .text(named.getOrDefault(
                            entry.id(), gone.contains(entry.id().value()) ? "the file is gone" : ""))
                    .text(entry.note())
                    .end();
        }
        return sheet.toString();
    }

    private String totals() {
        Map<YearMonth, Map<LedgerEntry.Kind, Money>> months = new TreeMap<>();
        Map<LedgerEntry.Kind, Money> all = new EnumMap<>(LedgerEntry.Kind.class);
        for (LedgerEntry entry : entries) {
            if (entry.kind() != LedgerEntry.Kind.COUNTED) {
                months.computeIfAbsent(YearMonth.from(entry.date()), m -> new EnumMap<>(LedgerEntry.Kind.class))
                        .merge(entry.kind(), entry.amount(), Money::plus);
                all.merge(entry.kind(), entry.amount(), Money::plus);
            }
        }
        SheetCsv sheet = new SheetCsv("month", "kind", "amount", "currency");
        months.forEach((month, kinds) -> kinds.forEach((kind, sum) -> total(sheet, month.toString(), kind, sum)));
        all.forEach((kind, sum) -> total(sheet, "year " + year.name(), kind, sum));
        return sheet.toString();
    }

    private void total(SheetCsv sheet, String time, LedgerEntry.Kind kind, Money sum) {
        sheet.figure(time)
                .figure(Codec.word(kind))
                .figure(sum.text(digits))
                .figure(settings.project().currency())
                .end();
    }

    private String payouts() {
        Map<String, String> levels = new LinkedHashMap<>();
        PledgeLevelStore.TABLE
                .values(read)
                .forEach(level -> levels.put(level.id().folded(), level.name()));
        SheetCsv sheet = new SheetCsv("date", "entry", "level", "gross", "fee", "net", "currency", "note");
        for (LedgerEntry entry : entries) {
            if (entry.kind() == LedgerEntry.Kind.PAYOUT) {
                sheet.figure(entry.date().toString())
                        .text(entry.id().value())
                        .text(levels.getOrDefault(entry.payee().toLowerCase(java.util.Locale.ROOT), entry.payee()))
                        .figure(money(entry.gross()))
                        .figure(money(entry.fee()))
                        .figure(entry.amount().text(digits))
                        .figure(settings.project().currency())
                        .text(entry.note())
                        .end();
            }
        }
        return sheet.toString();
    }

    /** What came as a gift in the year: into the yard, or for a task. */
    private String gifts() {
        SheetCsv sheet =
                new SheetCsv("date", "what", "quantity", "unit", "from", "value", "currency", "credit", "entered as");
        for (StockItem item : StockItemStore.TABLE.values(read)) {
            boolean given = item.source().filter(Material.Source.GIVEN::equals).isPresent();
            if (given && item.since().filter(year::holds).isPresent()) {
                gift(sheet, item.since(), item.item(), item.quantity(), item.unit());
                sheet.text(item.from())
                        .figure(money(item.value()))
                        .figure(settings.project().currency())
                        .text(item.credit())
                        .text("stock " + item.id())
                        .end();
            }
        }
        for (Material line : MaterialStore.TABLE.values(read)) {
            if (line.sourceOrDefault() == Material.Source.GIVEN
                    && line.received().filter(year::holds).isPresent()) {
                gift(sheet, line.received(), line.item(), line.quantity(), line.unit());
                sheet.text(line.supplier())
                        .figure(money(line.value()))
                        .figure(settings.project().currency())
                        .text(line.credit())
                        .text("material line " + line.id())
                        .end();
            }
        }
        return sheet.toString();
    }

    private static void gift(
            SheetCsv sheet, Optional<LocalDate> day, String what, Optional<Quantity> quantity, String unit) {
        sheet.figure(day.map(LocalDate::toString).orElse(""))
                .text(what)
                .figure(number(quantity))
                .text(unit);
    }

    private String equipment() {
        SheetCsv sheet = new SheetCsv("equipment", "how many", "value", "currency", "bought", "entry", "paid");
        EquipmentStore.TABLE
                .values(read)
                .forEach(one -> sheet.text(one.name())
                        .figure(String.valueOf(one.quantityOrDefault()))
                        .figure(money(one.value()))
                        .figure(settings.project().currency())
                        .figure("")
                        .figure("")
                        .figure("")
                        .end());
        entries.stream()
                .filter(entry -> entry.kind() == LedgerEntry.Kind.EQUIPMENT)
                .forEach(entry -> sheet.text(entry.note().isEmpty() ? entry.payee() : entry.note())
                        .figure("")
                        .figure("")
                        .figure(settings.project().currency())
                        .figure(entry.date().toString())
                        .text(entry.id().value())
                        .figure(entry.amount().negated().text(digits))
                        .end());
        return sheet.toString();
    }

    private String statements() {
        return StatementSheet.of(
                ClosedMonthStore.LINES.values(read).stream()
                        .filter(line -> year.holds(line.month().atDay(1)))
                        .toList(),
                digits,
                settings.project().name() + ", statements of closed months, amounts in "
                        + settings.project().currency());
    }

    private String words() {
        long without = entries.stream()
                .filter(entry -> entry.isCost() && entry.receipt().isEmpty())
                .count();
        List<String> lines = new ArrayList<>(List.of(
                settings.project().name(),
                "Tax year " + year.name() + ", " + Said.day(year.from()) + " to " + Said.day(year.to())
                        + (year.holds(today) ? ", as far as it has gone on " + Said.day(today) : ""),
                "Written on " + Said.day(today) + ". All amounts in "
                        + settings.project().currency() + "; plus came in, minus went out.",
                "",
                "entries.csv     every entry of the books, " + entries.size()
                        + " of them; counted is a counted balance",
                "totals.csv      sums by month and kind, then of the year",
                "pay-outs.csv    what the pledges brought: gross, fees taken off, net",
                "gifts.csv       what was given in the year, with the value that the crew wrote down",
                "equipment.csv   the equipment as it is now, then what was bought in the year",
                "statements.csv  the statements of the months that were closed",
                "receipts/       " + Said.count(found.size(), "receipt", "receipts")
                        + ", each named by the day and the entry it belongs to",
                ""));
        if (without > 0) {
            lines.add(Said.count(without, "cost has", "costs have") + " no receipt.");
        }
        if (!gone.isEmpty()) {
            lines.add("The receipt is named and its file is gone: " + Said.list(gone) + ".");
        }
        lines.add("A purchase in another currency stands with what was paid in it and the rate that was paid.");
        lines.add("");
        lines.add("This folder keeps no accounts for an office and gives no advice. Pledges are usually taxable income,"
                + " gifts");
        lines.add("in return and gifts received may be taxed, and rules differ from place to place: a licensed"
                + " accountant or");
        lines.add("your tax office decides.");
        return String.join("\r\n", lines) + "\r\n";
    }
}
