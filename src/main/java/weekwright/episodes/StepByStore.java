package weekwright.episodes;

import java.util.List;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where who brought an episode to a step is kept: the table {@code step_by}. */
public final class StepByStore {
    public static final Table<StepBy> TABLE = new Table<>("step_by", StepBy.class);

    private StepByStore() {}

    /** Those of one episode, in stored order. */
    public static List<Stored<StepBy>> ofEpisode(Read read, Id episode) {
        return TABLE.where(read, "episode", episode.value());
    }
}
