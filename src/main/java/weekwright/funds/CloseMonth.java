package weekwright.funds;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.Said;
import weekwright.build.SettingsStore;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Closes a month: its statement is kept as it is said now; or opens it again, and the statement is gone. */
public final class CloseMonth {
    private CloseMonth() {}

    /**
     * @param anyway although something is missing
     * @param who closes it, by name
     * @param published how many episodes were in that month
     * @param today in the project's zone
     * @param waiting files that are not entered yet
     */
    public static void close(
            Write write,
            YearMonth month,
            boolean anyway,
            String who,
            int published,
            LocalDate today,
            List<WaitingFile> waiting)
            throws Rejected {
        Problems problems = check(write, month, today);
        List<MonthGaps.Gap> gaps = MonthGaps.of(write, month, today, waiting);
        if (!gaps.isEmpty() && !anyway && !problems.hasFaults()) {
            problems.fault(
                    "anyway",
                    "",
                    Said.count(gaps.size(), "thing is", "things are") + " missing",
                    "mend what is missing, or tick that the month is closed as it is");
        }
        Faults.refuse(problems);
        ClosedMonthStore.TABLE.insert(write, new ClosedMonth(month, today, who));
        List<StatementLine> lines = new ArrayList<>(MonthStatement.of(write, month, published));
        gaps.forEach(gap -> lines.add(StatementLine.words(
                month, StatementLine.Part.MISSING, gap.text(), Optional.empty(), Optional.empty())));
        ClosedMonthStore.LINES.insertAll(write, lines);
    }

    /** Why a month cannot be closed. */
    public static Problems check(Read read, YearMonth month, LocalDate today) {
        Problems problems = new Problems();
        LocalDate opening = SettingsStore.get(read).openingDate();
        if (!month.isBefore(YearMonth.from(today))) {
            problems.fault(
                    "",
                    Said.month(month),
                    "is not over",
                    "close it from " + Said.day(month.plusMonths(1).atDay(1)) + " on");
        }
        if (month.isBefore(YearMonth.from(opening))) {
            problems.fault(
                    "",
                    Said.month(month),
                    "is before the books open",
                    "choose a month from " + Said.month(YearMonth.from(opening)) + " on");
        }
        ClosedMonthStore.find(read, month)
                .ifPresent(closed -> problems.fault(
                        "",
                        Said.month(month),
                        "was closed on " + Said.day(closed.value().closed()),
                        "open it again first"));
        return problems;
    }

    /** @return whether it was closed */
    public static boolean reopen(Write write, YearMonth month) throws Stale {
        Optional<Stored<ClosedMonth>> closed = ClosedMonthStore.find(write, month);
        if (closed.isEmpty()) {
            return false;
        }
        for (Stored<StatementLine> line : ClosedMonthStore.lines(write, month)) {
            ClosedMonthStore.LINES.delete(write, line.row(), line.version());
        }
        ClosedMonthStore.TABLE.delete(write, closed.get().row(), closed.get().version());
        return true;
    }
}
