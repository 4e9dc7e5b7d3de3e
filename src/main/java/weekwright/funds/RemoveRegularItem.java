package weekwright.funds;

import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Write;

/** Removes what came again; what was booked of it stays in the books. */
public final class RemoveRegularItem {
    private RemoveRegularItem() {}

    public static void remove(Write write, Shown shown) throws Stale {
        RegularItemStore.TABLE.delete(write, shown.row(), shown.version());
    }
}
