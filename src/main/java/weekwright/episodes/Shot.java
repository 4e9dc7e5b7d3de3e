package weekwright.episodes;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Lines;
import weekwright.base.Quantity;
import weekwright.base.Ref;

/**
 * A picture that is wanted.
 *
 * @param calledOff not filmed, for safety
 * @param minutes of footage taken of it
 * @param takes what was noted of the takes
 * @param missed what was said when its task was done and it was not captured
 */
public record Shot(
        Id id,
        @Ref("episodes") Optional<Id> episode,
        @Ref("tasks") Optional<Id> task,
        @Bounds(max = 500) String what,
        Optional<Size> size,
        boolean must,
        boolean once,
        Optional<LocalDate> captured,
        String clip,
        boolean calledOff,
        @Bounds(min = 0, max = 10000) Optional<Quantity> minutes,
        @Lines @Bounds(max = 2000) String takes,
        @Bounds(max = 500) String missed) {
    /** Size of the picture. */
    public enum Size {
        WIDE,
        MEDIUM,
        CLOSE,
        INSERT,
        TIME_LAPSE
    }

    /** A must-have shot that is neither captured nor called off. */
    public boolean isMissed() {
        return must && captured.isEmpty() && !calledOff;
    }
}
