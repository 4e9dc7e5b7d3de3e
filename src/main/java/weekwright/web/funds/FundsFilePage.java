package weekwright.web.funds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.build.Ids;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.files.bank.BankReading;
import weekwright.files.bank.BankTable;
import weekwright.funds.BankRow;
import weekwright.funds.BankSource;
import weekwright.funds.BankSourceStore;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.SaveBankSource;
import weekwright.funds.WaitingFiles;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** How a waiting file is read, with its first rows as they would be entered; kept for the next file of its source. */
public final class FundsFilePage implements Page {
    private static final int ROWS_SHOWN = 8;
    private static final int FAULTS_SHOWN = 5;
    private static final String[] COLUMNS = FileReading.SHAPE.names().stream()
            .filter(name -> !name.equals("id"))
            .toArray(String[]::new);

    /** What stands in for columns that cannot be read; what it says of amounts passes the rules. */
    private static final BankSource STAND_IN = new BankSource(
            new Id("new"),
            "",
            "",
            BankSource.Encoding.UTF_8,
            BankSource.Divider.COMMA,
            0,
            BankSource.DateOrder.YMD,
            BankSource.Decimals.POINT,
            1,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            LedgerEntry.Kind.OTHER_INCOME,
            LedgerEntry.Kind.OTHER_COST,
            false);

    /**
     * @param columns of the file, by number, with a heading or a text of them
     * @param remarks what is odd about the whole file
     * @param found how many bookings are read; empty while none can be
     * @param faults what is wrong with the first rows that cannot be read
     */
    public record View(
            Form form,
            String name,
            FileLists lists,
            List<Form.Choice> columns,
            List<String> remarks,
            String found,
            List<Line> lines,
            List<String> faults) {}

    /** A row as it would be entered. */
    public record Line(String day, String payee, String reference, Money amount, String balance) {}

    private final WaitingFiles waiting;

    public FundsFilePage(WaitingFiles waiting) {
        this.waiting = waiting;
    }

    @Override
    public View show(Request request) {
        return request.read(read -> view(request, read));
    }

    private View view(Request request, Read read) {
        FileReading reading = FileReading.of(waiting, request);
        Form form = request.form("", first(request, read, reading));
        Problems problems = new Problems();
        Optional<BankTable> table = reading.table(form.value("encoding"), form.value("divider"), problems);
        Optional<BankReading> bookings =
                table.flatMap(t -> source(form).map(source -> FileReading.bookings(t, source, request)));
        List<String> remarks = new ArrayList<>();
        problems.list().forEach(problem -> remarks.add(Formats.sentence(problem.text()) + "."));
        reading.questions(form::value, request.settings().moneyDigits())
                .forEach(open -> remarks.add(
                        "“" + open.text() + "” " + open.rule() + ": " + open.choose() + ", nothing is guessed."));
        Formats formats = request.formats();
        return new View(
                form,
                reading.file().name(),
                FileLists.all(),
                table.map(t -> FileLists.columns(t, form.value("skip"))).orElse(List.of()),
                remarks,
                bookings.map(FundsFilePage::found).orElse(""),
                bookings.map(b -> lines(b, form.holds("people", "yes"), formats))
                        .orElse(List.of()),
                bookings.map(FundsFilePage::faults).orElse(List.of()));
    }

    /** What stands in the fields at first: as the source was read last, or as the file looks. */
    private static Map<String, String> first(Request request, Read read, FileReading reading) {
        int digits = request.settings().moneyDigits();
        Optional<Stored<BankSource>> source = stored(read, reading);
        if (source.isPresent()) {
            return FileReading.SHAPE.texts(source.get().value(), digits);
        }
        Map<String, String> values = new LinkedHashMap<>(reading.guess("", "", digits));
        values.put("account", account(read));
        values.put("kind_in", "other-income");
        values.put("kind_out", "other-cost");
        return values;
    }

