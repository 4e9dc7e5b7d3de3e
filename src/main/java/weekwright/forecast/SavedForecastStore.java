package weekwright.forecast;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.db.Read;
import weekwright.db.Write;
import weekwright.engine.Inputs;

/**
 * Where forecasts are kept: the table {@code saved_forecast}. A saved forecast is a result, not a change of the project: it
 * raises no version and leaves no change record.
 */
public final class SavedForecastStore {
    /** Days for which the first forecast of each is kept. */
    private static final int EACH_DAY_FOR = 14;

    private SavedForecastStore() {}

    /** Keeps a forecast. */
    public static void insert(Write write, SavedForecast forecast) {
        write.handle()
                .createUpdate(
                        "INSERT INTO saved_forecast (day, made_at, seed, trials, engine, project_version, by_hand,"
                                + " name, ranks, results, inputs) VALUES (:day, :made_at, :seed, :trials, :engine,"
                                + " :version, :by_hand, :name, :ranks, :results, :inputs)")
                .bind("day", forecast.day().toString())
                .bind("made_at", forecast.madeAt().toString())
                .bind("seed", forecast.seed())
                .bind("trials", forecast.trials())
                .bind("engine", forecast.engine())
                .bind("version", forecast.projectVersion())
                .bind("by_hand", forecast.byHand() ? 1 : 0)
                .bind("name", forecast.name())
                .bind("ranks", forecast.ranks())
                .bind("results", forecast.results())
                .bind("inputs", forecast.inputs())
                .execute();
    }

    /** Whether the first finished one of that day is kept already; those kept by hand do not count. */
    public static boolean has(Read read, LocalDate day) {
        return read.handle()
                        .createQuery("SELECT count(*) FROM saved_forecast WHERE day = :day AND by_hand = 0")
                        .bind("day", day.toString())
                        .mapTo(Integer.class)
                        .one()
                > 0;
    }

    /** The newest one kept for that day or a day before it. */
    public static Optional<SavedForecast> newest(Read read, LocalDate day) {
        return one(read, "WHERE day <= :day ORDER BY day DESC, id DESC LIMIT 1", day);
    }

    /** The first that was kept. */
    public static Optional<SavedForecast> oldest(Read read) {
        return read.handle()
                .createQuery(COLUMNS + "ORDER BY day, id LIMIT 1")
                .mapToMap()
                .findOne()
                .map(SavedForecastStore::row);
    }

    /** The one whose day is nearest to a day, of two the earlier; of one day the first. */
    public static Optional<SavedForecast> nearest(Read read, LocalDate day, LocalDate before) {
        return read.handle()
                .createQuery(COLUMNS + "WHERE day < :before"
                        + " ORDER BY abs(julianday(day) - julianday(:day)), day, id LIMIT 1")
                .bind("day", day.toString())
                .bind("before", before.toString())
                .mapToMap()
                .findOne()
                .map(SavedForecastStore::row);
    }

    /**
     * Lets go of what need not be kept: of those kept by themselves the first of each day stays for fourteen days, then the first of
     * each ISO week (Monday to Sunday); all that are kept by hand stay.
     */
    static void thin(Write write, LocalDate today) {
        write.handle()
                .createUpdate("DELETE FROM saved_forecast WHERE by_hand = 0 AND day <= :until AND id NOT IN (SELECT id"
                        + " FROM (SELECT id, row_number() OVER (PARTITION BY date(day, 'weekday 0', '-6"
                        + " days') ORDER BY day, id) AS place FROM saved_forecast WHERE by_hand = 0) WHERE"
                        + " place = 1)")
                .bind("until", today.minusDays(EACH_DAY_FOR).toString())
                .execute();
    }

    /** A line of the list of what is kept. */
    public record Line(
            long id, LocalDate day, Instant madeAt, int trials, String engine, boolean byHand, String name) {}

    /** All that are kept, the newest first. */
    public static List<Line> lines(Read read) {
        return read
                .handle()
                .createQuery("SELECT id, day, made_at, trials, engine, by_hand, name FROM saved_forecast"
                        + " ORDER BY day DESC, id DESC")
                .mapToMap()
                .list()
                .stream()
                .map(row -> new Line(
                        ((Number) row.get("id")).longValue(),
                        LocalDate.parse((String) row.get("day")),
                        Instant.parse((String) row.get("made_at")),
                        ((Number) row.get("trials")).intValue(),
                        (String) row.get("engine"),
                        ((Number) row.get("by_hand")).intValue() == 1,
                        (String) row.get("name")))
                .toList();
    }

    /** One of them. */
    public static Optional<SavedForecast> find(Read read, long id) {
        return read.handle()
                .createQuery(COLUMNS + "WHERE id = :id")
                .bind("id", id)
                .mapToMap()
                .findOne()
                .map(SavedForecastStore::row);
    }

    /** Lets go of one that was kept by hand; whether there was one. */
    public static boolean letGo(Write write, long id) {
        return write.handle()
                        .createUpdate("DELETE FROM saved_forecast WHERE id = :id AND by_hand = 1")
                        .bind("id", id)
                        .execute()
                > 0;
    }

    /** The rank list of the newest one (rule 108: it belongs to a forecast and is kept with it). */
    static Inputs.Kept kept(Read read, LocalDate asOf) {
        return newest(read, asOf).map(saved -> ForecastJson.kept(saved.ranks())).orElse(Inputs.Kept.NONE);
    }

    private static final String COLUMNS =
            "SELECT day, made_at, seed, trials, engine, project_version, by_hand, name, ranks, results, inputs"
                    + " FROM saved_forecast ";

    private static Optional<SavedForecast> one(Read read, String tail, LocalDate day) {
        return read.handle()
                .createQuery(COLUMNS + tail)
                .bind("day", day.toString())
                .mapToMap()
                .findOne()
                .map(SavedForecastStore::row);
    }

    private static SavedForecast row(Map<String, Object> row) {
        return new SavedForecast(
                LocalDate.parse((String) row.get("day")),
                Instant.parse((String) row.get("made_at")),
                ((Number) row.get("seed")).longValue(),
                ((Number) row.get("trials")).intValue(),
                (String) row.get("engine"),
                ((Number) row.get("project_version")).longValue(),
                ((Number) row.get("by_hand")).intValue() == 1,
                (String) row.get("name"),
                (String) row.get("ranks"),
                (String) row.get("results"),
                (byte[]) row.get("inputs"));
    }
}
