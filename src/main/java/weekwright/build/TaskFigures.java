package weekwright.build;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import weekwright.base.Hours;
import weekwright.db.Read;
import weekwright.db.Stored;

/**
 * Hours of one task, in minutes.
 *
 * @param estimate the likely hours; of pieces all of them, each doubling taking its percent; 0 where nothing was estimated
 * @param logged hours of the hands
 * @param filming hours of whoever minded the camera
 * @param left as the crew said it less what was logged since, else estimate less logged; 0 for a task done
 * @param pieces finished pieces logged
 */
public record TaskFigures(int estimate, int logged, int filming, int left, int pieces) {

    /** The entries of every task, by its id in lower case. */
    public static Map<String, List<HoursEntry>> entries(Read read) {
        Map<String, List<HoursEntry>> byTask = new HashMap<>();
        for (HoursEntry entry : HoursEntryStore.TABLE.values(read)) {
            entry.task()
                    .ifPresent(id -> byTask.computeIfAbsent(id.folded(), t -> new ArrayList<>())
                            .add(entry));
        }
        return byTask;
    }

    /** Of several tasks together, with the hours entries of all tasks by folded id. */
    public static TaskFigures sum(List<Task> tasks, Map<String, List<HoursEntry>> entries) {
        return tasks.stream()
                .map(task -> of(task, entries.getOrDefault(task.id().folded(), List.of())))
                .reduce(none(), TaskFigures::plus);
    }

    /** Of one task, from the log. */
    public static TaskFigures of(Read read, Task task) {
        return of(
                task,
                HoursEntryStore.ofTask(read, task.id()).stream()
                        .map(Stored::value)
                        .toList());
    }

    /** @param entries of this task */
    public static TaskFigures of(Task task, List<HoursEntry> entries) {
        int logged = 0;
        int filming = 0;
        int since = 0;
        int pieces = 0;
        for (HoursEntry entry : entries) {
            int minutes = entry.hours().minutes() * entry.peopleOrDefault();
            if (entry.asOrDefault() == HoursEntry.As.CAMERA) {
                filming += minutes;
            }
            if (entry.asOrDefault() == HoursEntry.As.HANDS) {
                logged += minutes;
                pieces += entry.pieces().orElse(0);
                since += task.leftOn().map(entry.date()::isAfter).orElse(false) ? minutes : 0;
            }
        }
        int estimate = estimate(task);
        int rest = task.left().map(Hours::minutes).orElse(-1);
        int left = rest >= 0 ? Math.max(15, rest - since) : Math.max(0, estimate - logged);
        return new TaskFigures(estimate, logged, filming, task.isOpen() ? left : 0, pieces);
    }

    private static int estimate(Task task) {
        if (!task.isWork() || task.likely().isEmpty()) {
            return 0;
        }
        double first = task.likely().get().doubleValue() * 60;
        double exponent =
                Math.log(task.learning().map(l -> l.doubleValue() / 100).orElse(1.0)) / Math.log(2);
        double sum = 0;
        for (int piece = 1; piece <= task.piecesOrDefault(); piece++) {
            sum += first * Math.pow(piece, exponent);
        }
        // sums of pieces go on to the nearest quarter of an hour: a guess has no minutes
        return task.pieces().isPresent() ? (int) Math.round(sum / 15) * 15 : (int) Math.round(sum);
    }

    /** The larger of what was estimated and what it comes to, for the scale of a table of tallies. */
    public int most() {
        return Math.max(estimate, logged + left);
    }

    public TaskFigures plus(TaskFigures other) {
        return new TaskFigures(
                estimate + other.estimate,
                logged + other.logged,
                filming + other.filming,
                left + other.left,
                pieces + other.pieces);
    }

    public static TaskFigures none() {
        return new TaskFigures(0, 0, 0, 0, 0);
    }
}
