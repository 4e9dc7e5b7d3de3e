package weekwright.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.MarkDone;
import weekwright.build.Shown;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * Says that a task is done, when nothing that happens once was lost to the camera in silence: must-have shots of it that
 * happen once, or all must-have shots where the task itself happens once, are captured, called off for safety, or somebody
 * says what became of them. What was said is kept with each shot.
 */
public final class FinishFilmed {
    /** The field in which it is said. */
    public static final String FIELD = "missed";

    private FinishFilmed() {}

    /**
     * @param said what became of shots that are not captured; empty where nobody was asked
     * @param today in the project's zone
     * @throws Rejected with the faults of the task and one for each shot of which nothing was said
     */
    public static MarkDone.Done finish(Write write, Shown shown, LocalDate day, String said, LocalDate today)
            throws Rejected, Stale {
        List<Stored<Shot>> lost = TaskStore.TABLE
                .find(write, shown.row())
                .map(task -> unsaid(write, task.value()))
                .orElse(List.of());
        List<Problem> faults = new ArrayList<>();
        if (said.isBlank()) {
            faults.addAll(faults(lost, FIELD, "tick it off first, or say what became of it to go on"));
        } else if (said.length() > 500) {
            faults.add(Problem.fault(FIELD, said, "is longer than 500 characters", "say it shorter"));
        }
        MarkDone.Done done;
        try {
            done = MarkDone.mark(write, shown, day, today);
        } catch (Rejected rejected) {
            List<Problem> all = new ArrayList<>(rejected.problems());
            all.addAll(faults);
            throw new Rejected(all);
        }
        if (!faults.isEmpty()) {
            throw new Rejected(faults);
        }
        for (Stored<Shot> shot : lost) {
            Shot kept = ShotStore.TABLE.shape().with(shot.value(), FIELD, said.strip());
            ShotStore.TABLE.update(write, shot.row(), shot.version(), kept);
        }
        return done;
    }

    /** A fault for each shot of these tasks of which nothing was said, for forms that close several tasks at once. */
    public static List<Problem> faults(Read read, List<Task> tasks, String field) {
        List<Problem> faults = new ArrayList<>();
        tasks.forEach(task -> faults.addAll(faults(
                unsaid(read, task),
                field,
                "tick it off first, or say so where \"" + task.title() + "\" is marked done")));
        return faults;
    }

    private static List<Problem> faults(List<Stored<Shot>> lost, String field, String remedy) {
        return lost.stream()
                .map(shot -> Problem.fault(
                        field, shot.value().what(), "is a must-have shot, happens once and is not captured", remedy))
                .toList();
    }

    private static List<Stored<Shot>> unsaid(Read read, Task task) {
        return ShotStore.ofTask(read, task.id()).stream()
                .filter(shot -> shot.value().isMissed() && shot.value().missed().isEmpty())
                .filter(shot -> shot.value().once() || isOnce(task))
                .toList();
    }

    /** Whether a task cannot be done a second time for the camera. */
    public static boolean isOnce(Task task) {
        return task.camera().map(camera -> camera == Task.Camera.ONCE).orElse(false);
    }

    /** Whether a shot cannot be had again, by itself or by its task. */
    public static boolean isOnce(Read read, Shot shot) {
        return shot.once()
                || shot.task()
                        .flatMap((Id id) -> TaskStore.TABLE.find(read, id))
                        .map(task -> isOnce(task.value()))
                        .orElse(false);
    }
}
