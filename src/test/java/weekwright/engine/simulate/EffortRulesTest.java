package weekwright.engine.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.testkit.ProjectInputs.project;

import org.junit.jupiter.api.Test;
import weekwright.engine.Inputs;
import weekwright.testkit.ProjectInputs;

/** Rules 11 to 26 and 121 as the inputs reach them; the formulas themselves are tested beside their classes. */
class EffortRulesTest {
    private static final long TRIAL = Streams.trialKey(1, 0);

    @Test
    void rule_11_and_13_a_finished_task_of_the_inputs_teaches_its_log_ratio() {
        // E = (4 + 4 x 8 + 18) / 6 = 9 h, sd = 14/6 h; 12 h taken; done today, so its weight is 1
        Efforts efforts = Efforts.of(project()
                .task("a")
                .hours(4, 8, 18)
                .logged("2027-02-20", "ana", 5)
                .logged("2027-02-21", "ana", 7)
                .done("2027-03-01")
                .and()
                .inputs());
        double v = Math.log(1 + Math.pow(14 / 6.0 / 9, 2));
        double r = Math.log(12) - (Math.log(9) - v / 2);
        double kn = 1 / 0.09 + 1 / v;
        assertThat(efforts.ratio().finished()).isEqualTo(1);
        assertThat(efforts.ratio().betaN()).isCloseTo(r / v / kn, within(1e-12));
        assertThat(efforts.ratio().an()).isEqualTo(3.5);
    }

    @Test
    void rule_13_the_priors_centre_is_the_logarithm_of_the_prior_ratio() {
        ProjectInputs project = project();
        Inputs.Model model = project.model();
        project.model(new Inputs.Model(
                1.15,
                model.effortHalfLife(),
                model.supportersHalfLife(),
                model.joiningDrift(),
                model.editingFirst(),
                model.cameraFixedPercent(),
                model.cameraOperatorPercent(),
                1,
                0));
        assertThat(Efforts.of(project.inputs()).ratio().betaN()).isCloseTo(Math.log(1.15), within(1e-15));
    }

    @Test
    void rule_14_a_task_done_18_months_ago_weighs_half_of_one_done_today() {
        // 18 x 30.4375 = 547.875 days; 548 days before 2027-03-01 is 2025-08-30
        ProjectInputs project = project()
                .task("a")
                .hours(4, 8, 18)
                .logged("2025-08-30", "ana", 9)
                .done("2025-08-30")
                .and();
        assertThat(Efforts.of(project.inputs()).ratio().an()).isCloseTo(3.25, within(1e-4));
    }

    @Test
    void rule_15_only_finished_work_with_believable_hours_teaches() {
        ProjectInputs project = project();
        project.task("cure").days(7).done("2027-02-01");
        project.task("open").hours(4, 8, 18).logged("2027-02-01", "ana", 9);
        project.task("dropped")
                .hours(4, 8, 18)
                .logged("2027-02-01", "ana", 9)
                .done("2027-02-02")
                .dropped("2027-02-02");
        project.task("no-log").hours(4, 8, 18).done("2027-02-01");
        project.task("not-logged")
                .hours(40, 80, 180)
                .logged("2027-02-01", "ana", 3.9)
                .done("2027-02-01");
        assertThat(Efforts.of(project.inputs()).ratio().finished()).isZero();
        project.task("logged").hours(40, 80, 180).logged("2027-02-01", "ana", 4).done("2027-02-01");
        assertThat(Efforts.of(project.inputs()).ratio().finished()).isEqualTo(1);
    }

