package weekwright.build;

import weekwright.db.Table;

/** Where stages are kept: the table {@code stages}. */
public final class StageStore {
    public static final Table<Stage> TABLE = new Table<>("stages", Stage.class);

    private StageStore() {}
}
