package weekwright.engine.simulate;

import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.plan.Plan;

/** Runs the trials of a forecast. */
public final class Simulation {
    /** Changes whenever the same inputs and seed may give other numbers. */
    public static final String VERSION = "1";

    private Simulation() {}

    /**
     * Simulates {@code trials} futures with both funding answers. The result does not depend on {@code threads}.
     *
     * @param threads at least 1
     * @throws Stopped if {@code progress} said so
     * @throws IllegalArgumentException if the inputs name unknown ids or links in a cycle; the message names them
     */
    public static Outcome run(Inputs inputs, Plan plan, int trials, long seed, int threads, Progress progress) {
        throw new UnsupportedOperationException("not written");
    }
}
