package weekwright.episodes;

import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Rows;
import weekwright.build.Task;

/** The rule over shots and their tasks: nothing that happens once is lost to the camera in silence. */
public final class ShotRules {
    private ShotRules() {}

    /** A must-have shot that happens once, by itself or by its task, of a task that is done, not captured and nothing said of it. */
    public static void check(Rows<Shot> shots, Map<Id, Task> tasks, Problems problems) {
        for (int i = 0; i < shots.size(); i++) {
            Shot shot = shots.get(i);
            Optional<Task> task = shot.task().map(tasks::get);
            boolean done = task.flatMap(Task::done).isPresent();
            boolean once = shot.once() || task.map(FinishFilmed::isOnce).orElse(false);
            if (done && once && shot.isMissed() && shot.missed().isBlank()) {
                shots.remark(
                        problems,
                        i,
                        "captured",
                        "",
                        "is missing for a must-have shot that happens once, and its task is done",
                        "write when it was captured, or what became of it in missed");
            }
        }
    }
}
