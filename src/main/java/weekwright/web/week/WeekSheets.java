package weekwright.web.week;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.db.Db;
import weekwright.forecast.Basis;
import weekwright.forecast.Forecast;
import weekwright.forecast.ForecastRun;
import weekwright.forecast.Forecasts;
import weekwright.forecast.InputsBuilder;
import weekwright.forecast.WeekPlan;

/** The last sheet made, kept while nothing changes. Safe for use from several threads. */
final class WeekSheets {
    private record Key(Db db, long version, LocalDate day, Optional<Forecast> forecast) {}

    private Optional<Key> key = Optional.empty();
    private Optional<WeekPlan> plan = Optional.empty();

    /** The sheet of the week of a day, as the project stands. */
    synchronized WeekPlan of(Db db, LocalDate day, Optional<Forecast> forecast) {
        Key wanted = new Key(db, db.version(), day, forecast);
        if (plan.isEmpty() || !key.equals(Optional.of(wanted))) {
            plan = Optional.of(db.read(read -> {
                Basis basis = InputsBuilder.build(read, day);
                ForecastRun.Planned planned = new ForecastRun.Planned(basis, Forecasts.SEED);
                return WeekPlan.of(read, basis, planned, forecast);
            }));
            key = Optional.of(wanted);
        }
        return plan.get();
    }
}
