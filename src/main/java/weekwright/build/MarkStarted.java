package weekwright.build;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Says that a wait has begun (rule 30): lime cures, a casting is at the foundry. Work begins with its first hours. */
public final class MarkStarted {
    private MarkStarted() {}

    /** @param today in the project's zone */
    public static Stored<Task> mark(Write write, Shown shown, LocalDate day, LocalDate today) throws Rejected, Stale {
        Task task = TaskChange.shown(write, shown);
        Problems problems = new Problems();
        TaskChange.mustBeOpen(task, problems);
        TaskChange.mustBePast("day", day, today, problems);
        if (task.isWork()) {
            problems.fault("", task.title(), "is work, which begins with its first hours", "log them");
        }
        problems.addAll(UnmetLinks.faults(write, task, "begin"));
        Faults.refuse(problems);
        return TaskChange.set(write, shown, task, Map.of("started", Optional.of(day)));
    }
}
