package weekwright.funds;

import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.Said;
import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Write;

/** Removes a pledge level; refused once months of supporters were counted for it or pay-outs are booked on it. */
public final class RemovePledgeLevel {
    private RemovePledgeLevel() {}

    public static void remove(Write write, Shown shown, PledgeLevel level) throws Rejected, Stale {
        int months = SupporterMonthStore.TABLE
                .where(write, "level", level.id().value())
                .size();
        long paidOut = LedgerEntryStore.TABLE.where(write, "kind", "payout").stream()
                .filter(entry ->
                        entry.value().payee().equalsIgnoreCase(level.id().value()))
                .count();
        Problems problems = new Problems();
        String end = "to end it, count this month with everybody left; the next starts with nobody";
        if (months > 0) {
            problems.fault("", level.name(), "has supporters counted in " + Said.count(months, "month", "months"), end);
        }
        if (paidOut > 0) {
            problems.fault(
                    "",
                    level.name(),
                    "has " + Said.count(paidOut, "pay-out", "pay-outs") + " in the books",
                    months > 0 ? "" : end);
        }
        Faults.refuse(problems);
        PledgeLevelStore.TABLE.delete(write, shown.row(), shown.version());
    }
}
