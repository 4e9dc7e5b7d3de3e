package weekwright.build;

import weekwright.db.Stale;
import weekwright.db.Write;

/** Takes a line off the week sheet. */
public final class RemoveWeekLine {
    private RemoveWeekLine() {}

    public static void remove(Write write, Shown shown) throws Stale {
        WeekLineStore.TABLE.delete(write, shown.row(), shown.version());
    }
}
