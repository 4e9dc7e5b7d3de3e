package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.testkit.ProjectInputs.project;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import weekwright.engine.Inputs;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.RandomProjects;

/** Why two forecasts differ. Cases in which the cause is known; the as-of day is Monday 2027-03-01. */
class WhatMovedTest {
    /**
     * Three players with the worths 0; 6, 12, 42 alone; 54, 84, 96 in pairs; 120 together (worked by hand: mean over the six orders).
     * The same sums come out of the definition with factorials.
     */
    @Test
    void a_game_of_three_is_split_as_worked_by_hand() {
        double[] value = {0, 6, 12, 54, 42, 84, 96, 120};
        double[] parts = Shapley.parts(value);
        // first: (6 + 6 + 42 + 42 + 24 + 24) / 6 and so on
        assertThat(parts[0]).isCloseTo((6 + 6 + (54 - 12) + (120 - 96) + (84 - 42) + (120 - 96)) / 6.0, within(1e-9));
        assertThat(Arrays.stream(parts).sum()).isCloseTo(120, within(1e-9));
    }

    @Test
    void the_parts_of_any_game_sum_to_the_whole_and_a_cause_without_effect_has_none() {
        SplittableRandom random = new SplittableRandom(5);
        for (int game = 0; game < 50; game++) {
            double[] value = new double[32];
            for (int mask = 0; mask < 32; mask++) {
                // the third cause changes nothing
                value[mask] = (mask & 4) != 0 ? value[mask & ~4] : random.nextInt(100);
            }
            double[] parts = Shapley.parts(value);
            assertThat(Arrays.stream(parts).sum()).isCloseTo(value[31] - value[0], within(1e-9));
            assertThat(parts[2]).isCloseTo(0, within(1e-12));
        }
    }

    private static List<WhatMoved.Stage> between(Inputs then, Inputs now) {
        return WhatMoved.between(then, now, Inputs.Kept.NONE, 20, 1, 1, done -> true);
    }

    private static ProjectInputs forty() {
        ProjectInputs project = project().person("ana");
        project.stage(new Inputs.Stage("pit", 1, 1, false, Inputs.Range.EMPTY));
        return project;
    }

    @Test
    void rule_96_an_estimate_that_grew_moves_by_its_days_and_nothing_else_does() {
        ProjectInputs then = forty();
        then.task("a").stage("pit").left(40, "");
        ProjectInputs now = forty();
        now.task("a").stage("pit").hours(35, 40, 45);
        ProjectInputs grown = forty();
        grown.task("a").stage("pit").hours(70, 80, 90);
        WhatMoved.Stage stage = between(now.inputs(), grown.inputs()).get(0);
        assertThat(stage.of(Cause.ESTIMATES))
                .isEqualTo(stage.now() - stage.then())
                .isGreaterThan(4);
        for (Cause other : List.of(Cause.WORK, Cause.PLAN, Cause.MATERIALS, Cause.MONEY)) {
            assertThat(stage.of(other)).isZero();
        }
    }

    @Test
    void rule_96_what_was_dropped_since_is_of_the_plan_and_the_days_that_passed_are_not() {
        ProjectInputs then = forty();
        then.task("a")
                .stage("pit")
                .exactly(40)
                .stage("pit")
                .task("b")
                .stage("pit")
                .exactly(40);
        ProjectInputs now = forty().today("2027-03-08");
        now.task("a")
                .stage("pit")
                .exactly(40)
                .stage("pit")
                .task("b")
                .stage("pit")
                .exactly(40)
                .dropped("2027-03-05");
        WhatMoved.Stage stage = between(then.inputs(), now.inputs()).get(0);
        // two weeks of work from the 1st, one from the 8th: a week later for the days, a week sooner for what is
        // dropped
        assertThat(stage.now() - stage.then()).isZero();
        assertThat(stage.of(Cause.WORK)).isEqualTo(7);
        assertThat(stage.of(Cause.PLAN)).isEqualTo(-7);
    }

    /** Ordered on Friday 26 February, two weeks on the way. */
    private static Inputs.Material oak(int received) {
        Inputs.Range lead = Inputs.Range.of(14);
        int ordered = ProjectInputs.day("2027-02-26");
        Inputs.Range price = Inputs.Range.of(100);
        Inputs.Source bought = Inputs.Source.BOUGHT;
        return new Inputs.Material(
                "oak", "a", "", 1, 0, price, bought, 0, lead, 0, ordered, Inputs.NONE, received, 100, "");
    }

