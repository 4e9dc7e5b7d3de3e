package weekwright.funds;

import java.time.YearMonth;
import java.util.List;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.Said;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Marks a month as filled by one film, at every level that is counted in it. */
public final class MarkSurge {
    private MarkSurge() {}

    /** @param thisMonth in the project's zone */
    public static void mark(Write write, YearMonth month, YearMonth thisMonth) throws Rejected, Stale {
        List<SupporterMonth> rows = SupporterMonthStore.of(write, month).stream()
                .map(Stored::value)
                .map(row -> SupporterMonthStore.TABLE.shape().with(row, "surge", true))
                .toList();
        if (rows.isEmpty()) {
            throw new Rejected(
                    Problem.fault("month", Said.month(month), "has no counts to mark", "count its supporters first"));
        }
        SetSupporters.set(write, rows, thisMonth);
    }
}
