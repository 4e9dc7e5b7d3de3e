package weekwright.build;

import weekwright.db.Table;

/** Where hours entries are kept: the table {@code hours}. */
public final class HoursEntryStore {
    public static final Table<HoursEntry> TABLE = new Table<>("hours", HoursEntry.class);

    private HoursEntryStore() {}
}
