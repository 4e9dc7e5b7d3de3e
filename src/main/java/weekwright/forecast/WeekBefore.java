package weekwright.forecast;

import java.time.LocalDate;
import java.time.LocalTime;
import weekwright.db.Db;
import weekwright.engine.simulate.Progress;

/**
 * The forecast that the sample would have kept a week before it is opened, so that it has something to compare with: made from
 * the sample's records as they stood that evening. A crew's own project is given none: nobody was told it.
 */
public final class WeekBefore {
    private static final LocalTime EVENING = LocalTime.of(18, 0);

    private WeekBefore() {}

    /** Makes it and keeps it under the day a week before the one on which the sample stands. */
    public static void keep(Db db, LocalDate today, int trials) {
        LocalDate day = today.minusWeeks(1);
        Basis basis = db.read(read -> InputsBuilder.build(PastSource.of(Source.of(read), day), day));
        ForecastRun.Made made = ForecastRun.run(basis, trials, Forecasts.SEED, 1, Progress.NONE);
        db.write("forecast", write -> {
            SavedForecastStore.insert(
                    write,
                    SavedForecast.of(
                            made,
                            day.atTime(EVENING)
                                    .atZone(Source.of(write).settings().zone())
                                    .toInstant(),
                            false,
                            ""));
            return null;
        });
    }
}
