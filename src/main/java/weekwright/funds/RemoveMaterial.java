package weekwright.funds;

import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.Said;
import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Write;

/** Takes a material line off; refused once money in the books was paid for it. */
public final class RemoveMaterial {
    private RemoveMaterial() {}

    public static void remove(Write write, Shown shown) throws Rejected, Stale {
        Material line = MaterialChange.shown(write, shown);
        int paid = LedgerEntryStore.TABLE
                .where(write, "material", line.id().value())
                .size();
        if (paid > 0) {
            throw new Rejected(Problem.fault(
                    "",
                    line.item(),
                    "has " + Said.count(paid, "payment", "payments") + " in the books",
                    "take these out of the books first, or keep the line"));
        }
        MaterialStore.TABLE.delete(write, shown.row(), shown.version());
    }
}
