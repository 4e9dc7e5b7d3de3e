package weekwright.engine.plan;

import weekwright.engine.Inputs;

/** Finds the order of work. */
public final class Planner {
    private Planner() {}

    /**
     * The best order found among the kept one, priority rules and {@code passes} seeded samples, judged by the dispatch with
     * expected values (rules 52, 54, 55). Deterministic in its arguments.
     *
     * @param passes random samples beside the priority rules; 0 is allowed
     * @throws IllegalArgumentException if the links form a cycle; the message names its task ids
     */
    public static Plan plan(Inputs inputs, long seed, int passes) {
        throw new UnsupportedOperationException("not written");
    }
}
