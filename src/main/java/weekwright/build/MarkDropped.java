package weekwright.build;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Gives a task up: it holds nothing up from then on and orders nothing (rule 34). */
public final class MarkDropped {
    private MarkDropped() {}

    /** @param today in the project's zone */
    public static Stored<Task> mark(Write write, Shown shown, LocalDate day, LocalDate today) throws Rejected, Stale {
        Task task = TaskChange.shown(write, shown);
        Problems problems = new Problems();
        TaskChange.mustBeOpen(task, problems);
        TaskChange.mustBePast("day", day, today, problems);
        Faults.refuse(problems);
        return TaskChange.set(write, shown, task, Map.of("dropped", Optional.of(day), "aside_until", Optional.empty()));
    }
}