    @Test
    void rule_96_what_was_received_since_is_of_the_materials_and_the_days_that_passed_are_not() {
        ProjectInputs then = forty();
        then.task("a").stage("pit").exactly(40).stage("pit");
        then.material(oak(Inputs.NONE));
        ProjectInputs now = forty().today("2027-03-08");
        now.task("a").stage("pit").exactly(40).stage("pit");
        now.material(oak(ProjectInputs.day("2027-03-05")));
        WhatMoved.Stage stage = between(then.inputs(), now.inputs()).get(0);
        // from Friday the 12th, on which the oak was to come, to the 18th; now from the 8th to the 12th
        assertThat(stage.now() - stage.then()).isEqualTo(-6);
        // with the oak there a week goes by from the 1st to the 8th, without it nothing but the wait; half of each
        assertThat(stage.of(Cause.WORK) + stage.of(Cause.MATERIALS)).isEqualTo(-6);
        assertThat(stage.of(Cause.MATERIALS)).isEqualTo(-9.5);
    }

    @Test
    void rule_96_a_week_that_passed_without_work_moves_by_that_week() {
        ProjectInputs then = forty();
        then.task("a").stage("pit").exactly(40).stage("pit");
        ProjectInputs now = forty().today("2027-03-08");
        now.task("a").stage("pit").exactly(40).stage("pit");
        WhatMoved.Stage stage = between(then.inputs(), now.inputs()).get(0);
        assertThat(stage.of(Cause.WORK)).isEqualTo(7);
        assertThat(stage.now() - stage.then()).isEqualTo(7);
    }

    @Test
    void rule_96_a_day_off_and_a_task_more_belong_to_the_plan_and_a_later_delivery_to_the_material() {
        ProjectInputs then = forty().material("m", "a", 0, 5);
        then.task("a").stage("pit").exactly(8).stage("pit");
        ProjectInputs off = forty().material("m", "a", 0, 5).off("ana", "2027-03-06", "2027-03-12", 0);
        off.task("a").stage("pit").exactly(8).stage("pit");
        WhatMoved.Stage plan = between(then.inputs(), off.inputs()).get(0);
        assertThat(plan.of(Cause.PLAN)).isEqualTo(plan.now() - plan.then()).isEqualTo(7);
        ProjectInputs late = forty().material("m", "a", 0, 12);
        late.task("a").stage("pit").exactly(8).stage("pit");
        WhatMoved.Stage line = between(then.inputs(), late.inputs()).get(0);
        assertThat(line.of(Cause.MATERIALS)).isEqualTo(line.now() - line.then()).isEqualTo(7);
    }

    @Test
    void rule_96_money_that_came_lets_a_held_order_go() {
        ProjectInputs then =
                forty().cash(1_000, 0).regular("grant", 5_000, Inputs.Every.YEAR, "2027-04-05", "2027-04-05");
        then.material("m", "a", 4_000, 0).task("a").stage("pit").exactly(8).stage("pit");
        ProjectInputs now =
                forty().cash(6_000, 0).regular("grant", 5_000, Inputs.Every.YEAR, "2027-04-05", "2027-04-05");
        now.material("m", "a", 4_000, 0).task("a").stage("pit").exactly(8).stage("pit");
        WhatMoved.Stage stage = between(then.inputs(), now.inputs()).get(0);
        assertThat(stage.of(Cause.MONEY)).isEqualTo(stage.now() - stage.then()).isLessThan(-28);
    }

    @Test
    void rule_96_all_causes_at_once_sum_exactly_on_random_projects() {
        for (int number = 0; number < 6; number++) {
            Inputs then = RandomProjects.of(number);
            Inputs now = RandomProjects.of(number + 100);
            for (WhatMoved.Stage stage : between(then, now)) {
                if (stage.then() < Integer.MAX_VALUE && stage.now() < Integer.MAX_VALUE) {
                    assertThat(Arrays.stream(stage.days()).sum())
                            .as("project %d, stage %s", number, stage.id())
                            .isCloseTo(stage.now() - stage.then(), within(1e-6));
                }
            }
        }
    }

    @Test
    void the_whole_of_one_side_is_that_side() {
        Inputs then = RandomProjects.of(3);
        Inputs now = RandomProjects.of(103);
        assertThat(Mixture.of(then, now, 0)).isEqualTo(then);
        assertThat(Mixture.of(then, now, 31)).isEqualTo(now);
    }
}
