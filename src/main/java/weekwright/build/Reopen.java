package weekwright.build;

import java.util.Map;
import java.util.Optional;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Takes back that a task is done, dropped or laid aside. */
public final class Reopen {
    private Reopen() {}

    public static Stored<Task> reopen(Write write, Shown shown) throws Stale {
        Task task = TaskChange.shown(write, shown);
        return TaskChange.set(
                write,
                shown,
                task,
                Map.of("done", Optional.empty(), "dropped", Optional.empty(), "aside_until", Optional.empty()));
    }
}
