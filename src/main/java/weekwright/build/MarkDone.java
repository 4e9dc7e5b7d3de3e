package weekwright.build;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * Says that a task is done. What it follows has to be done first, unless hours were logged on it: then it is under way
 * whatever its links say (rule 35). The hours said to be left go with it.
 */
public final class MarkDone {
    private MarkDone() {}

    /** The task as it was kept, and what was odd but possible. */
    public record Done(Stored<Task> task, List<Problem> remarks) {}

    /** @param today in the project's zone */
    public static Done mark(Write write, Shown shown, LocalDate day, LocalDate today) throws Rejected, Stale {
        Task task = TaskChange.shown(write, shown);
        List<HoursEntry> hours = HoursEntryStore.ofTask(write, task.id()).stream()
                .map(Stored::value)
                .toList();
        Problems problems = new Problems();
        TaskChange.mustBeOpen(task, problems);
        TaskChange.mustBePast("day", day, today, problems);
        task.started()
                .filter(day::isBefore)
                .ifPresent(started -> problems.fault(
                        "day",
                        Said.day(day),
                        "is before it began on " + Said.day(started),
                        "write that day or a later one"));
        if (hours.isEmpty()) {
            problems.addAll(UnmetLinks.faults(write, task, "be done"));
            if (task.isWork()) {
                problems.remark("", task.title(), "has no hours logged", "nothing can be learned from it");
            }
        }
        int pieces = hours.stream().mapToInt(entry -> entry.pieces().orElse(0)).sum();
        if (task.pieces().isPresent() && pieces < task.piecesOrDefault()) {
            problems.remark("", task.title(), "has " + pieces + " of " + task.piecesOrDefault() + " pieces logged", "");
        }
        Faults.refuse(problems);
        Stored<Task> kept = TaskChange.set(
                write,
                shown,
                task,
                Map.of(
                        "done", Optional.of(day),
                        "left", Optional.empty(),
                        "left_on", Optional.empty(),
                        "aside_until", Optional.empty()));
        return new Done(kept, problems.remarks());
    }
}
