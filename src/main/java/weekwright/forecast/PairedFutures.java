package weekwright.forecast;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.db.Db;
import weekwright.engine.Inputs;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.Progress;
import weekwright.engine.simulate.Setup;

/**
 * What a change would do, before it is kept: it is made in a transaction that is taken back, and futures are drawn of the
 * project without and with it, with the same seed and the same order of work, so that what differs is the change and not
 * the luck. Asked for by hand, so it may take a moment; few futures.
 */
public final class PairedFutures {
    /** Futures of each side. */
    public static final int FUTURES = 200;

    private PairedFutures() {}

    /** The two sides. */
    public record Compared(Forecast now, Forecast then, Names names) {}

    /**
     * Compares.
     *
     * @param shown the newest forecast, whose order of work is followed
     * @param change with all its checks; what it writes is never kept
     * @throws X what the change throws, such as its refusal
     */
    public static <X extends Exception> Compared compare(
            Db db, String who, LocalDate day, Optional<Forecasts.Shown> shown, Db.Work<?, X> change) throws X {
        record Pair(Basis now, Basis then) {}
        Pair pair = db.write(who, write -> {
            Basis now = InputsBuilder.build(write, day);
            write.mark();
            change.in(write);
            Basis then = InputsBuilder.build(write, day);
            write.backToMark();
            return new Pair(now, then);
        });
        Inputs.Kept kept = shown.flatMap(Forecasts.Shown::plan)
                .map(Plan::keep)
                .orElse(pair.now().inputs().kept());
        Plan plan = kept.ranks().isEmpty()
                ? new ForecastRun.Planned(pair.now(), Forecasts.SEED).plan()
                : Planner.follow(new Setup(pair.now().inputs()), kept);
        return new Compared(
                drawn(pair.now(), plan), drawn(pair.then(), plan), pair.now().names());
    }

    private static Forecast drawn(Basis basis, Plan plan) {
        int threads = Runtime.getRuntime().availableProcessors();
        return new ForecastRun.Planned(basis, Forecasts.SEED, plan)
                .run(FUTURES, threads, Progress.NONE)
                .forecast();
    }
}
