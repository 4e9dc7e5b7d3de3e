package weekwright.episodes;

import java.util.List;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where shots are kept: the table {@code shots}. */
public final class ShotStore {
    public static final Table<Shot> TABLE = new Table<>("shots", Shot.class);

    private ShotStore() {}

    /** The shots wanted for one episode, in stored order. */
    public static List<Stored<Shot>> ofEpisode(Read read, Id episode) {
        return TABLE.where(read, "episode", episode.value());
    }

    /** The shots wanted of one task, in stored order. */
    public static List<Stored<Shot>> ofTask(Read read, Id task) {
        return TABLE.where(read, "task", task.value());
    }
}
