package weekwright.episodes;

import weekwright.db.Table;

/** Where shots are kept: the table {@code shots}. */
public final class ShotStore {
    public static final Table<Shot> TABLE = new Table<>("shots", Shot.class);

    private ShotStore() {}
}
