package weekwright.funds;

import java.time.YearMonth;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.References;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * Sets how many supporters of each level a month had. More leaving than were there is refused; a start that is not what
 * the month before ended with is a remark, and is believed (rule 79).
 */
public final class SetSupporters {
    private SetSupporters() {}

    /**
     * @param levels a row a level, all of one month; levels not among them stay as they are
     * @param thisMonth in the project's zone
     * @return remarks
     */
    public static List<Problem> set(Write write, List<SupporterMonth> levels, YearMonth thisMonth)
            throws Rejected, Stale {
        Problems problems = new Problems();
        Set<String> seen = new HashSet<>();
        for (SupporterMonth row : levels) {
            check(write, row, thisMonth, problems);
            if (!seen.add(row.level().folded())) {
                problems.fault("level", row.level().value(), "is there twice", "count each level once");
            }
        }
        Faults.refuse(problems);
        for (SupporterMonth row : levels) {
            Optional<Stored<SupporterMonth>> old = find(write, row.month(), row);
            if (old.isEmpty()) {
                SupporterMonthStore.TABLE.insert(write, row);
            } else if (!old.get().value().equals(row)) {
                SupporterMonthStore.TABLE.update(
                        write, old.get().row(), old.get().version(), row);
            }
        }
        return problems.remarks();
    }

    private static void check(Write write, SupporterMonth row, YearMonth thisMonth, Problems problems) {
        References.check(write, SupporterMonthStore.TABLE.shape(), row, problems);
        if (row.month().isAfter(thisMonth)) {
            problems.fault("month", row.month().toString(), "has not begun", "count months that have");
        }
        Problems ofRow = new Problems();
        LedgerRules.check(row, ofRow);
        ofRow.list().forEach(p -> problems.fault(column(p.column(), row), p.read(), p.rule(), p.remedy()));
        find(write, row.month().minusMonths(1), row).map(Stored::value).ifPresent(before -> {
            int end = before.start() + before.joined().orElse(0) - before.left().orElse(0);
            if (end != row.start()) {
                problems.remark(
                        column("start", row),
                        Integer.toString(row.start()),
                        "is not the " + end + " with whom the month before ended",
                        "");
            }
        });
    }

    /** Fields of a form with a row a level are named {@code start.LEVEL}. */
    public static String column(String name, SupporterMonth row) {
        return name + "." + row.level();
    }

    private static Optional<Stored<SupporterMonth>> find(Write write, YearMonth month, SupporterMonth row) {
        return SupporterMonthStore.of(write, month).stream()
                .filter(stored ->
                        stored.value().level().folded().equals(row.level().folded()))
                .findFirst();
    }
}
