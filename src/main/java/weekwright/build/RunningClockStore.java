package weekwright.build;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Write;

/** Where clocks stand: the table {@code running_clock}. They are no part of the project and raise no version. */
public final class RunningClockStore {
    private static final String COLUMNS = "SELECT crew, task, started, stopped FROM running_clock ";

    private RunningClockStore() {}

    /** All of them, the first started first. */
    public static List<RunningClock> all(Read read) {
        return read.handle()
                .createQuery(COLUMNS + "ORDER BY started, crew, task")
                .mapToMap()
                .map(RunningClockStore::clock)
                .list();
    }

    public static Optional<RunningClock> find(Read read, Id crew, Id task) {
        return read.handle()
                .createQuery(COLUMNS + "WHERE crew = :crew AND task = :task")
                .bind("crew", crew.value())
                .bind("task", task.value())
                .mapToMap()
                .findOne()
                .map(RunningClockStore::clock);
    }

    /** The one of a person that runs. */
    public static Optional<RunningClock> running(Read read, Id crew) {
        return all(read).stream()
                .filter(clock -> clock.stopped().isEmpty() && clock.crew().same(crew))
                .findFirst();
    }

    static void insert(Write write, RunningClock clock) {
        write.handle()
                .createUpdate("INSERT INTO running_clock (crew, task, started) VALUES (:crew, :task, :started)")
                .bind("crew", clock.crew().value())
                .bind("task", clock.task().value())
                .bind("started", clock.started().toString())
                .execute();
    }

    static void stop(Write write, RunningClock clock, Instant at) {
        write.handle()
                .createUpdate("UPDATE running_clock SET stopped = :at WHERE crew = :crew AND task = :task")
                .bind("at", at.toString())
                .bind("crew", clock.crew().value())
                .bind("task", clock.task().value())
                .execute();
    }

    /** Takes it away; whether it was there. */
    public static boolean remove(Write write, Id crew, Id task) {
        return write.handle()
                        .createUpdate("DELETE FROM running_clock WHERE crew = :crew AND task = :task")
                        .bind("crew", crew.value())
                        .bind("task", task.value())
                        .execute()
                > 0;
    }

    private static RunningClock clock(Map<String, Object> row) {
        return new RunningClock(
                new Id((String) row.get("crew")),
                new Id((String) row.get("task")),
                Instant.parse((String) row.get("started")),
                Optional.ofNullable((String) row.get("stopped")).map(Instant::parse));
    }
}
