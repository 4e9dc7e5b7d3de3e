package weekwright.episodes;

import java.util.List;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where releases are kept: the table {@code releases}. */
public final class ReleaseStore {
    public static final Table<Release> TABLE = new Table<>("releases", Release.class);

    private ReleaseStore() {}

    /** Those of one episode, in stored order. */
    public static List<Stored<Release>> ofEpisode(Read read, Id episode) {
        return TABLE.where(read, "episode", episode.value());
    }
}
