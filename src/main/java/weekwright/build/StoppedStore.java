package weekwright.build;

import weekwright.db.Table;

/** Where stopped are kept: the table {@code stopped}. */
public final class StoppedStore {
    public static final Table<Stopped> TABLE = new Table<>("stopped", Stopped.class);

    private StoppedStore() {}
}
