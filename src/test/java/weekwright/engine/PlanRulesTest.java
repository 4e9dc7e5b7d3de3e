package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.testkit.ProjectInputs.project;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.Run;

/** Rules 52 to 55: the plan. */
class PlanRulesTest {
    @Test
    void rule_52_the_kept_order_stays_where_a_new_one_is_not_better_by_more_than_a_hundredth() {
        for (String first : new String[] {"a", "b"}) {
            String second = first.equals("a") ? "b" : "a";
            ProjectInputs project = project().person("ana").ranks(first, second);
            project.task("a").exactly(8).task("b").exactly(8);
            Plan plan = Planner.plan(project.inputs(), 1, 20);
            assertThat(plan.ranks()).containsExactly(first, second);
            assertThat(plan.kept()).isTrue();
        }
    }

    @Test
    void rule_52_a_clearly_better_order_replaces_the_kept_one() {
        // the heavy stage waits 60 days after a; the kept order does the light work of ten days first
        ProjectInputs project =
                project().person("ana").ranks("light", "a", "cure").chain("a", "cure");
        project.stage(new Inputs.Stage("heavy", 0, 10, false, Inputs.Range.EMPTY));
        project.stage(new Inputs.Stage("easy", 1, 0.1, false, Inputs.Range.EMPTY));
        project.task("a")
                .stage("heavy")
                .hours(8, 8, 8)
                .task("cure")
                .stage("heavy")
                .days(60);
        project.task("light").stage("easy").hours(80, 80, 80);
        Plan plan = Planner.plan(project.inputs(), 1, 20);
        assertThat(plan.kept()).isFalse();
        assertThat(plan.ranks().indexOf("a")).isLessThan(plan.ranks().indexOf("light"));
    }

    @Test
    void rule_52_a_new_task_is_put_into_the_kept_order_and_what_is_gone_leaves_it() {
        ProjectInputs project = project().person("ana").ranks("gone", "b", "a");
        project.task("a").exactly(8).task("b").exactly(8).task("new").exactly(8);
        Plan plan = Planner.plan(project.inputs(), 1, 0);
        assertThat(plan.ranks()).containsExactlyInAnyOrder("a", "b", "new");
        assertThat(plan.ranks().indexOf("b")).isLessThan(plan.ranks().indexOf("a"));
    }

    @Test
    void rule_52_the_same_inputs_and_seed_give_the_same_plan() {
        assertThat(Planner.plan(crowded().inputs(), 7, 30))
                .isEqualTo(Planner.plan(crowded().inputs(), 7, 30));
    }

    @Test
    void rule_52_a_search_begins_where_the_last_one_ended() {
        ProjectInputs project = crowded();
        Plan plan = Planner.plan(project.inputs(), 7, 20);
        double cold = plan.objective();
        for (int day = 1; day < 6; day++) {
            Plan next = Planner.plan(
                    project.ranks(plan.ranks().toArray(String[]::new)).inputs(), 7 + day, 20);
            assertThat(next.objective()).isLessThanOrEqualTo(plan.objective());
            plan = next;
        }
        assertThat(plan.objective()).isLessThan(0.99 * cold);
    }

    /** Forty tasks of exact hours, each after a random one before it. */
    private static ProjectInputs crowded() {
        SplittableRandom random = new SplittableRandom(3);
        List<String> trades = List.of("mason", "smith", "joiner");
        ProjectInputs project = project().person("ana", "mason", "joiner").person("ben", "smith", "joiner");
        for (int s = 0; s < 5; s++) {
            project.stage(new Inputs.Stage("s" + s, s, 1 + s % 3, false, Inputs.Range.EMPTY));
        }
        for (int i = 0; i < 40; i++) {
            project.task("t" + i)
                    .exactly(4 + random.nextInt(40))
                    .trades(trades.get(random.nextInt(3)))
                    .stage("s" + random.nextInt(5));
            if (i > 2) {
                project.link("t" + i, "t" + random.nextInt(i), 1, random.nextInt(20));
            }
        }
        return project;
    }

    @Test
    void rule_53_within_a_trial_the_order_of_work_stays() {
        // whatever is drawn, a is finished before b is begun
        ProjectInputs project = project().person("ana").ranks("a", "b");
        project.task("a").hours(5, 20, 60).task("b").hours(5, 20, 60);
        Run run = Run.of(project, 200);
        for (int trial = 0; trial < 200; trial++) {
            assertThat(run.outcome().taskStart[1][trial]).isGreaterThanOrEqualTo(run.outcome().taskLanding[0][trial]);
        }
    }

    @Test
    void rule_54_the_plan_takes_mean_hours_times_the_middle_of_the_ratio() {
        ProjectInputs plain = project().person("ana");
        // (10 + 4 x 13 + 28) / 6 = 15 hours: Monday and Tuesday
        plain.task("a").hours(10, 13, 28);
        assertThat(Run.of(plain).plannedLanding("a")).isEqualTo("2027-03-02");
        ProjectInputs slow = project().person("ana");
        slow.model(new Inputs.Model(2, 18, 6, 0.1, true, 15, 30, 1, 0));
        slow.task("a").hours(10, 13, 28);
        // 30 hours
        assertThat(Run.of(slow).plannedLanding("a")).isEqualTo("2027-03-04");
    }

