package weekwright.build;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Hours;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Keeps how many hours the crew sees still to do on a task, with the day on which it was said. */
public final class SayLeft {
    private SayLeft() {}

    /** @param today in the project's zone */
    public static Stored<Task> say(Write write, Shown shown, Hours left, LocalDate today) throws Rejected, Stale {
        Task task = TaskChange.shown(write, shown);
        Problems problems = new Problems();
        TaskChange.mustBeOpen(task, problems);
        if (!task.isWork()) {
            problems.fault("left", task.title(), "is a wait, which takes days and no hours", "leave it empty");
        }
        Faults.refuse(problems);
        return TaskChange.set(write, shown, task, Map.of("left", Optional.of(left), "left_on", Optional.of(today)));
    }
}