    @Test
    void rule_15_a_pieces_task_is_not_logged_under_a_tenth_of_the_low_hours_of_all_its_pieces() {
        ProjectInputs project = project();
        project.task("cogs")
                .hours(1, 2, 3)
                .pieces(100, 100)
                .logged("2027-02-01", "ana", 9)
                .done("2027-02-01");
        assertThat(Efforts.of(project.inputs()).ratio().finished()).isZero();
        project.task("pegs")
                .hours(1, 2, 3)
                .pieces(100, 100)
                .logged("2027-02-01", "ana", 11)
                .done("2027-02-01");
        assertThat(Efforts.of(project.inputs()).ratio().finished()).isEqualTo(1);
    }

    @Test
    void rule_16_only_hours_as_hands_are_hours_of_the_task() {
        ProjectInputs project = project();
        project.task("a")
                .hours(4, 8, 18)
                .logged("2027-02-20", "ana", 3)
                .logged("2027-02-20", "ben", Inputs.As.CAMERA, 2, 0, true)
                .logged("2027-02-21", "ben", Inputs.As.EDIT, 1, 0, false);
        ProjectInputs hands = project()
                .task("a")
                .hours(4, 8, 18)
                .logged("2027-02-20", "ana", 3)
                .and();
        assertThat(Efforts.of(project.inputs()).left(0, 0, 1, TRIAL))
                .isEqualTo(Efforts.of(hands.inputs()).left(0, 0, 1, TRIAL));
        project.task("b")
                .hours(4, 8, 18)
                .logged("2027-02-20", "ben", Inputs.As.CAMERA, 9, 0, true)
                .done("2027-02-21");
        assertThat(Efforts.of(project.inputs()).ratio().finished()).isZero();
    }

    @Test
    void rule_17_and_47_a_fixed_camera_adds_its_percent_or_the_projects_15() {
        ProjectInputs plain = project().task("a").hours(4, 8, 18).and();
        ProjectInputs own = project()
                .task("a")
                .hours(4, 8, 18)
                .camera(Inputs.Camera.FIXED, 20)
                .and();
        ProjectInputs usual = project()
                .task("a")
                .hours(4, 8, 18)
                .camera(Inputs.Camera.FIXED, -1)
                .and();
        ProjectInputs operator = project()
                .task("a")
                .hours(4, 8, 18)
                .camera(Inputs.Camera.OPERATOR, 30)
                .and();
        assertThat(left(own)).isCloseTo(1.2 * left(plain), within(1e-9));
        assertThat(left(usual)).isCloseTo(1.15 * left(plain), within(1e-9));
        assertThat(left(operator)).isCloseTo(left(plain), within(1e-9));
    }

    @Test
    void rule_17_a_fixed_camera_is_in_the_estimate_that_the_ratio_is_learned_on() {
        ProjectInputs filmed = project()
                .task("a")
                .hours(4, 8, 18)
                .camera(Inputs.Camera.FIXED, 25)
                .logged("2027-02-20", "ana", 15)
                .done("2027-03-01")
                .and();
        ProjectInputs plain = project()
                .task("a")
                .hours(4, 8, 18)
                .logged("2027-02-20", "ana", 12)
                .done("2027-03-01")
                .and();
        assertThat(Efforts.of(filmed.inputs()).ratio().betaN())
                .isCloseTo(Efforts.of(plain.inputs()).ratio().betaN(), within(1e-12));
    }

    @Test
    void rule_18_the_estimate_of_pieces_is_the_sum_over_the_learning_curve() {
        ProjectInputs one = project().task("a").hours(1, 2, 4.5).and();
        ProjectInputs ten = project().task("a").hours(1, 2, 4.5).pieces(10, 80).and();
        assertThat(left(ten) / left(one)).isCloseTo(6.3154, within(5e-5));
        assertThat(Efforts.of(ten.inputs()).expectedLeft(0)).isCloseTo(6.3154 * 2.25 * 60, within(0.01));
    }

