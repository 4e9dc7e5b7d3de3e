package weekwright.funds;

import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Write;

/** Takes an entry out of the books, as when it was entered twice; its change record keeps it. */
public final class RemoveLedgerEntry {
    private RemoveLedgerEntry() {}

    public static void remove(Write write, Shown shown) throws Stale {
        LedgerEntryStore.TABLE.delete(write, shown.row(), shown.version());
    }
}
