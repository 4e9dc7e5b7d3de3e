package weekwright.engine.simulate;

import weekwright.engine.plan.Plan;

/** The one future with expected values (rule 54), told day by day: what the plan means each person to do. */
public final class ExpectedRun {
    private ExpectedRun() {}

    /** Runs the project in the plan's order with mean hours, waits and leads, money ignored. */
    public static void tell(Setup setup, Plan plan, Trace trace) {
        Trial trial = new Trial(setup, false);
        trial.luck.expect();
        trial.trace(trace);
        trial.run(WorkOrder.of(setup, plan));
    }
}
