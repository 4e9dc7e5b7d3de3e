package weekwright.build;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** What the verbs on one standing task have in common. */
final class TaskChange {
    private TaskChange() {}

    /** The row as it was shown. */
    static Task shown(Read read, Shown shown) throws Stale {
        Optional<Stored<Task>> now = TaskStore.TABLE.find(read, shown.row());
        if (now.isEmpty() || now.get().version() != shown.version()) {
            throw new Stale(TaskStore.TABLE.name(), shown.row(), now.map(stored -> stored));
        }
        return now.get().value();
    }

    static Stored<Task> set(Write write, Shown shown, Task task, Map<String, Optional<?>> columns) throws Stale {
        Task changed = task;
        for (Map.Entry<String, Optional<?>> column : columns.entrySet()) {
            changed = TaskStore.TABLE.shape().with(changed, column.getKey(), column.getValue());
        }
        return TaskStore.TABLE.update(write, shown.row(), shown.version(), changed);
    }

    static void mustBeOpen(Task task, Problems problems) {
        task.done()
                .ifPresent(day ->
                        problems.fault("", task.title(), "is done since " + Said.day(day), "open it again first"));
        task.dropped()
                .ifPresent(day ->
                        problems.fault("", task.title(), "is dropped since " + Said.day(day), "open it again first"));
    }

    static void mustBePast(String column, LocalDate day, LocalDate today, Problems problems) {
        if (day.isAfter(today)) {
            problems.fault(column, Said.day(day), "is after today, " + Said.day(today), "write the day it happened");
        }
    }
}
