package weekwright.episodes;

import java.util.Comparator;
import java.util.List;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where the parts of episodes are kept: the table {@code segments}. */
public final class SegmentStore {
    public static final Table<Segment> TABLE = new Table<>("segments", Segment.class);

    private SegmentStore() {}

    /** Those of one episode, in the order in which they run. */
    public static List<Stored<Segment>> ofEpisode(Read read, Id episode) {
        return TABLE.where(read, "episode", episode.value()).stream()
                .sorted(Comparator.comparing(part -> part.value().place()))
                .toList();
    }
}
