package weekwright.engine.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.testkit.ProjectInputs.day;
import static weekwright.testkit.ProjectInputs.project;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import weekwright.engine.Inputs;
import weekwright.engine.plan.Planner;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.Run;

/** Rule 123: months driven by one film. The as-of day is Monday 2027-03-01. */
class SurgesTest {
    private static final int TRIALS = 4000;
    private static final int MARCH = 12 * 2027 + 2;

    @Test
    void rule_123_months_of_a_surge_say_nothing_of_how_many_usually_join() {
        LevelHistory history = LevelHistory.learn(
                new int[] {100, 110, 300},
                new int[] {10, 200, 12},
                new int[] {1, 2, 9},
                new boolean[] {false, true, false},
                new double[] {1, 1, 1});
        assertThat(history.joinShape()).isEqualTo(0.5 + 10 + 12);
        assertThat(history.joinRate()).isEqualTo(0.5 + 2);
        // who leaves is told by all of them
        assertThat(history.leaveLeft()).isEqualTo(1 + 12);
    }

    @Test
    void rule_123_the_chance_is_one_in_forty_before_the_crews_own_count() {
        assertThat(meanChance(surges())).isCloseTo(1 / 40.0, within(0.001));
    }

    @Test
    void rule_123_the_crews_own_count_moves_the_chance_and_the_size() {
        ProjectInputs project = surges();
        project.supporters("2026-12", "peg", 100, 10, 0);
        project.surge("2027-01", "peg", 110, 90, 0);
        for (int i = 0; i < 20; i++) {
            project.published("e" + i, "2026-%02d-01".formatted(1 + i % 12));
        }
        // Beta(1 + 1, 39 + 19)
        assertThat(meanChance(project)).isCloseTo(2 / 60.0, within(0.001));
        // 90 where 10 are usual: eight months' worth more; beside a middle of 3 worth two
        double middle = Math.exp((2 * Math.log(3) + Math.log(8)) / 3);
        Surges found = new Surges(project.inputs(), MARCH);
        double[] sizes = LongStream.range(0, 20_001)
                .mapToDouble(trial -> found.size(Streams.trialKey(1, (int) trial), 2, day("2027-03-05")))
                .sorted()
                .toArray();
        assertThat(sizes[10_000]).isCloseTo(middle, within(0.1));
    }

    @Test
    void rule_123_a_surge_halves_every_three_weeks() {
        assertThat(Surges.rest(21)).isCloseTo(0.5, within(1e-12));
        assertThat(Surges.rest(42)).isCloseTo(0.25, within(1e-12));
    }

    @Test
    void rule_123_newcomers_of_a_surge_leave_two_and_a_half_times_as_often_for_three_months() {
        // 10,000 came with the surge of February, of 20,000 in March; a twentieth of the others leaves by the prior and
        // the log
        ProjectInputs project = project().horizonMonths(3).level("peg", 1, false);
        project.model(new Inputs.Model(1, 18, 0, 0, true, 15, 30, 1, 0));
        project.supporters("2027-01", "peg", 100_000, 0, 5_000);
        project.surge("2027-02", "peg", 10_000, 10_000, 500);
        project.supporters("2027-03", "peg", 20_000, 0, 0);
        Run run = Run.of(project, 400);
        double left = 0;
        for (int trial = 0; trial < 400; trial++) {
            left += 20_000 - charge(run, trial, "2027-04-01");
        }
        // thirty of March's days are left of the month: 10,000 × 0.05 + 10,000 × 0.125 of a whole one
        double month = 1 - Math.pow(1 - 0.05, 30 / 31.0);
        double fresh = 1 - Math.pow(1 - 0.125, 30 / 31.0);
        assertThat(left / 400).isCloseTo(10_000 * (month + fresh), within(60.0));
    }

    @Test
    void rule_123_a_surge_brings_its_size_in_months_of_usual_joining_lognormal_about_three() {
        Surges found = new Surges(surges().inputs(), MARCH);
        double mean = LongStream.range(0, TRIALS)
                .mapToDouble(trial -> found.size(Streams.trialKey(1, (int) trial), 2, day("2027-03-05")))
                .average()
                .orElseThrow();
        // mean of a lognormal with the middle 3 and 0.6; four standard errors
        assertThat(mean).isCloseTo(3 * Math.exp(0.18), within(0.15));
        assertThat(found.size(Streams.trialKey(1, 0), 0, day("2027-03-05"))).isZero();
    }

    @Test
    void rule_123_one_factor_a_month_acts_on_all_levels() {
        ProjectInputs project =
                project().horizonMonths(26).level("peg", 1, false).level("beam", 100_000, false);
        project.model(new Inputs.Model(1, 18, 0, 0.3, true, 15, 30, 1, 0));
        for (String level : List.of("peg", "beam")) {
            for (int month = 1; month <= 12; month++) {
                project.supporters("2026-%02d".formatted(month), level, 0, 10_000, 0);
            }
            project.supporters("2027-03", level, 0, 0, 0);
        }
        Trial trial = new Trial(new Setup(project.inputs()), true);
        double most = 0;
        for (int i = 0; i < 20; i++) {
            trial.luck.draw(1, i);
            trial.run(WorkOrder.of(trial.setup, Planner.plan(trial.setup, 1, 0)));
            Supporters supporters = new Supporters(trial.setup, trial.luck);
            supporters.begin();
            double pegs = supporters.joined(24, 0) / trial.luck.joining[0];
            double beams = supporters.joined(24, 1) / trial.luck.joining[1];
            most = Math.max(most, Math.abs(Math.log(pegs / beams)));
        }
        // 24 steps of 0.3 would put independent levels two in ln apart
        assertThat(most).isLessThan(0.15);
    }

    private static long charge(Run run, int trial, String first) {
        int i = 0;
        while (run.outcome().weeks[i] < day(first)) {
            i++;
        }
        return run.outcome().held.cash[i][trial] - run.outcome().held.cash[i - 1][trial];
    }

    private static ProjectInputs surges() {
        return project().level("peg", 1, false).supporters("2027-02", "peg", 100, 10, 0);
    }

    private static double meanChance(ProjectInputs project) {
        Surges found = new Surges(project.inputs(), MARCH);
        return LongStream.range(0, TRIALS)
                .mapToDouble(trial -> found.chance(Streams.trialKey(1, (int) trial)))
                .average()
                .orElseThrow();
    }
}
