package weekwright.files.year;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import weekwright.base.Id;
import weekwright.build.Said;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.Read;
import weekwright.files.KeptFiles;
import weekwright.funds.Gift;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
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
            YearTables tables = new YearTables(read, year, entries, named, gone);
            text(zip, "README.txt", words());
            text(zip, "entries.csv", tables.entries());
            text(zip, "totals.csv", tables.totals());
            text(zip, "pay-outs.csv", tables.payouts());
            text(zip, "gifts.csv", tables.gifts());
            text(zip, "equipment.csv", tables.equipment());
            text(zip, "statements.csv", tables.statements());
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
                "entries.csv     every entry of the books, " + Said.count(entries.size(), "row", "rows")
                        + "; counted is a counted balance",
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
        long undated =
                Gift.all(read).stream().filter(gift -> gift.day().isEmpty()).count();
        if (undated > 0) {
            lines.add(Said.count(undated, "gift has", "gifts have")
                    + " no day in the register and so "
                    + (undated == 1 ? "stands" : "stand") + " in no year.");
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
