package weekwright.files.year;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Id;
import weekwright.build.Equipment;
import weekwright.build.EquipmentStore;
import weekwright.build.SettingsStore;
import weekwright.db.Db;
import weekwright.db.FolderRefused;
import weekwright.db.Stale;
import weekwright.db.Write;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.Roll;
import weekwright.episodes.RollStore;
import weekwright.files.KeptFiles;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.PledgeLevel;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.StockItem;
import weekwright.funds.StockItemStore;
import weekwright.funds.TaxYear;
import weekwright.testkit.OakMill;

class YearFolderTest {
    @TempDir
    Path folder;

    private Db db;

    @BeforeEach
    void open() throws FolderRefused {
        db = OakMill.create(folder);
        db.write("test", write -> {
            PledgeLevelStore.TABLE.insert(
                    write,
                    OakMill.row(PledgeLevel.class, "id", "peg", "name", "Peg", "amount", "3", "charged", "month"));
            entry(write, "l1", "2026-04-05", "-50", "material", "receipt", "2026-04-05-1.png", "payee", "Yard");
            entry(write, "l2", "2026-04-06", "91.20", "payout", "gross", "100", "fee", "8.80", "payee", "peg");
            entry(
                    write,
                    "l3",
                    "2026-11-03",
                    "-1234.50",
                    "equipment",
                    "receipt",
                    "2026-11-03-1.pdf",
                    "note",
                    "+Saw",
                    "foreign_amount",
                    "1000",
                    "foreign_currency",
                    "GBP",
                    "rate",
                    "1.2345");
            entry(write, "l4", "2026-11-04", "-7", "other-cost", "receipt", "lost.png", "payee", "=cmd|x");
            entry(write, "l5", "2026-11-05", "-8", "other-cost");
            StockItemStore.TABLE.insert(
                    write,
                    OakMill.row(
                            StockItem.class,
                            "id",
                            "oak",
                            "item",
                            "Oak log",
                            "since",
                            "2026-05-02",
                            "source",
                            "given",
                            "from",
                            "@neighbour",
                            "value",
                            "300",
                            "thanked",
                            "2026-05-09",
                            "credit",
                            "a name on the wheel",
                            "quantity",
                            "2",
                            "unit",
                            "m3"));
            StockItemStore.TABLE.insert(
                    write,
                    OakMill.row(
                            StockItem.class, "id", "ash", "item", "Ash", "since", "2026-05-02", "source", "bought"));
            StockItemStore.TABLE.insert(
                    write, OakMill.row(StockItem.class, "id", "old", "item", "Old door", "source", "given"));
            // a line that is taken from what was given is that gift once more, not another
            line(write, "beam", "Oak beam", "stock", "oak", "received", "2026-06-01");
            line(write, "brass", "Bearing brass", "supplier", "-the foundry", "received", "2026-09-10");
            EquipmentStore.TABLE.insert(
                    write, OakMill.row(Equipment.class, "id", "saw", "name", "Bandsaw", "value", "900"));
            return null;
        });
        try {
            Files.createDirectories(folder.resolve("receipts"));
            Files.writeString(folder.resolve("receipts/2026-04-05-1.png"), "first");
            Files.writeString(folder.resolve("receipts/2026-11-03-1.pdf"), "second");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @AfterEach
    void close() {
        db.close();
    }

    private static void entry(Write write, String id, String date, String amount, String kind, String... more) {
        List<String> pairs = new ArrayList<>(List.of("id", id, "date", date, "amount", amount, "kind", kind));
        pairs.addAll(List.of(more));
        LedgerEntryStore.TABLE.insert(write, OakMill.row(LedgerEntry.class, pairs.toArray(String[]::new)));
    }

    private static void line(Write write, String id, String item, String... more) {
        List<String> pairs = new ArrayList<>(List.of(
                "id",
                id,
                "task",
                "shaft.1",
                "item",
                item,
                "source",
                "given",
                "quantity",
                "1",
                "unit",
                "pc",
                "value",
                "80"));
        pairs.addAll(List.of(more));
        MaterialStore.TABLE.insert(write, OakMill.row(Material.class, pairs.toArray(String[]::new)));
    }

    private Map<String, String> folder(TaxYear year) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        db.read(read -> {
            try {
                YearFolder.write(read, year, OakMill.TODAY, new KeptFiles(folder.resolve("receipts")), out);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return year;
        });
        Map<String, String> files = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(out.toByteArray()))) {
            for (ZipEntry one = zip.getNextEntry(); one != null; one = zip.getNextEntry()) {
                files.put(one.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return files;
    }

    private static List<String> lines(String csv) {
        assertThat(csv).startsWith("\uFEFF").endsWith("\r\n");
        return csv.substring(1).lines().toList();
    }

    @Test
    void the_roll_of_an_episode_is_not_in_it() throws IOException {
        db.write("test", write -> {
            EpisodeStore.TABLE.insert(write, OakMill.row(Episode.class, "id", "e90", "title", "Pegs"));
            RollStore.TABLE.insert(write, new Roll(new Id("e90"), "Quillwort Ninefinger"));
            return null;
        });
        assertThat(folder(new TaxYear(2026, LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31)))
                        .values())
                .hasSize(9)
                .noneMatch(text -> text.contains("Quillwort"));
    }

    @Test
    void a_year_is_one_folder_with_each_receipt_under_its_entry_and_no_formula_in_it() throws IOException {
        Map<String, String> files = folder(new TaxYear(2026, LocalDate.of(2026, 1, 1), LocalDate.of(2026, 12, 31)));
        assertThat(files.keySet())
                .containsExactly(
                        "year-2026/README.txt",
                        "year-2026/entries.csv",
                        "year-2026/totals.csv",
                        "year-2026/pay-outs.csv",
                        "year-2026/gifts.csv",
                        "year-2026/equipment.csv",
                        "year-2026/statements.csv",
                        "year-2026/receipts/2026-04-05_l1.png",
                        "year-2026/receipts/2026-11-03_l3.pdf");
        assertThat(files.get("year-2026/receipts/2026-11-03_l3.pdf")).isEqualTo("second");
        assertThat(lines(files.get("year-2026/entries.csv")))
                .containsExactly(
                        "date,entry,kind,amount,currency,account,to or from,stage,task,material line,gross,fee,paid in"
                                + " another currency,its currency,rate,receipt,note",
                        "2026-04-05,l1,material,-50.00,EUR,,Yard,,,,,,,,,receipts/2026-04-05_l1.png,",
                        "2026-04-06,l2,payout,91.20,EUR,,peg,,,,100.00,8.80,,,,,",
                        "2026-11-03,l3,equipment,-1234.50,EUR,,,,,,,,1000,GBP,1.2345,receipts/2026-11-03_l3.pdf,'+Saw",
                        "2026-11-04,l4,other-cost,-7.00,EUR,,'=cmd|x,,,,,,,,,the file is gone,",
                        "2026-11-05,l5,other-cost,-8.00,EUR,,,,,,,,,,,,");
        assertThat(lines(files.get("year-2026/totals.csv")))
                .startsWith("month,kind,amount,currency", "2026-04,payout,91.20,EUR", "2026-04,material,-50.00,EUR")
                .endsWith(
                        "year 2026,payout,91.20,EUR",
                        "year 2026,material,-50.00,EUR",
                        "year 2026,equipment,-1234.50,EUR",
                        "year 2026,other-cost,-15.00,EUR");
        assertThat(lines(files.get("year-2026/pay-outs.csv")))
                .containsExactly(
                        "date,entry,level,gross,fee,net,currency,note", "2026-04-06,l2,Peg,100.00,8.80,91.20,EUR,");
        assertThat(lines(files.get("year-2026/gifts.csv")))
                .containsExactly(
                        "date,what,quantity,unit,from,value,currency,credit,thanked,entered as",
                        "2026-05-02,Oak log,2,m3,'@neighbour,300.00,EUR,a name on the wheel,2026-05-09,stock oak",
                        "2026-09-10,Bearing brass,1,pc,'-the foundry,80.00,EUR,,,material line brass");
        assertThat(lines(files.get("year-2026/equipment.csv")))
                .containsExactly(
                        "equipment,how many,value,currency,bought,entry,paid",
                        "Bandsaw,1,900.00,EUR,,,",
                        "'+Saw,,,EUR,2026-11-03,l3,1234.50");
        assertThat(files.get("year-2026/README.txt"))
                .contains("Tax year 2026, 1 January 2026 to 31 December 2026, as far as it has gone on 25 November"
                        + " 2026\r\n")
                .contains("1 cost has no receipt.\r\n1 gift has no day in the register and so stands in no year.\r\nThe"
                        + " receipt is named and its file is gone: l4.\r\n")
                .contains("a licensed accountant or\r\nyour tax office decides.");
    }

    /** The tax year of the United Kingdom begins on 6 April: gov.uk, Income Tax rates (from memory). */
    @Test
    void a_tax_year_begins_on_its_own_day_and_every_day_lies_in_one() throws IOException {
        db.write("test", write -> {
            var money = SettingsStore.MONEY.list(write).get(0);
            try {
                return SettingsStore.MONEY.update(
                        write,
                        money.row(),
                        money.version(),
                        SettingsStore.MONEY.shape().with(money.value(), "year_starts", Optional.of(MonthDay.of(4, 6))));
            } catch (Stale e) {
                throw new IllegalStateException(e);
            }
        });
        var settings = db.read(SettingsStore::get);
        TaxYear last = TaxYear.in(LocalDate.of(2026, 4, 5), settings);
        TaxYear next = TaxYear.in(LocalDate.of(2026, 4, 6), settings);
        assertThat(last.name()).isEqualTo("2025-26");
        assertThat(next.from()).isEqualTo(LocalDate.of(2026, 4, 6));
        assertThat(next.to()).isEqualTo(LocalDate.of(2027, 4, 5));
        assertThat(lines(folder(last).get("year-2025-26/entries.csv"))).hasSize(2);
        assertThat(lines(folder(next).get("year-2026-27/entries.csv"))).hasSize(5);
        for (LocalDate day = LocalDate.of(2023, 12, 31); day.getYear() < 2029; day = day.plusDays(1)) {
            TaxYear year = TaxYear.in(day, settings);
            assertThat(year.holds(day)).as("%s in %s", day, year).isTrue();
            assertThat(TaxYear.in(year.to().plusDays(1), settings).from())
                    .isEqualTo(year.to().plusDays(1));
        }
    }
}
