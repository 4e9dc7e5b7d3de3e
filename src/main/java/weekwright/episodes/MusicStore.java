package weekwright.episodes;

import java.util.List;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where music of episodes is kept: the table {@code music}. */
public final class MusicStore {
    public static final Table<Music> TABLE = new Table<>("music", Music.class);

    private MusicStore() {}

    /** Those of one episode, in stored order. */
    public static List<Stored<Music>> ofEpisode(Read read, Id episode) {
        return TABLE.where(read, "episode", episode.value());
    }
}
