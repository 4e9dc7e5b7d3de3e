package weekwright.forecast;

import weekwright.engine.Outcome;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.Progress;
import weekwright.engine.simulate.Simulation;

/** Makes a forecast of a basis. The result depends on basis, trials and seed alone, not on threads or machine. */
public final class ForecastRun {
    /** Random samples of the order of work beside the priority rules. */
    public static final int PASSES = 0;

    private ForecastRun() {}

    /** A finished forecast, what it was made from, and the order of work it followed. */
    public record Made(Basis basis, Plan plan, Forecast forecast) {}

    /** The order of work (rules 52 to 55). */
    public static Plan plan(Basis basis, long seed) {
        return Planner.plan(basis.inputs(), seed, PASSES);
    }

    /**
     * Plans, simulates and puts the result in dates and money.
     *
     * @param threads at least 1
     * @throws weekwright.engine.simulate.Stopped if {@code progress} said so
     * @throws IllegalArgumentException if links form a cycle or name unknown ids; the message names them
     */
    public static Made run(Basis basis, int trials, long seed, int threads, Progress progress) {
        return run(basis, plan(basis, seed), trials, seed, threads, progress);
    }

    /** As above with an order of work that was found before. */
    public static Made run(Basis basis, Plan plan, int trials, long seed, int threads, Progress progress) {
        Outcome outcome = Simulation.run(basis.inputs(), plan, trials, seed, threads, progress);
        return new Made(basis, plan, ForecastMaker.of(basis, outcome, seed));
    }
}
