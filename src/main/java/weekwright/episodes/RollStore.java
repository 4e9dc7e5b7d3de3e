package weekwright.episodes;

import java.util.List;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.db.Write;

/** Where rolls of supporters are kept: the table {@code rolls}. */
public final class RollStore {
    public static final Table<Roll> TABLE = new Table<>("rolls", Roll.class);

    private RollStore() {}

    /** Those of one episode, in stored order. */
    public static List<Stored<Roll>> ofEpisode(Read read, Id episode) {
        return TABLE.where(read, "episode", episode.value());
    }

    /** Removes the rolls of episodes that are not there any more, without a record: plain files, which replace all else, hold no roll. */
    public static void forgetOfMissing(Write write) {
        write.handle().execute("DELETE FROM rolls WHERE episode NOT IN (SELECT id FROM episodes)");
    }
}
