package weekwright.episodes;

import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Write;

/** Takes a wanted picture off the list. */
public final class RemoveShot {
    private RemoveShot() {}

    public static void remove(Write write, Shown shown) throws Stale {
        ShotStore.TABLE.delete(write, shown.row(), shown.version());
    }
}
