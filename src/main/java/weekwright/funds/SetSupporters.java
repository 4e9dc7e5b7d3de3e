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
import weekwright.build.Said;
import weekwright.build.SettingsStore;
import weekwright.db.Read;
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
        Problems problems = check(write, levels, thisMonth);
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

    /** Everything that the rules say of such counts; a month that cannot be counted is told once. */
    public static Problems check(Read read, List<SupporterMonth> levels, YearMonth thisMonth) {
        Problems problems = new Problems();
        levels.stream().map(SupporterMonth::month).distinct().forEach(month -> month(read, month, thisMonth, problems));
        Set<String> seen = new HashSet<>();
        for (SupporterMonth row : levels) {
            check(read, row, problems);
            if (!seen.add(row.level().folded())) {
                problems.fault("level", row.level().value(), "is there twice", "count each level once");
            }
        }
        return problems;
    }

    /** Months are counted from the project's first on, or from the first that was counted where that is earlier. */
    public static void month(Read read, YearMonth month, YearMonth thisMonth, Problems problems) {
        YearMonth first = first(read);
        if (month.isAfter(thisMonth)) {
            problems.fault("month", Said.month(month), "has not begun", "count a month up to " + Said.month(thisMonth));
        }
        if (month.isBefore(first)) {
            problems.fault(
                    "month",
                    Said.month(month),
                    "is before the first month, " + Said.month(first),
                    "count that month or a later one");
        }
    }

    /** The month in which the project began, or the first that was counted where that is earlier. */
    public static YearMonth first(Read read) {
        YearMonth began = YearMonth.from(SettingsStore.get(read).project().started());
        return SupporterMonthStore.TABLE.values(read).stream()
                .map(SupporterMonth::month)
                .min(YearMonth::compareTo)
                .filter(month -> month.isBefore(began))
                .orElse(began);
    }

    private static void check(Read read, SupporterMonth row, Problems problems) {
        References.check(read, SupporterMonthStore.TABLE.shape(), row, problems);
        Problems ofRow = new Problems();
        LedgerRules.check(row, ofRow);
        ofRow.list().forEach(p -> problems.fault(column(p.column(), row), p.read(), p.rule(), p.remedy()));
        find(read, row.month().minusMonths(1), row).map(Stored::value).ifPresent(before -> {
            if (before.end() != row.start()) {
                problems.remark(
                        column("start", row),
                        Integer.toString(row.start()),
                        "is not the " + before.end() + " with whom the month before ended",
                        "");
            }
        });
    }

    /** Fields of a form with a row a level are named {@code start.LEVEL}. */
    public static String column(String name, SupporterMonth row) {
        return name + "." + row.level();
    }

    private static Optional<Stored<SupporterMonth>> find(Read read, YearMonth month, SupporterMonth row) {
        return SupporterMonthStore.of(read, month).stream()
                .filter(stored -> stored.value().level().same(row.level()))
                .findFirst();
    }
}