    @Test
    void rule_19_hours_under_way_are_drawn_given_what_is_logged() {
        ProjectInputs project = project()
                .task("a")
                .hours(4, 8, 18)
                .logged("2027-02-20", "ana", 7)
                .and();
        Efforts efforts = Efforts.of(project.inputs());
        double v = Math.log(1 + Math.pow(14 / 6.0 / 9, 2));
        double u = Streams.uniform(TRIAL, Streams.key(Streams.Purpose.TASK_HOURS, "a"), 0);
        double total = ThreePoint.lognormalBeyond(Math.log(540) - v / 2 + 0.2, 1.1 * Math.sqrt(v), 420, u);
        assertThat(efforts.left(0, 0.2, 1.1, TRIAL)).isCloseTo(total - 420, within(1e-9));
    }

    @Test
    void rule_20_said_left_counts_from_its_day_and_an_empty_day_is_today() {
        ProjectInputs project = project();
        project.task("a")
                .hours(4, 8, 18)
                .logged("2027-02-20", "ana", 7)
                .logged("2027-02-22", "ana", 2)
                .left(6, "2027-02-20");
        project.task("b").hours(4, 8, 18).logged("2027-02-22", "ana", 9).left(6, "");
        Efforts efforts = Efforts.of(project.inputs());
        double v = Math.log(1 + Math.pow(14 / 6.0 / 9, 2));
        double middle = Math.exp(Math.log(9 * 60 * 6 / 8.0) - v / 2);
        // the middle of what remains given more than two hours; nothing logged since for b
        double total = ThreePoint.lognormalBeyond(Math.log(middle), Math.sqrt(v), 120, 0.5);
        assertThat(efforts.expectedLeft(0)).isCloseTo(total - 120, within(1e-9));
        assertThat(efforts.expectedLeft(1)).isCloseTo(9 * 60 * 6 / 8.0, within(1e-9));
    }

    @Test
    void rule_20_said_left_beats_the_count_of_pieces() {
        ProjectInputs project = project();
        project.task("cogs")
                .hours(1, 1, 1)
                .pieces(20, 100)
                .logged("2027-02-20", "ana", Inputs.As.HANDS, 10, 10, false)
                .left(3, "2027-02-28");
        assertThat(Efforts.of(project.inputs()).expectedLeft(0)).isCloseTo(180, within(1e-9));
    }

    @Test
    void rule_20_said_left_beats_the_guess_for_a_task_without_an_estimate() {
        ProjectInputs project = project();
        project.task("past").logged("2027-01-10", "ana", 90).done("2027-01-10");
        project.task("a").logged("2027-02-20", "ana", 3).left(6, "2027-02-28");
        // mean of 0.75, 1 and 1.75 times six hours
        assertThat(Efforts.of(project.inputs()).expectedLeft(1)).isCloseTo(360 * 6.5 / 6, within(1e-9));
    }

    @Test
    void rule_22_pieces_once_learned_follow_the_log_without_the_ratio() {
        ProjectInputs project = project();
        project.task("cogs").hours(1, 1, 1).pieces(40, 100).logged("2027-02-20", "ana", Inputs.As.HANDS, 60, 20, false);
        Efforts efforts = Efforts.of(project.inputs());
        assertThat(efforts.left(0, 0, 1, TRIAL)).isEqualTo(efforts.left(0, 1.5, 4, TRIAL));
        // twenty pieces took three hours each, so the other twenty take about 60 h and not 20
        assertThat(efforts.expectedLeft(0)).isBetween(55 * 60.0, 65 * 60.0);
    }

    @Test
    void rule_22_with_two_pieces_the_rest_is_as_estimated_with_the_ratio() {
        ProjectInputs project = project();
        project.task("cogs").hours(1, 1, 1).pieces(40, 100).logged("2027-02-20", "ana", Inputs.As.HANDS, 9, 2, false);
        Efforts efforts = Efforts.of(project.inputs());
        assertThat(efforts.expectedLeft(0)).isCloseTo(38 * 60, within(1e-9));
        assertThat(efforts.left(0, 0.5, 1, TRIAL) / efforts.left(0, 0, 1, TRIAL))
                .isCloseTo(Math.exp(0.5), within(1e-12));
    }

