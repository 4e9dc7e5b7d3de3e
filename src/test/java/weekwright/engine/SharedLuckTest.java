package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.ProjectInputs.day;
import static weekwright.testkit.ProjectInputs.project;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.Progress;
import weekwright.engine.simulate.Setup;
import weekwright.engine.simulate.Simulation;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.Run;

/** The same luck for variants of a project, the same bytes for any number of threads, and what money does to the two answers. */
class SharedLuckTest {
    private static final int TRIALS = 300;

    @Test
    void one_two_and_eight_threads_give_the_same_bytes() {
        Inputs inputs = mill(10_000, true).inputs();
        Plan plan = Planner.plan(inputs, 1, 5);
        Outcome one = Simulation.run(inputs, plan, TRIALS, 1, 1, Progress.NONE);
        for (int threads : new int[] {2, 8}) {
            assertSame(one, Simulation.run(inputs, plan, TRIALS, 1, threads, Progress.NONE));
        }
    }

    @Test
    void more_trials_begin_with_the_same_ones() {
        Inputs inputs = mill(10_000, true).inputs();
        Plan plan = Planner.plan(inputs, 1, 5);
        Outcome few = Simulation.run(inputs, plan, 50, 1, 1, Progress.NONE);
        Outcome many = Simulation.run(inputs, plan, 120, 1, 2, Progress.NONE);
        for (int task = 0; task < few.taskLanding.length; task++) {
            for (int trial = 0; trial < 50; trial++) {
                assertThat(many.taskLanding[task][trial]).isEqualTo(few.taskLanding[task][trial]);
            }
        }
    }

    @Test
    void futures_without_reasons_are_the_same_but_for_held_by_and_critical() {
        Setup setup = new Setup(mill(10_000, true).inputs());
        Plan plan = Planner.plan(setup, 1, 5);
        Outcome with = Simulation.run(setup, plan, TRIALS, 1, 1, Progress.NONE);
        Outcome without = Simulation.runWithoutReasons(setup, plan, TRIALS, 1, 2, Progress.NONE);
        assertThat(Arrays.stream(with.critical).sum()).isPositive();
        assertThat(Arrays.stream(without.critical).sum()).isZero();
        assertThat(Arrays.stream(without.heldBy).flatMapToLong(Arrays::stream).sum())
                .isZero();
        Arrays.fill(with.critical, 0);
        Arrays.stream(with.heldBy).forEach(columns -> Arrays.fill(columns, 0));
        assertSame(with, without);
    }

    @Test
    void another_seed_gives_other_luck() {
        Inputs inputs = mill(10_000, true).inputs();
        Plan plan = Planner.plan(inputs, 1, 5);
        assertThat(Simulation.run(inputs, plan, TRIALS, 1, 1, Progress.NONE).effortRatio)
                .isNotEqualTo(Simulation.run(inputs, plan, TRIALS, 2, 1, Progress.NONE).effortRatio);
    }

    @Test
    void rule_9_without_a_task_that_nothing_follows_every_other_draw_is_bit_equal() {
        Run with = Run.of(mill(10_000, true), TRIALS);
        Run without = Run.of(mill(10_000, false), TRIALS);
        assertThat(with.outcome().effortRatio).isEqualTo(without.outcome().effortRatio);
        for (Inputs.Task task : without.inputs().tasks()) {
            assertThat(with.outcome().taskDrawn[with.task(task.id())])
                    .as(task.id())
                    .isEqualTo(without.outcome().taskDrawn[without.task(task.id())]);
        }
    }

    @Test
    void rule_9_without_a_task_whose_people_nobody_shares_nothing_else_moves() {
        Run with = Run.of(mill(10_000, true), TRIALS);
        Run without = Run.of(mill(10_000, false), TRIALS);
        for (Inputs.Task task : without.inputs().tasks()) {
            assertThat(with.outcome().taskLanding[with.task(task.id())])
                    .as(task.id())
                    .isEqualTo(without.outcome().taskLanding[without.task(task.id())]);
        }
        assertThat(with.outcome().held.cash).isEqualTo(without.outcome().held.cash);
        assertThat(with.outcome().workFirst.cash).isEqualTo(without.outcome().workFirst.cash);
        assertThat(with.outcome().slot).isEqualTo(without.outcome().slot);
        assertThat(with.outcome().orderDay).isEqualTo(without.outcome().orderDay);
    }

    @Test
    void a_large_grant_makes_both_funding_answers_equal() {
        Run poor = Run.of(mill(0, true), TRIALS);
        assertThat(poor.outcome().held.cash).isNotEqualTo(poor.outcome().workFirst.cash);
        Run rich = Run.of(mill(100_000_000, true), TRIALS);
        assertSame(rich.outcome().held, rich.outcome().workFirst);
    }

    @Test
    void with_no_money_no_order_leaves_and_the_stage_is_beyond() {
        ProjectInputs project = project().person("ana").cash(0, 0);
        project.task("a")
                .stage("wheel")
                .hours(4, 8, 16)
                .task("b")
                .stage("wheel")
                .hours(4, 8, 16);
        project.material("oak", "b", 250_000, 20);
        Run run = Run.of(project, TRIALS);
        assertThat(run.outcome().orderDay[0]).containsOnly(Outcome.LATER);
        assertThat(Outcome.beyond(run.outcome().held.stageLanding[0])).isEqualTo(1);
        assertThat(Outcome.beyond(run.outcome().workFirst.stageLanding[0])).isZero();
        for (long[] week : run.outcome().held.cash) {
            assertThat(week).containsOnly(0);
        }
    }

