package weekwright.forecast;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import weekwright.base.Id;
import weekwright.build.EquipmentStore;
import weekwright.build.Link;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.build.WeekLine;
import weekwright.db.Read;
import weekwright.db.Table;
import weekwright.episodes.Tell;
import weekwright.funds.Material;

/**
 * A project as it stood on the evening of a day (rule 2): rows as the change log had them, tasks that were put down later and what
 * hangs on them left out. Settings stand as they do now, and of plain files, which have no log, so does everything.
 */
final class PastSource implements Source {
    /** Rows of a table as they stood. */
    private interface Rows {
        <R extends Record> List<R> of(Table<R> table);
    }

    private final Settings settings;
    private final Rows rows;
    /** Tasks put down after that day. */
    private final Set<String> later = new HashSet<>();

    private PastSource(Settings settings, LocalDate day, Rows rows) {
        this.settings = settings;
        this.rows = rows;
        rows.of(TaskStore.TABLE).stream()
                .filter(task -> task.added().filter(day::isBefore).isPresent())
                .forEach(task -> later.add(task.id().folded()));
        // a machine that is there once a task is done needs the task
        rows.of(EquipmentStore.TABLE).stream()
                .map(row -> row.readyAfter().map(Id::folded).orElse(""))
                .forEach(later::remove);
    }

    /** For as many days as are asked for within this read. */
    static Function<LocalDate, Source> of(Read read, ZoneId zone) {
        Settings settings = SettingsStore.get(read);
        Map<String, Function<Instant, ? extends List<? extends Record>>> tables = new HashMap<>();
        return day -> new PastSource(settings, day, new Rows() {
            @Override
            @SuppressWarnings("unchecked")
            public <R extends Record> List<R> of(Table<R> table) {
                return (List<R>) tables.computeIfAbsent(table.name(), name -> table.past(read))
                        .apply(day.plusDays(1).atStartOfDay(zone).toInstant());
            }
        });
    }

    static PastSource of(Source files, LocalDate day) {
        return new PastSource(files.settings(), day, files::list);
    }

    @Override
    public Settings settings() {
        return settings;
    }

    @Override
    public <R extends Record> List<R> list(Table<R> table) {
        List<R> all = rows.of(table);
        return later.isEmpty() ? all : all.stream().filter(this::known).collect(Collectors.toList());
    }

    private boolean known(Record row) {
        if (row instanceof Task task) {
            return there(Optional.of(task.id()));
        }
        if (row instanceof Link link) {
            return there(Optional.of(link.task())) && there(Optional.of(link.after()));
        }
        if (row instanceof Material line) {
            return there(Optional.of(line.task()));
        }
        if (row instanceof Tell tell) {
            return there(Optional.of(tell.task()));
        }
        return !(row instanceof WeekLine line) || there(line.task());
    }

    private boolean there(Optional<Id> task) {
        return task.isEmpty() || !later.contains(task.get().folded());
    }
}
