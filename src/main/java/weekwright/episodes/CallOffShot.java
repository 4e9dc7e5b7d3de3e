package weekwright.episodes;

import java.util.Optional;
import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Closes a shot that was not filmed, called off for safety; no reason is asked (rule 126). */
public final class CallOffShot {
    private CallOffShot() {}

    public static Stored<Shot> callOff(Write write, Shown shown) throws Stale {
        Optional<Stored<Shot>> now = ShotStore.TABLE.find(write, shown.row());
        if (now.isEmpty()) {
            throw new Stale(ShotStore.TABLE.name(), shown.row(), Optional.empty());
        }
        Shot shot = ShotStore.TABLE.shape().with(now.get().value(), "called_off", true);
        return ShotStore.TABLE.update(write, shown.row(), shown.version(), shot);
    }
}
