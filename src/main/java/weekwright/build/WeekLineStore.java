package weekwright.build;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where lines of the week that the crew wrote are kept: the table {@code week}. */
public final class WeekLineStore {
    public static final Table<WeekLine> TABLE = new Table<>("week", WeekLine.class);

    private WeekLineStore() {}

    /** The next id of the series {@code week.1}, {@code week.2} …; never that of a row that was taken away. */
    public static Id nextId(Read read) {
        return ReferenceStore.unusedId(read, TABLE.name(), "week");
    }

    /** The rows from one day to another, both included, by day, then in stored order. */
    public static List<Stored<WeekLine>> between(Read read, LocalDate from, LocalDate to) {
        return TABLE.select(
                read,
                "WHERE \"date\" BETWEEN :from AND :to ORDER BY \"date\", \"row\"",
                Map.of("from", from.toString(), "to", to.toString()));
    }
}
