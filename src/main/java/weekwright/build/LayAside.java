package weekwright.build;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Takes a task out of work until a day, or until it is taken up again (rule 42). */
public final class LayAside {
    /** Years ahead that stand for "until it is taken up again". */
    private static final int FAR_YEARS = 50;

    private LayAside() {}

    /**
     * @param until the day on which it can be worked again; empty for until it is taken up
     * @param today in the project's zone
     */
    public static Stored<Task> lay(Write write, Shown shown, Optional<LocalDate> until, LocalDate today)
            throws Rejected, Stale {
        Task task = TaskChange.shown(write, shown);
        Problems problems = new Problems();
        TaskChange.mustBeOpen(task, problems);
        until.filter(day -> !day.isAfter(today))
                .ifPresent(day -> problems.fault(
                        "aside_until", Said.day(day), "is not after today, " + Said.day(today), "write a later day"));
        Faults.refuse(problems);
        return TaskChange.set(
                write, shown, task, Map.of("aside_until", Optional.of(until.orElse(today.plusYears(FAR_YEARS)))));
    }

    /** Whether a task is laid aside on a day. */
    public static boolean isAside(Task task, LocalDate day) {
        return task.asideUntil().map(day::isBefore).orElse(false);
    }

    /** The day until which it is laid aside, or empty when that is until somebody takes it up. */
    public static Optional<LocalDate> until(Task task, LocalDate today) {
        return task.asideUntil().filter(day -> day.isBefore(today.plusYears(FAR_YEARS / 2)));
    }
}
