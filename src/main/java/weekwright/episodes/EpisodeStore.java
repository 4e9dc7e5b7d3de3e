package weekwright.episodes;

import weekwright.db.Table;

/** Where episodes are kept: the table {@code episodes}. */
public final class EpisodeStore {
    public static final Table<Episode> TABLE = new Table<>("episodes", Episode.class);

    private EpisodeStore() {}
}
