package weekwright.engine.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import weekwright.engine.Inputs;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.testkit.RandomProjects;

/** Random small projects, each day of which is checked against every rule of the day by code that shares nothing with the engine. */
class EveryRuleOfADayTest {
    private static final int PROJECTS = 60;
    private static final int TRIALS = 4;

    @Test
    void no_day_of_random_projects_breaks_a_rule() {
        int stretches = 0;
        int orders = 0;
        int waits = 0;
        int parted = 0;
        int failures = 0;
        for (int number = 0; number < PROJECTS; number++) {
            Inputs inputs = RandomProjects.of(number);
            Setup setup = new Setup(inputs);
            Plan plan = Planner.plan(setup, 1, 2);
            WorkOrder order = WorkOrder.of(setup, plan);
            Trial trial = new Trial(setup, true);
            for (int i = 0; i < TRIALS; i++) {
                trial.luck.draw(7, i);
                DayValidator held = new DayValidator(inputs, trial.luck, "project " + number + " trial " + i, true);
                trial.trace(held);
                trial.run(order);
                held.end(trial.held);
                stretches += held.stretches;
                orders += held.orders;
                waits += held.waits;
                failures += held.failures;
                if (trial.parted()) {
                    parted++;
                    trial.trace(null);
                    trial.runWorkFirst();
                }
            }
        }
        // each kind of rule was met often enough for the check to mean something
        assertThat(stretches).isGreaterThan(10_000);
        assertThat(orders).isGreaterThan(500);
        assertThat(waits).isGreaterThan(500);
        assertThat(failures).isGreaterThan(100);
        assertThat(parted).isGreaterThan(20);
    }
}
