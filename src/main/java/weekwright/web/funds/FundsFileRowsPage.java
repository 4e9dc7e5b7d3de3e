package weekwright.web.funds;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import weekwright.base.Codec;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.SettingsStore;
import weekwright.db.Read;
import weekwright.funds.Balance;
import weekwright.funds.BankBooks;
import weekwright.funds.BankFile;
import weekwright.funds.BankRow;
import weekwright.funds.EnterBankFile;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.WaitingFile;
import weekwright.funds.WaitingFiles;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;

/** The rows of a waiting file: what each is, which go into the books. Nothing is entered before the button. */
public final class FundsFileRowsPage implements Page {
    private static final int SHUT_MOST = 200;

    /**
     * @param said what was found, in sentences
     * @param shut rows that cannot go in, and why
     */
    public record View(
            Form form,
            String key,
            String name,
            String source,
            List<String> said,
            List<Name> names,
            List<Line> lines,
            List<String> shut,
            List<Form.Choice> kinds,
            List<Form.Choice> stages,
            List<Form.Choice> levels) {}

    /** Rows with one name. */
    public record Name(int number, String payee, String rows, Money sum, String why) {}

    /** @param known that the books have it already, in words; empty where they do not */
    public record Line(int line, String day, String payee, String reference, Money amount, String known) {}

    private final WaitingFiles waiting;

    public FundsFileRowsPage(WaitingFiles waiting) {
        this.waiting = waiting;
    }

    @Override
    public View show(Request request) {
        return request.read(read -> view(request, read));
    }

    private View view(Request request, Read read) {
        FileRows rows = FileRows.of(waiting, request, read);
        Formats formats = request.formats();
        Map<String, String> values = new LinkedHashMap<>();
        List<Name> names = new ArrayList<>();
        for (int i = 0; i < Math.min(FileEntries.NAMES_LISTED, rows.groups().size()); i++) {
            FileRows.Group group = rows.groups().get(i);
            values.put("kind." + i, Codec.word(rows.kind(group)));
            values.put(
                    "stage." + i,
                    group.suggestion()
                            .flatMap(BankBooks.Suggestion::stage)
                            .map(Id::value)
                            .orElse(""));
            values.put("payee." + i, rows.payee(group));
            names.add(new Name(
                    i,
                    rows.source().people()
                            ? (group.in() ? "what comes in" : "what goes out")
                            : group.payee().isEmpty() ? "without a name" : group.payee(),
                    Formats.count(group.count(), "row"),
                    group.sum(),
                    group.suggestion().isPresent() ? "as before" : ""));
        }
        Form form = request.form("", values);
        List<FileRows.Line> shown =
                rows.rows().stream().limit(FileEntries.ROWS_LISTED).toList();
        if (!request.wasRefused("")) {
            form = form.with(
                    "take",
                    shown.stream()
                            .filter(line -> line.twin().isEmpty())
                            .map(line -> String.valueOf(line.row().line()))
                            .toArray(String[]::new));
        }
        return new View(
                form,
                rows.file().file().key(),
                rows.file().file().name(),
                rows.source().name(),
                said(rows, read, request, formats),
                names,
                shown.stream()
                        .map(line -> line(line, rows.source().people(), formats))
                        .toList(),
                shut(rows.shut()),
                LedgerFields.movements(),
                Choices.stages(read),
                LedgerFields.levels(read));
    }

    private static List<String> shut(List<String> all) {
        List<String> told = new ArrayList<>(all.subList(0, Math.min(SHUT_MOST, all.size())));
        if (all.size() > SHUT_MOST) {
            told.add("and " + (all.size() - SHUT_MOST) + " more");
        }
        return told;
    }

