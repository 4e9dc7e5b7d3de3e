package weekwright.files.year;

import java.time.YearMonth;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import weekwright.base.Codec;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.build.EquipmentStore;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.Read;
import weekwright.files.csv.SheetCsv;
import weekwright.funds.ClosedMonthStore;
import weekwright.funds.Gift;
import weekwright.funds.LedgerEntry;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.TaxYear;

/** The tables of a year's folder, each for a spreadsheet. */
final class YearTables {
    private final Read read;
    private final TaxYear year;
    private final Settings settings;
    private final int digits;
    private final List<LedgerEntry> entries;
    private final Map<Id, String> named;
    private final List<String> gone;

    /**
     * @param named the name in the folder of each entry's receipt
     * @param gone entries whose receipt is named and not there
     */
    YearTables(Read read, TaxYear year, List<LedgerEntry> entries, Map<Id, String> named, List<String> gone) {
        this.read = read;
        this.year = year;
        this.settings = SettingsStore.get(read);
        this.digits = settings.moneyDigits();
        this.entries = entries;
        this.named = named;
        this.gone = gone;
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

    String entries() {
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

    String totals() {
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

    String payouts() {
        Map<String, String> levels = new LinkedHashMap<>();
        PledgeLevelStore.TABLE
                .values(read)
                .forEach(level -> levels.put(level.id().folded(), level.name()));
        SheetCsv sheet = new SheetCsv("date", "entry", "level", "gross", "fee", "net", "currency", "note");
        for (LedgerEntry entry : entries) {
            if (entry.kind() == LedgerEntry.Kind.PAYOUT) {
                sheet.figure(entry.date().toString())
                        .text(entry.id().value())
                        .text(levels.getOrDefault(entry.payee().toLowerCase(Locale.ROOT), entry.payee()))
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

    /** The register's gifts of the year. */
    String gifts() {
        return GiftSheet.of(Gift.in(read, year), settings);
    }

    String equipment() {
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

    String statements() {
        return StatementSheet.of(
                ClosedMonthStore.LINES.values(read).stream()
                        .filter(line -> year.holds(line.month().atDay(1)))
                        .toList(),
                digits,
                settings.project().name() + ", statements of closed months, amounts in "
                        + settings.project().currency());
    }
}
