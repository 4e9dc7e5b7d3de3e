package weekwright.build;

import java.time.Instant;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.Write;

/** Stops a clock. Its hours are proposed in the form of the log; nothing is logged by it. */
public final class StopClock {
    private StopClock() {}

    /**
     * @param at when the work ended, not before it began and not in the future
     * @throws Rejected where the clock is gone or the moment cannot be
     */
    public static RunningClock stop(Write write, Id crew, Id task, Instant at) throws Rejected {
        RunningClock clock = RunningClockStore.find(write, crew, task)
                .orElseThrow(() -> new Rejected(Problem.fault(
                        "", "", "the clock is not there any more", "its hours may be saved already: look below")));
        if (clock.stopped().isPresent()) {
            return clock;
        }
        if (at.isAfter(write.at())) {
            throw new Rejected(Problem.fault("until", "", "is still to come", "write when the work ended"));
        }
        if (!at.isAfter(clock.started()) && !at.equals(write.at())) {
            throw new Rejected(
                    Problem.fault("until", "", "is before the clock was started", "write when the work ended"));
        }
        RunningClockStore.stop(write, clock, at);
        return RunningClockStore.find(write, crew, task).orElseThrow();
    }
}
