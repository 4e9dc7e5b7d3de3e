package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.testkit.ProjectInputs.day;
import static weekwright.testkit.ProjectInputs.project;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import weekwright.engine.simulate.Found;
import weekwright.engine.simulate.Learned;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.Run;

/**
 * Rules 120, 122, 132, 133 and 134: what becomes of stated hours, what turns up, what fails, when is edited, what fills gaps. Cases
 * worked by hand; the as-of day is Monday 2027-03-01.
 */
class AsItGoesRulesTest {
    private static final int TRIALS = 4000;

    @Test
    void rule_120_a_set_turnout_is_a_share_of_every_day() {
        ProjectInputs project = project().person("ana").learned(0.5, 0);
        project.task("a").exactly(12);
        assertThat(Run.of(project).landing("a")).isEqualTo("2027-03-03");
        ProjectInputs whole = project().person("ana").learned(1, 0);
        whole.task("a").exactly(12);
        assertThat(Run.of(whole).landing("a")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_120_eight_equal_weeks_are_every_week_to_come() {
        ProjectInputs project =
                project().person("ana").learned(-1, 0).turnout("ana", .75, .75, .75, .75, .75, .75, .75, .75);
        // 30 of 40 hours a week: 60 hours are two weeks
        project.task("a").exactly(60);
        assertThat(Run.of(project).landing("a")).isEqualTo("2027-03-12");
    }

    @Test
    void rule_120_weeks_are_drawn_as_runs_of_three_so_that_an_illness_stays_a_spell() {
        ProjectInputs project = project()
                .horizonMonths(6)
                .person("ana")
                .learned(-1, 0)
                .turnout("ana", 1., 1., 1., 1., 1., 1., 0., 0., 0., 1., 1., 1., 1., 1., 1.);
        // from the Monday of a run on: three weeks of 40 hours, unless the run holds weeks without any
        project.task("a").exactly(8).notBefore("2027-03-15");
        int[] starts = Run.of(project, TRIALS).outcome().taskStart[0];
        // 13 runs: 8 begin with a week that was worked; weeks count in threes from an address of their own, so ask for
        // whole ones
        double within = share(starts, "2027-03-15", "2027-03-19");
        double weekLater = share(starts, "2027-03-22", "2027-03-26");
        double twoLater = share(starts, "2027-03-29", "2027-04-02");
        assertThat(within + weekLater + twoLater).isLessThan(1).isGreaterThan(0.9);
        assertThat(within).isCloseTo(10 / 13., within(0.03));
    }

    @Test
    void rule_120_under_eight_weeks_of_log_it_is_about_four_fifths() {
        ProjectInputs project = project().horizonMonths(24).person("ana").learned(-1, 0);
        project.task("a").exactly(1600);
        int[] landings = Run.of(project, TRIALS).outcome().taskLanding[0];
        int[] sorted = landings.clone();
        Arrays.sort(sorted);
        // 200 whole days; at 0.8 of them 250 days are 50 weeks, the Friday of the last
        assertThat(sorted[TRIALS / 2]).isBetween(day("2028-02-07"), day("2028-02-18"));
        // a standard deviation of 0.15: 16 in 100 turn out with under 0.65, 61.5 weeks and more
        double late = Arrays.stream(landings).filter(d -> d > day("2028-05-05")).count() / (double) TRIALS;
        assertThat(late).isCloseTo(0.1587, within(0.025));
    }

    @Test
    void rule_120_work_in_one_go_has_the_whole_of_a_day() {
        ProjectInputs project = project().person("ana").learned(0.6, 0);
        project.task("a").exactly(8).oneGo();
        assertThat(Run.of(project).landing("a")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_120_the_crews_own_lines_and_the_last_days_before_a_slot_have_all_stated_hours() {
        ProjectInputs own = project().person("ana").learned(0.5, 0);
        own.task("a").exactly(8);
        own.ownLine("2027-03-01", "ana", "a", Inputs.LineKind.WORK, 8);
        assertThat(Run.of(own).landing("a")).isEqualTo("2027-03-01");
        ProjectInputs late = project()
                .today("2027-03-03")
                .person("ana", "edit")
                .learned(0.5, 0)
                .fridays("2027-03-05");
        late.episode("e1", "2027-03-05", 16);
        assertThat(Run.of(late).cut("e1")).isEqualTo("2027-03-04");
        ProjectInputs early = project().person("ana", "edit").learned(0.5, 0).fridays("2027-03-12");
        early.episode("e1", "2027-03-12", 16);
        assertThat(Run.of(early).cut("e1")).isEqualTo("2027-03-04");
    }

    @Test
    void rule_122_what_turns_up_is_worked_after_the_last_listed_task_and_lands_the_stage() {
        ProjectInputs project = project().person("ana").learned(1, 0.25);
        project.stage(new Inputs.Stage("pit", 1, 1, false, Inputs.Range.EMPTY));
        project.task("a").stage("pit").exactly(32);
        Run run = Run.of(project, TRIALS);
        assertThat(run.landing("a")).isEqualTo("2027-03-04");
        int[] stage = run.outcome().held.stageLanding[0];
        isHalfAStageOfMeanEight(stage);
    }

    /**
     * Half of the stage is done ({@link ProjectInputs.Task#exactly}): 64 hours × 0.25 × gamma of shape ½, mean 8: at most 8 hours
     * (Friday's) is P(½, ½) = erf(√½) = 0.6827, at most 16 (Monday's) P(½, 1) = erf(1) = 0.8427 (Abramowitz &amp; Stegun 6.5.16 and
     * table 7.1).
     */
    private static void isHalfAStageOfMeanEight(int[] stage) {
        assertThat(share(stage, "2027-03-04", "2027-03-05")).isCloseTo(0.6827, within(0.025));
        assertThat(share(stage, "2027-03-04", "2027-03-08")).isCloseTo(0.8427, within(0.025));
    }

    @Test
    void rule_122_what_turns_up_takes_the_place_of_its_stage_and_not_the_last_one() {
        ProjectInputs project = project().person("ana").learned(1, 0.25).ranks("a", "b");
        project.stage(new Inputs.Stage("pit", 1, 1, false, Inputs.Range.EMPTY));
        project.stage(new Inputs.Stage("house", 2, 1, false, Inputs.Range.EMPTY));
        project.task("a").stage("pit").exactly(32);
        project.task("b").stage("house").exactly(80);
        Run run = Run.of(project, TRIALS);
        // the ten days of b stand behind what turns up in the pit: that is over on Friday or Monday as if b were not
        // there
        isHalfAStageOfMeanEight(run.outcome().held.stageLanding[0]);
    }

    @Test
    void rule_122_a_quarter_of_a_stage_brings_a_gamma_of_a_quarter_the_shape() {
        ProjectInputs project = project().person("ana").learned(1, 0.5);
        project.stage(new Inputs.Stage("pit", 1, 1, false, Inputs.Range.EMPTY));
        // with the one that "exactly" puts beside it three finished tasks of 32 hours each
        for (String done : new String[] {"x", "y"}) {
            project.task(done).stage("pit").logged("2026-02-02", "ana", 32).done("2026-02-20");
        }
        project.task("a").stage("pit").exactly(32);
        Run run = Run.of(project, TRIALS);
        int[] stage = run.outcome().held.stageLanding[0];
        // 128 hours × 0.5 × gamma of shape 1/4: at most 8 hours (Friday's) is x = 0.125, at most 16 (Monday's) x =
        // 0.25;
        // the regularised incomplete gamma P(1/4, x) by its series x^a / Γ(a) · Σ (−x)^n / (n! (a + n)), Γ(1/4) =
        // 3.625610
        // (Abramowitz & Stegun 6.5.29 and table 6.1)
        assertThat(share(stage, "2027-03-04", "2027-03-05")).isCloseTo(lowerGamma(0.125), within(0.025));
        assertThat(share(stage, "2027-03-04", "2027-03-08")).isCloseTo(lowerGamma(0.25), within(0.025));
    }

    private static double lowerGamma(double x) {
        double sum = 0;
        double term = 1;
        for (int n = 0; n < 20; n++) {
            sum += term / (0.25 + n);
            term *= -x / (n + 1);
        }
        return Math.pow(x, 0.25) / 3.625610 * sum;
    }

    @Test
    void rule_122_the_share_is_learned_from_finished_stages_beside_a_prior_worth_two() {
        ProjectInputs project = project().person("ana").learned(1, -1);
        for (String stage : new String[] {"one", "two"}) {
            project.task(stage + ".1")
                    .stage(stage)
                    .added("2026-01-01")
                    .logged("2026-02-02", "ana", 40)
                    .done("2026-02-20")
                    .task(stage + ".2")
                    .stage(stage)
                    .added("2026-02-10")
                    .logged("2026-02-11", "ana", 10)
                    .done("2026-02-20");
        }
        // (2 × 0.15 + 0.25 + 0.25) / (2 + 2)
        assertThat(found(project).mean()).isCloseTo(0.2, within(1e-12));
        assertThat(found(project).shares()).containsExactly(0.25, 0.25);
        // the tasks of a stage that say nothing of when they were put down tell nothing
        project.task("three.1").stage("three").logged("2026-03-02", "ana", 40).done("2026-03-20");
        assertThat(found(project).mean()).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void rule_122_what_turns_up_waits_for_its_material_as_often_as_the_crews_tasks_buy_some() {
        ProjectInputs project = withMaterial(0.25);
        int[] stage = Run.of(project, TRIALS).outcome().held.stageLanding[0];
        // one of the two listed tasks buys: a job does so with a chance of one half, with a lead of ten days from the
        // evening of the 4th, a Sunday. A job is there with the chance min(1, ½ g), g gamma of shape ½, and has 16 g
        // hours:
        // on the 15th or later if it waits or if g is over 3 (six days of eight hours): 0.1222, by quadrature
        assertThat(share(stage, "2027-03-15", "2028-12-31")).isCloseTo(0.1222, within(0.02));
    }

    @Test
    void rule_122_nothing_turns_up_and_nothing_waits_where_the_settings_say_nought() {
        assertThat(Run.of(withMaterial(0)).outcome().held.stageLanding[0]).containsExactly(day("2027-03-04"));
    }

    private static ProjectInputs withMaterial(double foundShare) {
        ProjectInputs project = project().cash(1_000_000, 0).person("ana").learned(1, foundShare);
        project.stage(new Inputs.Stage("pit", 1, 1, false, Inputs.Range.EMPTY));
        project.task("a").stage("pit").exactly(32);
        return project.material(new Inputs.Material(
                "oak",
                "a",
                "",
                1,
                0,
                Inputs.Range.ZERO,
                Inputs.Source.BOUGHT,
                0,
                Inputs.Range.of(10),
                0,
                day("2027-02-01"),
                Inputs.NONE,
                day("2027-02-11"),
                0,
                ""));
    }

    @Test
    void rule_132_a_task_without_a_chance_to_fail_is_done_once() {
        ProjectInputs project = project().person("ana");
        project.task("a").exactly(8).fails(0, 100);
        assertThat(Run.of(project, TRIALS).outcome().taskLanding[0]).containsOnly(day("2027-03-01"));
    }

    @Test
    void rule_122_the_same_share_of_the_material_not_yet_ordered_is_paid() {
        ProjectInputs project = project().cash(1_000_000, 0).person("ana").learned(1, 0.2);
        project.stage(new Inputs.Stage("pit", 1, 1, false, Inputs.Range.EMPTY));
        project.task("a").stage("pit").exactly(8);
        project.material("m", "a", 100_000, 0);
        Run run = Run.of(project, TRIALS);
        long[] cash = run.outcome().held.cash[run.outcome().held.cash.length - 1];
        double mean = Arrays.stream(cash).average().orElseThrow();
        // a fifth of 100,000 beside the 100,000 themselves; the mean of 4000 exponentials is within four standard
        // errors of 316
        assertThat(1_000_000 - mean).isCloseTo(120_000, within(1300.0));
    }

    @Test
    void rule_132_what_fails_is_done_again_by_the_share_at_most_three_times() {
        ProjectInputs project = project().person("ana");
        project.task("a").exactly(8).fails(50, 100);
        int[] landings = Run.of(project, TRIALS).outcome().taskLanding[0];
        assertThat(share(landings, "2027-03-01", "2027-03-01")).isCloseTo(0.5, within(0.03));
        assertThat(share(landings, "2027-03-02", "2027-03-02")).isCloseTo(0.25, within(0.03));
        assertThat(share(landings, "2027-03-03", "2027-03-03")).isCloseTo(0.125, within(0.03));
        assertThat(share(landings, "2027-03-04", "2027-03-04")).isCloseTo(0.125, within(0.03));
    }

    @Test
    void rule_132_a_share_of_the_hours_again_holds_successors_and_what_tells_the_whole() {
        ProjectInputs project =
                project().person("ana", "mason").person("ben", "smith").chain("a", "b");
        project.task("a").exactly(8).trades("mason").fails(100, 25);
        project.task("b").exactly(4).trades("smith");
        Run run = Run.of(project);
        // three failures of two hours each: the second day, six hours of it; b has the two hours left
        assertThat(run.landing("a")).isEqualTo("2027-03-02");
        assertThat(run.start("b")).isEqualTo("2027-03-02");
        assertThat(run.landing("b")).isEqualTo("2027-03-03");
    }

    @Test
    void rule_132_its_bought_material_is_bought_again_with_its_lead() {
        ProjectInputs project = project().cash(1_000_000, 0).person("ana");
        project.task("a").exactly(8).fails(100, 50);
        project.material("m", "a", 1_000, 7);
        Run run = Run.of(project);
        // there on the 8th, a day's work; each time ordered the next morning, seven days, half a day's work: 16, 24, 1
        // April
        assertThat(run.start("a")).isEqualTo("2027-03-08");
        assertThat(run.landing("a")).isEqualTo("2027-04-01");
        long[] cash = run.outcome().held.cash[run.outcome().held.cash.length - 1];
        assertThat(cash[0]).isEqualTo(1_000_000 - 4 * 1_000);
    }

    @Test
    void rule_132_a_wait_is_waited_again() {
        ProjectInputs project = project().person("ana");
        project.task("a").days(10).fails(100, 50);
        // ten days from the evening of the 1st, then three times five
        assertThat(Run.of(project).landing("a")).isEqualTo("2027-03-26");
    }

    @Test
    void rule_133_editing_on_its_weekdays_until_two_days_before_the_slot() {
        ProjectInputs project =
                project().person("ana", "edit").fridays("2027-03-12").editDays(4);
        project.episode("e1", "2027-03-12", 4);
        project.task("a").exactly(8);
        Run run = Run.of(project);
        assertThat(run.landing("a")).isEqualTo("2027-03-01");
        // the window opened long ago, the first Thursday is the 4th
        assertThat(run.cut("e1")).isEqualTo("2027-03-04");
        ProjectInputs late =
                project().person("ana", "edit").fridays("2027-03-05").editDays(1);
        late.today("2027-03-02").episode("e1", "2027-03-05", 4);
        // Mondays are past; two days before the slot is Wednesday
        assertThat(Run.of(late).cut("e1")).isEqualTo("2027-03-03");
    }

    @Test
    void rule_133_what_happens_once_goes_before_editing_unless_the_slot_is_tomorrow() {
        ProjectInputs project =
                project().person("ana", "edit", "camera").person("ben", "mason").fridays("2027-03-05");
        project.episode("e1", "2027-03-05", 8);
        project.task("a").exactly(8).trades("mason").camera(Inputs.Camera.ONCE, -1);
        Run run = Run.of(project);
        assertThat(run.landing("a")).isEqualTo("2027-03-01");
        assertThat(run.cut("e1")).isEqualTo("2027-03-02");
        ProjectInputs tomorrow =
                project().today("2027-03-04").person("ana", "edit", "camera").person("ben", "mason");
        tomorrow.fridays("2027-03-05").episode("e1", "2027-03-05", 8);
        tomorrow.task("a").exactly(8).trades("mason").camera(Inputs.Camera.ONCE, -1);
        assertThat(Run.of(tomorrow).cut("e1")).isEqualTo("2027-03-04");
        assertThat(Run.of(tomorrow).landing("a")).isEqualTo("2027-03-05");
    }

    @Test
    void rule_43_an_own_line_of_work_goes_before_editing() {
        ProjectInputs project = project().person("ana", "edit").fridays("2027-03-12");
        project.episode("e1", "2027-03-12", 8);
        project.task("a").exactly(4);
        project.ownLine("2027-03-01", "ana", "a", Inputs.LineKind.WORK, 4);
        Run run = Run.of(project);
        assertThat(run.landing("a")).isEqualTo("2027-03-01");
        assertThat(run.cut("e1")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_134_fill_work_is_for_people_for_whom_nothing_else_is_workable() {
        ProjectInputs project =
                project().person("ana", "mason").person("ben", "smith").ranks("f", "g", "a");
        project.task("f").exactly(8).trades("mason").fill();
        project.task("g").exactly(8).trades("smith").fill();
        project.task("a").exactly(16).trades("mason");
        Run run = Run.of(project);
        assertThat(run.landing("a")).isEqualTo("2027-03-02");
        assertThat(run.landing("f")).isEqualTo("2027-03-03");
        assertThat(run.landing("g")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_134_while_the_bank_is_under_its_floor_fill_work_with_story_takes_its_turn() {
        ProjectInputs project = project().person("ana").ranks("f", "a").fridays("2027-03-05");
        project.task("f").exactly(8).fill().camera(Inputs.Camera.FIXED, 0).story(20);
        project.task("a").exactly(8);
        // nothing is in the bank, under three weeks
        assertThat(Run.of(project).landing("f")).isEqualTo("2027-03-01");
        ProjectInputs full = project().person("ana").ranks("f", "a").fridays("2027-03-05");
        full.task("f").exactly(8).fill().camera(Inputs.Camera.FIXED, 0).story(20);
        full.task("a").exactly(8);
        full.task("told")
                .camera(Inputs.Camera.FIXED, 0)
                .story(200)
                .logged("2027-02-01", "ana", Inputs.As.HANDS, 8, 0, true)
                .done("2027-02-01");
        assertThat(Run.of(full).landing("a")).isEqualTo("2027-03-01");
    }

    private static Found found(ProjectInputs project) {
        return new Learned(project.inputs()).found();
    }

    private static double share(int[] days, String from, String to) {
        return Arrays.stream(days).filter(d -> d >= day(from) && d <= day(to)).count() / (double) days.length;
    }
}
