package weekwright.episodes;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.Rejected;
import weekwright.base.Shape;
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
     * What was noted when it was taken.
     *
     * @param clip which clip has it, empty where nobody noted it
     * @param minutes of footage
     * @param takes in the crew's own words
     */
    public record Took(String clip, Optional<Quantity> minutes, String takes) {}

    /** Captured on a day; the minutes and what was noted of the takes stay. */
    public static Stored<Shot> capture(Write write, Shown shown, LocalDate day, String clip, LocalDate today)
            throws Rejected, Stale {
        Shot shot = shown(write, shown);
        return capture(write, shown, day, new Took(clip, shot.minutes(), shot.takes()), today);
    }

    /** @param today in the project's zone */
    public static Stored<Shot> capture(Write write, Shown shown, LocalDate day, Took took, LocalDate today)
            throws Rejected, Stale {
        Shot shot = shown(write, shown);
        Problems problems = new Problems();
        if (day.isAfter(today)) {
            problems.fault("day", Said.day(day), "is after today, " + Said.day(today), "mark it once it is captured");
        }
        if (took.minutes().map(minutes -> minutes.doubleValue() == 0).orElse(false)) {
            problems.fault("minutes", "0", "is no footage", "write more than 0, or leave it empty");
        }
        Shape<Shot> shape = ShotStore.TABLE.shape();
        shot = shape.with(shot, "captured", Optional.of(day));
        shot = shape.with(shot, "clip", took.clip());
        shot = shape.with(shot, "minutes", took.minutes());
        shot = shape.with(shot, "takes", took.takes());
        shot = shape.with(shot, "called_off", false);
        shot = shape.with(shot, "missed", "");
        Faults.refuse(problems);
        return ShotStore.TABLE.update(write, shown.row(), shown.version(), shot);
    }

    /** Wanted again: what was noted of the takes stays. */
    public static Stored<Shot> takeBack(Write write, Shown shown) throws Stale {
        Shape<Shot> shape = ShotStore.TABLE.shape();
        Shot shot = shape.with(shown(write, shown), "captured", Optional.empty());
        shot = shape.with(shot, "clip", "");
        shot = shape.with(shot, "minutes", Optional.empty());
        shot = shape.with(shot, "missed", "");
        return ShotStore.TABLE.update(write, shown.row(), shown.version(), shape.with(shot, "called_off", false));
    }

    private static Shot shown(Write write, Shown shown) throws Stale {
        Optional<Stored<Shot>> now = ShotStore.TABLE.find(write, shown.row());
        if (now.isEmpty() || now.get().version() != shown.version()) {
            throw new Stale(ShotStore.TABLE.name(), shown.row(), now.map(stored -> stored));
        }
        return now.get().value();
    }
}
