package weekwright.build;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where stopped are kept: the table {@code stopped}. */
public final class StoppedStore {
    public static final Table<Stopped> TABLE = new Table<>("stopped", Stopped.class);

    private StoppedStore() {}

    /** The next id of the series {@code stopped.1}, {@code stopped.2} …; never that of a row that was taken away. */
    public static Id nextId(Read read) {
        return ReferenceStore.unusedId(read, TABLE.name(), "stopped");
    }

    /** The rows from one day to another, both included, by day, then in stored order. */
    public static List<Stored<Stopped>> between(Read read, LocalDate from, LocalDate to) {
        return TABLE.select(
                read,
                "WHERE \"date\" BETWEEN :from AND :to ORDER BY \"date\", \"row\"",
                Map.of("from", from.toString(), "to", to.toString()));
    }
}
