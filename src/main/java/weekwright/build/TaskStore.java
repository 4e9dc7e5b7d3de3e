package weekwright.build;

import java.util.List;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where tasks are kept: the table {@code tasks}. */
public final class TaskStore {
    public static final Table<Task> TABLE = new Table<>("tasks", Task.class);

    private TaskStore() {}

    /** The first free id of a stage's series: {@code wheel.12}. */
    public static Id nextId(Read read, Id stage) {
        return Id.next(stage.value().replace('.', '-'), TABLE.ids(read));
    }

    /** The tasks of one stage in stored order. */
    public static List<Stored<Task>> ofStage(Read read, Id stage) {
        return TABLE.where(read, "stage", stage.value());
    }
}
