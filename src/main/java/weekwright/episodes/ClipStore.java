package weekwright.episodes;

import weekwright.db.Table;

/** Where clips are kept: the table {@code clips}. */
public final class ClipStore {
    public static final Table<Clip> TABLE = new Table<>("clips", Clip.class);

    private ClipStore() {}
}
