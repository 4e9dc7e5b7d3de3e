package weekwright.build;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import weekwright.base.Id;

/**
 * A clock that a person has started on a task. A person has at most one that runs, and at most one for a task.
 *
 * @param stopped nothing while it runs; its hours are not saved yet
 */
public record RunningClock(Id crew, Id task, Instant started, Optional<Instant> stopped) {
    /** A clock that ran longer was left running. */
    public static final Duration LONGEST = Duration.ofHours(12);

    private static final int QUARTER = 15;

    /** Whole minutes from start to stop, or to now while it runs. */
    public int minutes(Instant now) {
        return (int) Math.max(0, Duration.between(started, stopped.orElse(now)).toMinutes());
    }

    /** As hours are written down: to the nearest quarter of an hour, at least one. */
    public static int rounded(int minutes) {
        return Math.max(QUARTER, (minutes + QUARTER / 2) / QUARTER * QUARTER);
    }
}