    /** The account with the most entries. */
    private static String account(Read read) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        LedgerEntryStore.TABLE.values(read).forEach(entry -> counts.merge(entry.account(), 1, Integer::sum));
        return counts.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse("");
    }

    private static Optional<Stored<BankSource>> stored(Read read, FileReading reading) {
        return reading.file().source().isEmpty()
                ? Optional.empty()
                : BankSourceStore.TABLE.find(read, new Id(reading.file().source()));
    }

    /** The source that stands in the fields; empty as long as it is not whole. */
    private static Optional<BankSource> source(Form form) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (String column : COLUMNS) {
            texts.put(column, form.value(column));
        }
        texts.put("id", "new");
        return FileReading.SHAPE.parse(texts, Reading.form(2), new Problems());
    }

    private static String found(BankReading bookings) {
        return Formats.sentence(Formats.counted(bookings.rows().size(), "booking is", "bookings are")) + " read"
                + (bookings.unreadRows() == 0
                        ? ""
                        : ", " + Formats.counted(bookings.unreadRows(), "row is not", "rows are not"))
                + (bookings.empty().isEmpty()
                        ? ""
                        : ", " + Formats.counted(bookings.empty().size(), "row moves", "rows move") + " nothing")
                + ".";
    }

    private static List<Line> lines(BankReading bookings, boolean people, Formats formats) {
        return bookings.rows().stream()
                .limit(ROWS_SHOWN)
                .map((BankRow row) -> new Line(
                        formats.dateLong(row.date()),
                        people ? "left out" : row.payee(),
                        row.reference(),
                        row.amount(),
                        row.balance()
                                .map(money -> formats.moneyExact(money.minor()))
                                .orElse("")))
                .toList();
    }

    private static List<String> faults(BankReading bookings) {
        return bookings.unread().stream()
                .limit(FAULTS_SHOWN)
                .map(FileReading::said)
                .toList();
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        FileReading reading = FileReading.of(waiting, request);
        int digits = request.settings().moneyDigits();
        if (form.act().equals("look")) {
            form.ignoringFields();
            return new Answer.Again(Map.of(), "");
        }
        if (form.act().equals("guess")) {
            Map<String, List<String>> instead = new LinkedHashMap<>();
            List.of(
                            "date",
                            "payee",
                            "reference",
                            "amount",
                            "way",
                            "out",
                            "in",
                            "balance",
                            "currency",
                            "gross",
                            "fee",
                            "people")
                    .forEach(role -> instead.put(role, List.of()));
            reading.guess(form.text("encoding"), form.text("divider"), digits)
                    .forEach((name, text) -> instead.put(name, text.isEmpty() ? List.of() : List.of(text)));
            form.ignoringFields();
            return new Answer.Again(instead, "");
        }
        reading.questions(form::text, digits)
                .forEach(open -> form.fault(open.column(), open.text(), open.rule(), open.choose()));
        BankSource draft = form.draft(STAND_IN, asked(form));
        Problems cells = new Problems();
        Optional<BankTable> table = reading.table(form.text("encoding"), form.text("divider"), cells);
        cells.faults().forEach(form.problems()::add);
        Problems rules = request.read(read -> SaveBankSource.check(read, stored(read, reading), draft));
        form.besides(() -> rules);
        if (!form.problems().hasFaults()
                && !rules.hasFaults()
                && FileReading.bookings(table.orElseThrow(), draft, request)
                        .rows()
                        .isEmpty()) {
            form.fault("date", "", "No row can be read like this", "look at the columns and the order of a date");
        }
        return request.save(write -> {
            Optional<Stored<BankSource>> old = stored(write, reading);
            Id id = old.map(one -> one.value().id())
                    .orElseGet(() -> Ids.word(draft.name(), BankSourceStore.TABLE.ids(write)));
            SaveBankSource.save(write, old, FileReading.SHAPE.with(draft, "id", id));
            waiting.readAs(reading.file().key(), id.value());
            return Saved.to("/funds/files/" + reading.file().key() + "/rows");
        });
    }

    /** All fields but those that were asked about already. */
    private static String[] asked(FormReader form) {
        Set<String> told = new HashSet<>();
        form.problems().list().forEach(problem -> told.add(problem.column()));
        return Arrays.stream(COLUMNS).filter(name -> !told.contains(name)).toArray(String[]::new);
    }
}