    @Test
    void rule_24_all_pieces_logged_leave_a_quarter_of_an_hour() {
        ProjectInputs project = project();
        project.task("cogs").hours(1, 1, 1).pieces(4, 100).logged("2027-02-20", "ana", Inputs.As.HANDS, 4, 4, false);
        assertThat(Efforts.of(project.inputs()).left(0, 1, 2, TRIAL)).isCloseTo(15, within(1e-12));
    }

    @Test
    void rule_121_a_guess_takes_finished_tasks_of_its_stage_and_else_of_all() {
        ProjectInputs project = project();
        project.task("done-here").stage("roof").logged("2027-01-10", "ana", 6).done("2027-01-10");
        project.task("done-there")
                .stage("wheel")
                .logged("2027-01-10", "ana", 30)
                .done("2027-01-12");
        project.task("guess").stage("roof");
        project.task("lost").stage("leat");
        Efforts efforts = Efforts.of(project.inputs());
        for (int trial = 0; trial < 200; trial++) {
            long key = Streams.trialKey(1, trial);
            assertThat(efforts.left(2, 0.3, 1, key)).isEqualTo(360);
            assertThat(efforts.left(3, 0.3, 1, key)).isIn(360.0, 1800.0);
        }
    }

    @Test
    void rule_9_one_task_more_leaves_every_other_tasks_hours_bit_equal() {
        ProjectInputs few = project();
        few.task("a").hours(4, 8, 18);
        few.task("b").hours(1, 2, 3);
        ProjectInputs more = project();
        more.task("new").hours(3, 4, 5);
        more.task("b").hours(1, 2, 3);
        more.task("a").hours(4, 8, 18);
        Efforts first = Efforts.of(few.inputs());
        Efforts second = Efforts.of(more.inputs());
        for (int trial = 0; trial < 100; trial++) {
            long key = Streams.trialKey(3, trial);
            assertThat(second.left(2, 0.1, 1.2, key)).isEqualTo(first.left(0, 0.1, 1.2, key));
            assertThat(second.left(1, 0.1, 1.2, key)).isEqualTo(first.left(1, 0.1, 1.2, key));
        }
    }

    @Test
    void the_ratio_of_many_finished_tasks_is_the_one_they_show() {
        ProjectInputs project = project();
        for (int i = 0; i < 200; i++) {
            project.task("t" + i)
                    .hours(4, 8, 12)
                    .logged("2027-02-20", "ana", 8 * 1.3)
                    .done("2027-02-20");
        }
        EffortRatio ratio = Efforts.of(project.inputs()).ratio();
        // all take 1.3 of their mean; the middle of the estimate lies e^(-v/2) under the mean
        double v = Math.log(1 + Math.pow(8 / 6.0 / 8, 2));
        assertThat(ratio.ratioQuantile(0.5)).isCloseTo(1.3 * Math.exp(v / 2), within(0.005));
    }

    private static double left(ProjectInputs project) {
        return Efforts.of(project.inputs()).left(0, 0.1, 1.3, TRIAL);
    }

    /** The tasks of an inputs with what its finished ones teach. */
    private record Efforts(Inputs inputs, Learned learned) {
        static Efforts of(Inputs inputs) {
            return new Efforts(inputs, new Learned(inputs));
        }

        EffortRatio ratio() {
            return learned.ratio();
        }

        double left(int task, double beta, double kappa, long trialKey) {
            Inputs.Task one = inputs.tasks().get(task);
            return learned.effortOf(one)
                    .left(beta, kappa, Streams.uniform(trialKey, Streams.key(Streams.Purpose.TASK_HOURS, one.id()), 0));
        }

        double expectedLeft(int task) {
            return learned.effortOf(inputs.tasks().get(task)).expectedLeft(ratio().betaN());
        }
    }
}
