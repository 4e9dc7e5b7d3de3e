package weekwright.episodes;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.Said;
import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Says that a shot is captured, or takes that back. */
public final class CaptureShot {
    private CaptureShot() {}

    /**
     * @param day empty takes it back
     * @param clip which clip has it, empty where nobody noted it
     * @param today in the project's zone
     */
    public static Stored<Shot> capture(Write write, Shown shown, Optional<LocalDate> day, String clip, LocalDate today)
            throws Rejected, Stale {
        Optional<Stored<Shot>> now = ShotStore.TABLE.find(write, shown.row());
        if (now.isEmpty() || now.get().version() != shown.version()) {
            throw new Stale(ShotStore.TABLE.name(), shown.row(), now.map(stored -> stored));
        }
        Problems problems = new Problems();
        day.filter(captured -> captured.isAfter(today))
                .ifPresent(captured -> problems.fault(
                        "day",
                        Said.day(captured),
                        "is after today, " + Said.day(today),
                        "mark it once it is captured"));
        Faults.refuse(problems);
        Shot shot = ShotStore.TABLE.shape().with(now.get().value(), "captured", day);
        shot = ShotStore.TABLE.shape().with(shot, "clip", clip);
        if (day.isPresent()) {
            shot = ShotStore.TABLE.shape().with(shot, "called_off", false);
        }
        return ShotStore.TABLE.update(write, shown.row(), shown.version(), shot);
    }
}