    private static List<String> said(FileRows rows, Read read, Request request, Formats formats) {
        List<String> said = new ArrayList<>();
        long known =
                rows.rows().stream().filter(line -> line.twin().isPresent()).count();
        said.add(Formats.sentence(Formats.counted(rows.rows().size(), "row", "rows")) + " can go into the books"
                + (known == 0
                        ? "."
                        : "; " + Formats.counted(known, "seems", "seem") + " to be there already and "
                                + (known == 1 ? "is" : "are") + " not ticked."));
        int more = rows.rows().size() - FileEntries.ROWS_LISTED;
        if (more > 0) {
            said.add("Of them " + FileEntries.ROWS_LISTED + " are listed; of the other " + more
                    + " all go in that are not there already.");
        }
        if (rows.groups().size() > FileEntries.NAMES_LISTED) {
            said.add("Of " + rows.groups().size() + " names " + FileEntries.NAMES_LISTED
                    + " are listed; the others are booked as their like was before, else as is usual for the source.");
        }
        if (rows.empty() > 0) {
            said.add(Formats.sentence(Formats.counted(rows.empty(), "row moves", "rows move")) + " nothing.");
        }
        BankBooks.last(rows.rows().stream().map(FileRows.Line::row).toList())
                .ifPresent(last -> said.add(balance(last, rows, request, formats, newRows(rows, read, last))));
        return said;
    }

    /** What the books would say on that day with the rows that are not there yet. */
    private static Money newRows(FileRows rows, Read read, BankRow last) {
        return rows.rows().stream()
                .filter(line -> line.twin().isEmpty() && !line.row().date().isAfter(last.date()))
                .map(line -> line.row().amount())
                .reduce(Money.ZERO, Money::plus)
                .plus(Balance.accounts(last.date(), SettingsStore.get(read), LedgerEntryStore.TABLE.values(read))
                        .getOrDefault(rows.source().account(), Money.ZERO));
    }

    private static String balance(BankRow last, FileRows rows, Request request, Formats formats, Money books) {
        long off = last.balance().orElseThrow().minor() - books.minor();
        String day = formats.dateLong(last.date());
        String told =
                "The file ends with " + formats.moneyExact(last.balance().get().minor()) + " on " + day;
        return off == 0
                ? told + ", and so would the books with the ticked rows."
                : told + "; with the ticked rows the books would have " + formats.moneyExact(books.minor()) + ", "
                        + formats.moneyExact(Math.abs(off)) + (off > 0 ? " less." : " more.")
                        + (off > 0 && request.settings().project().openingCash().isEmpty()
                                ? " If that was there when the books opened, write it under Settings as Opening cash."
                                : "");
    }

    private static Line line(FileRows.Line line, boolean people, Formats formats) {
        BankRow row = line.row();
        String known = line.twin()
                .map(twin -> twin.sure()
                        ? "in the books already"
                        : "same day and amount as "
                                + (twin.entry().payee().isEmpty()
                                        ? "an entry without a name"
                                        : "“" + twin.entry().payee() + "”"))
                .orElse("");
        return new Line(
                row.line(),
                formats.dateShort(row.date()),
                people ? "name left out" : row.payee(),
                row.reference(),
                row.amount(),
                known);
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        FileRows rows = request.read(read -> FileRows.of(waiting, request, read));
        FileEntries entries = FileEntries.of(form, rows, LedgerFields.standIn(request), request.read(FileRows::levels));
        if (!rows.shut().isEmpty() && !form.ticked("leave")) {
            form.fault(
                    "leave",
                    "",
                    Formats.sentence(Formats.counted(rows.shut().size(), "row", "rows")) + " cannot go in",
                    "tick that they are left out, or change how the file is read");
        }
        WaitingFile file = rows.file().file();
        AtomicReference<WaitingFiles.Kept> taken = new AtomicReference<>();
        try {
            return request.save(write -> {
                taken.set(waiting.take(file.key())
                        .orElseThrow(() -> new Rejected(Problem.fault(
                                "", file.name(), "does not wait any more", "look whether it is entered"))));
                return Saved.to("/funds/files")
                        .saying(entered(EnterBankFile.enter(
                                write,
                                file,
                                rows.source().id(),
                                entries.entries(),
                                entries.lines(),
                                entries.leftOut(),
                                request.today())));
            });
        } catch (Exception notEntered) {
            Optional.ofNullable(taken.get()).ifPresent(waiting::putBack);
            throw notEntered;
        }
    }

    private static String entered(BankFile file) {
        return Formats.sentence(Formats.counted(file.entered(), "row", "rows")) + " of " + file.name()
                + (file.entered() == 1 ? " is" : " are") + " in the books"
                + (file.leftOut() == 0 ? "." : ", " + Formats.counted(file.leftOut(), "is", "are") + " left out.");
    }
}
