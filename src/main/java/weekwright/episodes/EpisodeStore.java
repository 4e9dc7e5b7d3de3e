package weekwright.episodes;

import java.time.YearMonth;
import java.util.Optional;
import weekwright.db.Read;
import weekwright.db.Table;

/** Where episodes are kept: the table {@code episodes}. */
public final class EpisodeStore {
    public static final Table<Episode> TABLE = new Table<>("episodes", Episode.class);

    private EpisodeStore() {}

    /** How many were published in a month. */
    public static int publishedIn(Read read, YearMonth month) {
        return Math.toIntExact(TABLE.values(read).stream()
                .map(Episode::published)
                .flatMap(Optional::stream)
                .filter(day -> YearMonth.from(day).equals(month))
                .count());
    }
}
