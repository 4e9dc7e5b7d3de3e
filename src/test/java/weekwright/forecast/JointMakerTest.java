package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.ProjectInputs.day;
import static weekwright.testkit.ProjectInputs.project;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.testkit.ProjectInputs;

/** Landed and never under the reserve, counted in the same futures. Four futures, worked by hand. */
class JointMakerTest {
    private static final int MONTH = 12 * 2027 + 3 - 1;

    private final Inputs inputs = inputs();
    private final Outcome outcome = new Outcome(
            inputs, 4, day("2027-06-01"), new int[0], new int[0], new int[] {MONTH, MONTH + 1, MONTH + 2}, List.of());

    private static Inputs inputs() {
        ProjectInputs project = project().person("ana");
        project.task("a").exactly(8);
        return project.inputs();
    }

    private static void fill(Outcome.Answer answer, String[] landed, String[] under) {
        for (int trial = 0; trial < landed.length; trial++) {
            answer.stageLanding[0][trial] = landed[trial].isEmpty() ? Outcome.LATER : day(landed[trial]);
            answer.firstUnderReserve[trial] = under[trial].isEmpty() ? Outcome.LATER : day(under[trial]);
        }
    }

    @Test
    void the_chance_of_both_is_not_the_product_of_two_chances() {
        // good futures land early and keep the reserve, bad ones do neither: a half, a half, and a half both
        fill(outcome.held, new String[] {"2027-03-10", "2027-03-20", "2027-05-02", ""}, new String[] {
            "", "2027-04-01", "2027-03-05", "2027-03-31"
        });
        // those that land early spent the money on it: a half, a half, and never both
        fill(outcome.workFirst, new String[] {"2027-03-10", "2027-03-20", "2027-04-02", "2027-04-30"}, new String[] {
            "2027-03-08", "2027-03-31", "", "2027-05-01"
        });
        assertThat(JointMaker.of(inputs, outcome, 0))
                .containsExactly(
                        new Forecast.Joint(
                                LocalDate.of(2027, 3, 31),
                                new Forecast.Chances(0.5, 0.5, 0.5),
                                new Forecast.Chances(0.5, 0.5, 0)),
                        new Forecast.Joint(
                                LocalDate.of(2027, 4, 30),
                                new Forecast.Chances(0.5, 0.25, 0.25),
                                new Forecast.Chances(1, 0.5, 0.5)),
                        new Forecast.Joint(
                                LocalDate.of(2027, 5, 31),
                                new Forecast.Chances(0.75, 0.25, 0.25),
                                new Forecast.Chances(1, 0.25, 0.25)));
    }

    @Test
    void months_before_the_first_landing_and_after_the_last_are_left_out() {
        String[] never = {"", "", "", ""};
        String[] april = {"2027-04-10", "2027-04-20", "2027-04-21", "2027-04-22"};
        fill(outcome.held, april, never);
        fill(outcome.workFirst, april, never);
        assertThat(JointMaker.of(inputs, outcome, 0))
                .containsExactly(new Forecast.Joint(
                        LocalDate.of(2027, 4, 30), new Forecast.Chances(1, 1, 1), new Forecast.Chances(1, 1, 1)));
    }

    @Test
    void a_stage_that_has_landed_or_has_nothing_to_land_has_no_chances() {
        String[] past = {"2027-02-10", "2027-02-10", "2027-02-10", "2027-02-10"};
        fill(outcome.held, past, past);
        fill(outcome.workFirst, past, past);
        assertThat(JointMaker.of(inputs, outcome, 0)).isEmpty();
    }
}
