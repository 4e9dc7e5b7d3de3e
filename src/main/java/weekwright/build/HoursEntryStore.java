package weekwright.build;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where hours entries are kept: the table {@code hours}. */
public final class HoursEntryStore {
    public static final Table<HoursEntry> TABLE = new Table<>("hours", HoursEntry.class);

    private HoursEntryStore() {}

    /** The next id of the series {@code hours.1}, {@code hours.2} …; never that of an entry that was taken away. */
    public static Id nextId(Read read) {
        return ReferenceStore.unusedId(read, TABLE.name(), "hours");
    }

    /** The entries of one person on one day, in stored order. */
    public static List<Stored<HoursEntry>> ofDay(Read read, Id crew, LocalDate day) {
        return TABLE.select(
                read,
                "WHERE \"crew\" = :crew AND \"date\" = :day ORDER BY \"row\"",
                Map.of("crew", crew.value(), "day", day.toString()));
    }

    /** Everybody's entries from one day to another, both included, by day, then in stored order. */
    public static List<Stored<HoursEntry>> between(Read read, LocalDate from, LocalDate to) {
        return TABLE.select(
                read,
                "WHERE \"date\" BETWEEN :from AND :to ORDER BY \"date\", \"row\"",
                Map.of("from", from.toString(), "to", to.toString()));
    }

    /** The first day on which hours stand at a task. */
    public static Optional<LocalDate> firstDay(Read read, Id task) {
        return read.handle()
                .createQuery("SELECT min(\"date\") FROM hours WHERE \"task\" = :task")
                .bind("task", task.value())
                .mapTo(String.class)
                .findOne()
                .map(LocalDate::parse);
    }

    /** The entries of one task, oldest first. */
    public static List<Stored<HoursEntry>> ofTask(Read read, Id task) {
        return TABLE.where(read, "task", task.value()).stream()
                .sorted(Comparator.comparing(entry -> entry.value().date()))
                .toList();
    }
}