    @Test
    void held_for_funds_never_lands_a_stage_earlier_in_a_project_of_one_chain() {
        ProjectInputs project = project().person("ana").cash(60_000, 10_000).chain("a", "b", "c");
        for (String id : List.of("a", "b", "c")) {
            project.task(id).stage(id).hours(10, 20, 45);
            project.material("line-" + id, id, 40_000, 15);
        }
        project.level("hand", 500, false).supporters("2027-03", "hand", 60, 2, 0);
        Run run = Run.of(project, TRIALS);
        for (int stage = 0; stage < 3; stage++) {
            for (int trial = 0; trial < TRIALS; trial++) {
                assertThat(run.outcome().held.stageLanding[stage][trial])
                        .isGreaterThanOrEqualTo(run.outcome().workFirst.stageLanding[stage][trial]);
            }
        }
    }

    /** A small project with everything in it. The task "sign" is smith's work, nothing follows it, and only ben has that trade. */
    private static ProjectInputs mill(long cash, boolean withSign) {
        ProjectInputs project =
                project().person("ana", "mason", "edit").person("cleo", 0, 0, 0, 0, 4, 8, 0, "mason", "camera");
        if (withSign) {
            project.person("ben", "smith");
        } else {
            project.person("ben", "none");
        }
        project.cash(cash, 2000)
                .weather(0.25, 2)
                .fridays("2027-03-05")
                .equipment("hoist", 1)
                .otherMonths(-900L, 300L, 0L);
        project.stage("pit").stage("wheel");
        if (withSign) {
            project.task("sign").stage("pit").hours(3, 6, 14).trades("smith");
        }
        project.task("dig").stage("pit").hours(20, 40, 90).trades("mason").outdoors();
        project.task("pour").stage("pit").hours(6, 10, 20).trades("mason").needs("hoist", 1);
        project.task("cure").stage("pit").days(10, 14, 28);
        project.task("buckets")
                .stage("wheel")
                .hours(2, 3, 6)
                .pieces(16, 90)
                .trades("mason")
                .camera(Inputs.Camera.OPERATOR, 30)
                .story(60);
        project.task("hang")
                .stage("wheel")
                .hours(6, 12, 30)
                .trades("mason")
                .hands(2, 2)
                .needs("hoist", 1);
        project.chain("dig", "pour", "cure", "hang").link("hang", "buckets", 1, 0);
        project.material(new Inputs.Material(
                "lime",
                "pour",
                "",
                12,
                10,
                ProjectInputs.range(200, 300, 500),
                Inputs.Source.BOUGHT,
                0,
                ProjectInputs.range(5, 9, 20),
                30,
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                0,
                ""));
        project.material(new Inputs.Material(
                "oak",
                "buckets",
                "",
                20,
                15,
                ProjectInputs.range(300, 400, 700),
                Inputs.Source.BOUGHT,
                0,
                ProjectInputs.range(20, 30, 70),
                25,
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                0,
                ""));
        project.level("hand", 500, false)
                .supporters("2027-02", "hand", 20, 3, 1)
                .supporters("2027-03", "hand", 22, 0, 0);
        project.episode(new Inputs.Episode(
                "e1",
                Inputs.EpisodeKind.BUILD,
                day("2027-04-02"),
                ProjectInputs.range(300, 600, 1200),
                "",
                0,
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                List.of(new Inputs.Tell("dig", 1))));
        return project;
    }

    /** Every public array of both holds the same numbers. */
    private static void assertSame(Outcome.Answer first, Outcome.Answer second) {
        List<String> compared = new ArrayList<>();
        compare(first, second, "", compared);
        assertThat(compared).contains("stageStart", "stageLanding", "cash", "underReserve", "firstUnderZero");
    }

    private static void assertSame(Outcome first, Outcome second) {
        List<String> compared = new ArrayList<>();
        compare(first, second, "", compared);
        assertThat(compared).contains("taskLanding", "held.cash", "workFirst.stageLanding", "heldBy", "counts", "bank");
    }

    private static void compare(Object first, Object second, String path, List<String> compared) {
        for (Field field : first.getClass().getFields()) {
            if (Modifier.isStatic(field.getModifiers())) {
                continue;
            }
            try {
                Object one = field.get(first);
                Object two = field.get(second);
                String name = path + field.getName();
                if (one instanceof Outcome.Answer) {
                    compare(one, two, name + ".", compared);
                } else if (one.getClass().isArray()) {
                    assertThat(Array.getLength(one)).as(name).isPositive();
                    assertThat(Arrays.deepEquals(new Object[] {one}, new Object[] {two}))
                            .as(name)
                            .isTrue();
                    compared.add(name);
                } else {
                    assertThat(one).as(name).isEqualTo(two);
                }
            } catch (IllegalAccessException refused) {
                throw new AssertionError(field.getName(), refused);
            }
        }
    }
}
