package weekwright.funds;

import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Write;

/** Removes a supplier's number; the materials keep the name. */
public final class RemoveSupplier {
    private RemoveSupplier() {}

    public static void remove(Write write, Shown shown) throws Stale {
        SupplierStore.TABLE.delete(write, shown.row(), shown.version());
    }
}
