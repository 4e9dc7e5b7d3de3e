package weekwright.episodes;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where clips are kept: the table {@code clips}. */
public final class ClipStore {
    public static final Table<Clip> TABLE = new Table<>("clips", Clip.class);

    private ClipStore() {}

    /** The clips of some days, both ends included, in the order of day and row. */
    public static List<Stored<Clip>> between(Read read, LocalDate from, LocalDate to) {
        return TABLE.select(
                read,
                "WHERE \"date\" BETWEEN :from AND :to ORDER BY \"date\", \"row\"",
                Map.of("from", from.toString(), "to", to.toString()));
    }
}
