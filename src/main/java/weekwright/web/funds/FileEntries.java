package weekwright.web.funds;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Problems;
import weekwright.funds.BankBooks;
import weekwright.funds.LedgerEntry;
import weekwright.web.kit.FormReader;

/**
 * What a form makes of a waiting file's rows: those that go into the books, and what each is there.
 *
 * @param lines of the file, of the same rows
 * @param leftOut how many rows of the file stay out
 */
record FileEntries(List<LedgerEntry> entries, List<Integer> lines, int leftOut) {
    /** Rows and names beyond these are told and not listed; they go by what is usual. */
    static final int ROWS_LISTED = 400;

    static final int NAMES_LISTED = 120;

    /** @param levels what may stand beside supporters' money, in small letters */
    static FileEntries of(FormReader form, FileRows rows, LedgerEntry standIn, Set<String> levels) {
        List<LedgerEntry> as = likes(form, rows, standIn, levels);
        List<FileRows.Line> chosen = ticked(form, rows);
        return new FileEntries(
                chosen.stream()
                        .map(line -> {
                            LedgerEntry like = as.get(line.group());
                            return FileRows.entry(line.row(), rows.source(), like.kind(), like.stage(), like.payee());
                        })
                        .toList(),
                chosen.stream().map(line -> line.row().line()).toList(),
                rows.rows().size() - chosen.size() + rows.shut().size());
    }

    /** The rows to be entered: of those that are listed the ticked ones, of the others what is not there already. */
    private static List<FileRows.Line> ticked(FormReader form, FileRows rows) {
        Set<String> ticked = Set.copyOf(form.texts("take"));
        List<FileRows.Line> chosen = new ArrayList<>();
        for (int i = 0; i < rows.rows().size(); i++) {
            FileRows.Line line = rows.rows().get(i);
            if (i < ROWS_LISTED
                    ? ticked.contains(String.valueOf(line.row().line()))
                    : line.twin().isEmpty()) {
                chosen.add(line);
            }
        }
        return chosen;
    }

    /** By name of the file: an entry of which kind, stage and payee count. */
    private static List<LedgerEntry> likes(FormReader form, FileRows rows, LedgerEntry standIn, Set<String> levels) {
        List<LedgerEntry> as = new ArrayList<>();
        for (int i = 0; i < rows.groups().size(); i++) {
            FileRows.Group group = rows.groups().get(i);
            as.add(
                    i < NAMES_LISTED
                            ? ofLevel(form, i, chosen(form, i, standIn), group, levels)
                            : usual(rows, group, standIn));
        }
        return as;
    }

    /** Of supporters the books keep no names: beside their money stands a level or nothing. */
    private static LedgerEntry ofLevel(
            FormReader form, int number, LedgerEntry as, FileRows.Group group, Set<String> levels) {
        String payee = as.payee();
        if (as.kind() != LedgerEntry.Kind.PAYOUT
                || payee.isEmpty()
                || levels.contains(payee.toLowerCase(Locale.ROOT))) {
            return as;
        }
        if (payee.equals(group.payee())) {
            // as the file has it, and nobody typed it
            return LedgerFields.SHAPE.with(as, "payee", "");
        }
        form.fault(
                "payee." + number,
                payee,
                "is no pledge level",
                "choose one, or leave it empty: of supporters the books keep no names");
        return as;
    }

    /** What the fields of a name say: an entry of which kind, stage and payee count. */
    private static LedgerEntry chosen(FormReader form, int number, LedgerEntry standIn) {
        LedgerEntry as = standIn;
        for (String column : List.of("kind", "stage", "payee")) {
            Problems found = new Problems();
            Optional<Object> value = LedgerFields.SHAPE
                    .field(column)
                    .orElseThrow()
                    .parse(form.text(column + "." + number), form.reading(), found);
            found.list().forEach(p -> form.fault(column + "." + number, p.read(), p.rule(), p.remedy()));
            if (value.isPresent()) {
                as = LedgerFields.SHAPE.with(as, column, value.get());
            }
        }
        return as;
    }

    private static LedgerEntry usual(FileRows rows, FileRows.Group group, LedgerEntry standIn) {
        LedgerEntry as = LedgerFields.SHAPE.with(standIn, "kind", rows.kind(group));
        as = LedgerFields.SHAPE.with(as, "stage", group.suggestion().flatMap(BankBooks.Suggestion::stage));
        return LedgerFields.SHAPE.with(as, "payee", rows.payee(group));
    }
}
