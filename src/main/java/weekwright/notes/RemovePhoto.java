package weekwright.notes;

import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Write;

/** Takes a picture out of its note; its file stays. */
public final class RemovePhoto {
    private RemovePhoto() {}

    public static void remove(Write write, Shown shown) throws Stale {
        PhotoStore.TABLE.delete(write, shown.row(), shown.version());
    }
}