    @Test
    void rule_54_the_plan_takes_mean_days_of_waits_and_links() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8).chain("a", "cure");
        project.task("a")
                .exactly(8)
                .task("cure")
                .days(4, 6, 14)
                .task("b")
                .exactly(8)
                .notBefore("2027-03-02");
        project.link("b", "cure", 1, 3);
        Run run = Run.of(project);
        // (4 + 24 + 14) / 6 = 7 days
        assertThat(run.plannedLanding("cure")).isEqualTo("2027-03-08");
        assertThat(run.plannedStart("b")).isEqualTo("2027-03-11");
    }

    @Test
    void rule_54_weather_is_carried_on_day_by_day_until_a_day_is_lost() {
        ProjectInputs project = project().person("ana").weather(0.3, 2);
        project.task("a").exactly(32).outdoors();
        // .3 .6 .9 1.2: Thursday is lost; Monday, Tuesday, Wednesday, Friday
        assertThat(Run.of(project).plannedLanding("a")).isEqualTo("2027-03-05");
        ProjectInputs more = project().person("ana").weather(0.3, 2);
        more.task("a").exactly(33).outdoors();
        // .5 .8 1.1 after it: the second lost day is Sunday 7 March (.2 .5 .8 1.1 on Thursday to Sunday)
        assertThat(Run.of(more).plannedLanding("a")).isEqualTo("2027-03-08");
    }

    @Test
    void rule_54_lines_not_ordered_are_there_after_their_mean_lead_and_money_is_ignored() {
        ProjectInputs project = project().person("ana").cash(0, 1_000_000).material("oak", "a", 99_000_000, 9);
        project.task("a").exactly(8);
        assertThat(Run.of(project).plannedStart("a")).isEqualTo("2027-03-10");
    }

    @Test
    void rule_54_editing_takes_its_mean_hours_in_the_plan() {
        ProjectInputs project = project().person("ana", "edit").fridays("2027-03-12");
        project.task("a").exactly(8);
        project.episode("e1", "2027-03-12", 20);
        // 20 hours of editing: a waits until Wednesday hour 4
        Run run = Run.of(project);
        assertThat(run.plannedStart("a")).isEqualTo("2027-03-03");
        assertThat(run.plannedLanding("a")).isEqualTo("2027-03-04");
    }

    @Test
    void rule_55_the_objective_is_weighted_landings_in_days() {
        ProjectInputs project = project();
        project.stage(new Inputs.Stage("x", 0, 2, false, Inputs.Range.EMPTY));
        project.stage(new Inputs.Stage("y", 1, 3, false, Inputs.Range.EMPTY));
        project.task("a").stage("x").days(10).task("b").stage("y").days(4);
        assertThat(plan(project).objective()).isCloseTo(2 * 10 + 3 * 4, within(1e-9));
    }

    @Test
    void rule_55_a_stage_that_is_not_finished_counts_as_two_horizons() {
        ProjectInputs project = project();
        project.stage(new Inputs.Stage("x", 0, 2, false, Inputs.Range.EMPTY));
        project.task("a").stage("x").hours(1, 2, 3);
        // nobody can do it; 366 days from 2027-03-01 to 2028-03-01
        assertThat(plan(project).objective()).isCloseTo(2 * 2 * 366, within(1e-9));
    }

    @Test
    void rule_55_each_empty_slot_of_the_next_twelve_costs_seven_times_the_mean_weight() {
        ProjectInputs project = project();
        project.stage(new Inputs.Stage("x", 0, 2, false, Inputs.Range.EMPTY));
        project.stage(new Inputs.Stage("y", 1, 4, false, Inputs.Range.EMPTY));
        project.task("a").stage("x").days(10).task("b").stage("y").days(4);
        project.fridays("2027-03-05");
        assertThat(plan(project).objective()).isCloseTo(2 * 10 + 4 * 4 + 7 * 3 * 12, within(1e-9));
        ProjectInputs filled = project.episode(DatesRulesTest.cut("e1", "2027-03-05", "2027-02-20"));
        assertThat(plan(filled).objective()).isCloseTo(2 * 10 + 4 * 4 + 7 * 3 * 11, within(1e-9));
    }

    @Test
    void a_plan_has_a_day_for_every_task_of_the_inputs() {
        ProjectInputs project = project().person("ana");
        project.task("a")
                .exactly(8)
                .task("done")
                .hours(1, 2, 3)
                .done("2027-01-05")
                .started("2027-01-04");
        Plan plan = plan(project);
        assertThat(plan.start()).hasSize(project.inputs().tasks().size());
        assertThat(plan.ranks()).isEqualTo(List.of("a"));
        assertThat(Run.text(plan.start().get(1))).isEqualTo("2027-01-04");
        assertThat(Run.text(plan.landing().get(1))).isEqualTo("2027-01-05");
    }

    private static Plan plan(ProjectInputs project) {
        return Planner.plan(project.inputs(), 1, 0);
    }
}
