package weekwright.build;

import weekwright.db.Stale;
import weekwright.db.Write;

/** Takes a stopped day away, as when it was entered by mistake. */
public final class RemoveStopped {
    private RemoveStopped() {}

    public static void remove(Write write, Shown shown) throws Stale {
        StoppedStore.TABLE.delete(write, shown.row(), shown.version());
    }
}
