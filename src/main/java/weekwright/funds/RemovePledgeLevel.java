package weekwright.funds;

import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.Said;
import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Write;

/** Removes a pledge level; refused once months of supporters were counted for it. */
public final class RemovePledgeLevel {
    private RemovePledgeLevel() {}

    public static void remove(Write write, Shown shown, PledgeLevel level) throws Rejected, Stale {
        int months = SupporterMonthStore.TABLE
                .where(write, "level", level.id().value())
                .size();
        if (months > 0) {
            throw new Rejected(Problem.fault(
                    "",
                    level.name(),
                    "has supporters counted in " + Said.count(months, "month", "months"),
                    "to end it, count this month with everybody left; the next starts with nobody"));
        }
        PledgeLevelStore.TABLE.delete(write, shown.row(), shown.version());
    }
}
