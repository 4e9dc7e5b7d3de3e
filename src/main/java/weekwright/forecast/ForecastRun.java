package weekwright.forecast;

import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.Progress;
import weekwright.engine.simulate.Setup;
import weekwright.engine.simulate.Simulation;

/** Makes a forecast of a basis. The result depends on basis, trials and seed alone, not on threads or machine. */
public final class ForecastRun {
    /** Orders of work tried at most beside the priority rules. */
    private static final int MOST_PASSES = 200;
    /** Tasks times passes: a plan made cold takes some 0.3 s. */
    private static final int TASK_PASSES = 30_000;

    private ForecastRun() {}

    /** Orders of work tried beside the priority rules: fewer of a large project, the same on every machine. */
    public static int passes(Inputs inputs) {
        return Math.min(MOST_PASSES, TASK_PASSES / Math.max(1, inputs.tasks().size()));
    }

    /** A finished forecast, what it was made from, and the order of work it followed. */
    public record Made(Basis basis, Plan plan, Forecast forecast) {}

    /**
     * Plans, simulates and puts the result in dates and money.
     *
     * @param threads at least 1
     * @throws weekwright.engine.simulate.Stopped if {@code progress} said so
     * @throws IllegalArgumentException if links form a cycle or name unknown ids; the message names them
     */
    public static Made run(Basis basis, int trials, long seed, int threads, Progress progress) {
        return new Planned(basis, seed).run(trials, threads, progress);
    }

    /** A basis whose order of work is found (rules 52 to 55), to be simulated as often as wanted. */
    public static final class Planned {
        private final Basis basis;
        private final long seed;
        private final Setup setup;
        private final Plan plan;

        /** Finds the order of work. */
        public Planned(Basis basis, long seed) {
            this(basis, seed, new Setup(basis.inputs()));
        }

        private Planned(Basis basis, long seed, Setup setup) {
            this(basis, seed, setup, Planner.plan(setup, seed, passes(setup.inputs())));
        }

        /** With an order of work that is given. */
        public Planned(Basis basis, long seed, Plan plan) {
            this(basis, seed, new Setup(basis.inputs()), plan);
        }

        private Planned(Basis basis, long seed, Setup setup, Plan plan) {
            this.basis = basis;
            this.seed = seed;
            this.setup = setup;
            this.plan = plan;
        }

        /** The order of work. */
        public Plan plan() {
            return plan;
        }

        /** As {@link ForecastRun#run}. */
        public Made run(int trials, int threads, Progress progress) {
            return new Made(basis, plan, ForecastMaker.of(basis, outcome(trials, threads, progress), seed));
        }

        /** The futures themselves. */
        Outcome outcome(int trials, int threads, Progress progress) {
            return Simulation.run(setup, plan, trials, seed, threads, progress);
        }

        /** The futures for a comparison, without what held each stage. */
        Outcome compared(int trials, int threads, Progress progress) {
            return Simulation.runWithoutReasons(setup, plan, trials, seed, threads, progress);
        }
    }
}
