package weekwright.episodes;

import weekwright.db.Table;

/** Where tells are kept: the table {@code tells}. */
public final class TellStore {
    public static final Table<Tell> TABLE = new Table<>("tells", Tell.class);

    private TellStore() {}
}
