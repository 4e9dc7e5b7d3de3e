package weekwright.forecast;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import weekwright.engine.Inputs;
import weekwright.engine.explain.Cause;
import weekwright.engine.explain.WhatMoved;

/**
 * Why the forecast of a day differs from the one that was saved about a week before it.
 *
 * @param since the earlier forecast's day
 * @param day of the newer one
 * @param version of the project that the newer one knows
 * @param trials futures of each mixture
 * @param stages with the days that each cause moved them
 * @param then the earlier forecast's inputs
 * @param now the newer one's
 * @param names of the newer one
 */
public record Moved(
        LocalDate since,
        LocalDate day,
        long version,
        int trials,
        List<WhatMoved.Stage> stages,
        Inputs then,
        Inputs now,
        Names names) {
    /** Futures of each mixture at most: with the same luck in all, differences of means need fewer than a forecast. */
    private static final int TRIALS = 1000;

    public Moved {
        stages = List.copyOf(stages);
    }

    /**
     * Draws the mixtures of what was known then and what is known now.
     *
     * @param saved by the same engine
     * @param trials futures of a whole forecast
     */
    static Moved between(
            SavedForecast saved, ForecastRun.Made finished, int trials, int threads, IntPredicate progress) {
        Inputs then = saved.unpackedInputs();
        Basis basis = finished.basis();
        int each = Math.min(trials, TRIALS);
        return new Moved(
                saved.day(),
                basis.asOf(),
                basis.version(),
                each,
                WhatMoved.between(
                        then, basis.inputs(), finished.plan().keep(), each, Forecasts.SEED, threads, progress),
                then,
                basis.inputs(),
                basis.names());
    }

    /** Of one stage. */
    public Optional<WhatMoved.Stage> stage(String id) {
        return stages.stream().filter(stage -> stage.id().equals(id)).findFirst();
    }

    /** The parts of a stage in whole days that sum to the whole, in the order of {@link Cause}. */
    public static long[] wholeDays(WhatMoved.Stage stage) {
        double sum = 0;
        long said = 0;
        long[] days = new long[stage.days().length];
        for (int k = 0; k < days.length; k++) {
            // each running sum is rounded, so that the rounded parts sum to the rounded whole
            sum += stage.days()[k];
            days[k] = Math.round(sum) - said;
            said += days[k];
        }
        return days;
    }
}
