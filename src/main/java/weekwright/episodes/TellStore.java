package weekwright.episodes;

import java.util.List;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where tells are kept: the table {@code tells}. */
public final class TellStore {
    public static final Table<Tell> TABLE = new Table<>("tells", Tell.class);

    private TellStore() {}

    /** What one episode tells, in stored order. */
    public static List<Stored<Tell>> ofEpisode(Read read, Id episode) {
        return TABLE.where(read, "episode", episode.value());
    }

    /** Which episodes tell a task, in stored order. */
    public static List<Stored<Tell>> ofTask(Read read, Id task) {
        return TABLE.where(read, "task", task.value());
    }
}
