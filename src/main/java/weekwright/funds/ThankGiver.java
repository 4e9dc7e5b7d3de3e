package weekwright.funds;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.db.Write;

/** Keeps the day on which a giver was thanked. */
public final class ThankGiver {
    private ThankGiver() {}

    /** @param today in the project's zone */
    public static void thank(Write write, Gift gift, LocalDate day, LocalDate today) throws Rejected, Stale {
        Problems problems = new Problems();
        MaterialChange.mustBePast("thanked", day, today, problems);
        MaterialChange.notBefore("thanked", day, gift.day(), "given", problems);
        Faults.refuse(problems);
        if (gift.stock()) {
            keep(write, StockItemStore.TABLE, gift, day);
        } else {
            keep(write, MaterialStore.TABLE, gift, day);
        }
    }

    private static <R extends Record> void keep(Write write, Table<R> table, Gift gift, LocalDate day) throws Stale {
        Stored<R> row = table.find(write, gift.id()).orElseThrow();
        table.update(write, row.row(), row.version(), table.shape().with(row.value(), "thanked", Optional.of(day)));
    }
}
