package weekwright.build;

import weekwright.db.Table;

/** Where gatherings are kept: the table {@code gatherings}. */
public final class GatheringStore {
    public static final Table<Gathering> TABLE = new Table<>("gatherings", Gathering.class);

    private GatheringStore() {}
}
