package weekwright.build;

import java.util.Optional;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Takes an hours entry away. */
public final class RemoveHours {
    private RemoveHours() {}

    public static void remove(Write write, Shown shown) throws Stale {
        Optional<Stored<HoursEntry>> before = HoursEntryStore.TABLE.find(write, shown.row());
        HoursEntryStore.TABLE.delete(write, shown.row(), shown.version());
        before.ifPresent(old ->
                LoggedHours.followStart(write, old.value().task(), old.value().date()));
    }
}
