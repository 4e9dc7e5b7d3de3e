package weekwright.forecast;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import weekwright.db.Read;
import weekwright.db.Write;
import weekwright.engine.explain.Cause;
import weekwright.engine.explain.WhatMoved;

/** Why the newest dates moved, kept for those who read it without a forecast running: the table {@code moved_stage}. */
public final class MovedStore {
    private MovedStore() {}

    /**
     * Of one stage.
     *
     * @param days by cause, in the order of {@link Cause}; later counting up
     */
    public record Kept(LocalDate since, LocalDate day, long[] days) {
        /** By how many days it moved. */
        public long sum() {
            return Arrays.stream(days).sum();
        }

        /** The cause that moved it furthest in the direction it went. */
        public Cause foremost() {
            int way = Long.signum(sum());
            int most = IntStream.range(0, days.length)
                    .reduce((a, b) -> way * days[b] > way * days[a] ? b : a)
                    .orElseThrow();
            return Cause.values()[most];
        }
    }

    /** Keeps what is known now in place of what was known before. */
    static void keep(Write write, Moved moved) {
        write.handle().execute("DELETE FROM moved_stage");
        for (WhatMoved.Stage stage : moved.stages()) {
            long[] days = Moved.wholeDays(stage);
            var insert = write.handle()
                    .createUpdate("INSERT INTO moved_stage (stage, since, day, work, estimates, plan, materials, money)"
                            + " VALUES (:stage, :since, :day, :WORK, :ESTIMATES, :PLAN, :MATERIALS, :MONEY)")
                    .bind("stage", stage.id())
                    .bind("since", moved.since().toString())
                    .bind("day", moved.day().toString());
            for (Cause cause : Cause.values()) {
                insert.bind(cause.name(), days[cause.ordinal()]);
            }
            insert.execute();
        }
    }

    /** Of a stage; empty where nothing is known of that day or the week before it. */
    public static Optional<Kept> find(Read read, String stage, LocalDate day) {
        return read.handle()
                .createQuery("SELECT since, day, work, estimates, plan, materials, money FROM moved_stage"
                        + " WHERE stage = :stage COLLATE NOCASE AND day <= :day AND day > date(:day, '-7 days')")
                .bind("stage", stage)
                .bind("day", day.toString())
                .mapToMap()
                .findOne()
                .map(row -> new Kept(
                        LocalDate.parse((String) row.get("since")),
                        LocalDate.parse((String) row.get("day")),
                        Arrays.stream(Cause.values())
                                .mapToLong(
                                        cause -> ((Number) row.get(cause.name().toLowerCase(Locale.ROOT))).longValue())
                                .toArray()));
    }
}
