package weekwright.build;

import weekwright.db.Table;

/** Where tasks are kept: the table {@code tasks}. */
public final class TaskStore {
    public static final Table<Task> TABLE = new Table<>("tasks", Task.class);

    private TaskStore() {}
}
