package weekwright.web.funds;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.Read;
import weekwright.files.bank.BankReading;
import weekwright.funds.BankBooks;
import weekwright.funds.BankRow;
import weekwright.funds.BankSource;
import weekwright.funds.BankSourceStore;
import weekwright.funds.EnterBankFile;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.WaitingFiles;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/**
 * The rows of a waiting file before they are entered: what the books have already, who they are from or to, and what cannot
 * go in.
 *
 * @param rows those that can be entered
 * @param groups by name and direction, in the order in which they come
 * @param shut why rows cannot be entered, with their lines
 */
record FileRows(
        FileReading file, BankSource source, List<Line> rows, List<Group> groups, List<String> shut, int empty) {
    /** @param group its number */
    record Line(BankRow row, int group, Optional<BankBooks.Twin> twin) {}

    /** Rows with one name that go one way. */
    record Group(String payee, boolean in, int count, Money sum, Optional<BankBooks.Suggestion> suggestion) {}

    static FileRows of(WaitingFiles waiting, Request request, Read read) {
        FileReading file = FileReading.of(waiting, request);
        BankSource source = Optional.of(file.file().source())
                .filter(id -> !id.isEmpty())
                .flatMap(id -> BankSourceStore.TABLE.find(read, new Id(id)))
                .orElseThrow(() -> back(file))
                .value();
        BankReading reading = file.bookings(source, request, new Problems()).orElseThrow(() -> back(file));
        Settings settings = SettingsStore.get(read);
        List<String> shut = new ArrayList<>();
        reading.unread().forEach(problem -> shut.add(FileReading.said(problem)));
        List<BankRow> open = new ArrayList<>();
        for (BankRow row : reading.rows()) {
            Problems problems = new Problems();
            EnterBankFile.check(
                    entry(row, source, source.kindOut(), Optional.empty(), ""), settings, request.today(), problems);
            problems.faults().forEach(fault -> shut.add(FileReading.said(withoutRemedy(fault, row.line()))));
            if (!problems.hasFaults()) {
                open.add(row);
            }
        }
        List<LedgerEntry> ledger = LedgerEntryStore.TABLE.values(read);
        List<Optional<BankBooks.Twin>> twins = BankBooks.twins(open, ledger, source.account());
        Map<String, Integer> numbers = new LinkedHashMap<>();
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < open.size(); i++) {
            int group = numbers.computeIfAbsent(key(open.get(i)), k -> numbers.size());
            lines.add(new Line(open.get(i), group, twins.get(i)));
        }
        return new FileRows(
                file,
                source,
                lines,
                groups(lines, ledger),
                shut,
                reading.empty().size());
    }

    private static Request.Elsewhere back(FileReading file) {
        return new Request.Elsewhere(Saved.to("/funds/files/" + file.file().key()));
    }

    private static Problem withoutRemedy(Problem fault, int line) {
        return Problem.fault(fault.column(), fault.read(), fault.rule(), "").at("", line);
    }

    private static String key(BankRow row) {
        return row.payee().toLowerCase(Locale.ROOT) + (row.amount().isNegative() ? " out" : " in");
    }

    private static List<Group> groups(List<Line> lines, List<LedgerEntry> ledger) {
        List<List<BankRow>> members = new ArrayList<>();
        for (Line line : lines) {
            if (line.group() == members.size()) {
                members.add(new ArrayList<>());
            }
            members.get(line.group()).add(line.row());
        }
        BankBooks.Names names = new BankBooks.Names(ledger);
        return members.stream()
                .map(rows -> {
                    BankRow first = rows.get(0);
                    boolean in = !first.amount().isNegative();
                    return new Group(
                            first.payee(),
                            in,
                            rows.size(),
                            rows.stream().map(BankRow::amount).reduce(Money.ZERO, Money::plus),
                            names.suggestion(first.payee(), in));
                })
                .toList();
    }

    /** What rows with a name are: as the like of them was booked, else as is usual for the source. */
    LedgerEntry.Kind kind(Group group) {
        return group.suggestion()
                .map(BankBooks.Suggestion::kind)
                .orElse(group.in() ? source.kindIn() : source.kindOut());
    }

    /** A name of the file is proposed but where supporters are paid for: of them the books have levels and sums alone. */
    String payee(Group group) {
        return group.suggestion()
                .map(BankBooks.Suggestion::payee)
                .orElse(kind(group) == LedgerEntry.Kind.PAYOUT ? "" : group.payee());
    }

    /** A row as an entry of the books. */
    static LedgerEntry entry(BankRow row, BankSource source, LedgerEntry.Kind kind, Optional<Id> stage, String payee) {
        boolean payout = kind == LedgerEntry.Kind.PAYOUT;
        return new LedgerEntry(
                new Id("new"),
                row.date(),
                row.amount(),
                kind,
                source.account(),
                payout ? row.gross() : Optional.empty(),
                payout ? row.fee() : Optional.empty(),
                false,
                stage,
                Optional.empty(),
                Optional.empty(),
                payee,
                Optional.empty(),
                "",
                Optional.empty(),
                "",
                BankBooks.note(row, kind, payee));
    }

    /** What stands beside supporters' money: the levels, and what the books have there already; in small letters. */
    static Set<String> levels(Read read) {
        return Stream.concat(
                        PledgeLevelStore.TABLE.ids(read).stream().map(Id::value),
                        LedgerEntryStore.TABLE.values(read).stream()
                                .filter(entry -> entry.kind() == LedgerEntry.Kind.PAYOUT)
                                .map(LedgerEntry::payee))
                .map(text -> text.toLowerCase(Locale.ROOT))
                .collect(Collectors.toSet());
    }
}
