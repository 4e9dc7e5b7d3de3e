package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.testkit.ProjectInputs.project;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.FixedWork;
import weekwright.engine.simulate.Setup;
import weekwright.testkit.FixedProjects;
import weekwright.testkit.ProjectInputs;

/** What the search for an order of work comes to: fixed days against all lists, people against all orders. */
class PlanSearchTest {
    @Test
    void a_task_is_held_back_where_no_order_alone_reaches_the_best() {
        // worked by hand: whatever the order, brace and lay begin together on two trestles, and lift waits for brace: 4
        // + 5 + 5;
        // with brace held until lift is over: 1 + 5 + 5
        ProjectInputs project = project().equipment("trestle", 2).chain("lay", "lift", "dry");
        project.task("lay").days(1).needs("trestle", 1);
        project.task("lift").days(5).needs("trestle", 2);
        project.task("dry").days(5);
        project.task("brace").days(4).needs("trestle", 1);
        assertThat(Planner.plan(project.inputs(), 1, 0).objective()).isCloseTo(14, within(1e-9));
        Plan plan = Planner.plan(project.inputs(), 1, 100);
        assertThat(plan.objective()).isCloseTo(11, within(1e-9));
        assertThat(plan.notBefore())
                .containsExactly(new Inputs.NotBefore("brace", project.inputs().asOf() + 6));
    }

    @Test
    void small_fixed_work_is_done_on_the_best_day_that_any_list_gives() {
        // of all lists, worked one task after the other, one gives a best schedule (Sprecher, Kolisch & Drexl 1995)
        for (int seed = 0; seed < 60; seed++) {
            FixedWork work = FixedProjects.random(seed, 6, 1 + seed % 5);
            Inputs inputs = FixedProjects.of(work).inputs();
            int[] start = FixedProjects.starts(inputs, Planner.plan(inputs, 1, 300));
            assertThat(FixedProjects.broken(work, start)).as("seed " + seed).isEmpty();
            assertThat(FixedProjects.end(work, start))
                    .as("seed " + seed)
                    .isEqualTo(bestOfAllLists(work, new ArrayList<>(), new int[6]));
        }
    }

    @Test
    void larger_fixed_work_keeps_links_waits_and_quantities_and_more_passes_are_never_worse_than_none() {
        for (int seed = 0; seed < 20; seed++) {
            FixedWork work = FixedProjects.random(seed, 30, 1 + seed % 6);
            Inputs inputs = FixedProjects.of(work).inputs();
            Plan plan = Planner.plan(inputs, seed, 200);
            int[] start = FixedProjects.starts(inputs, plan);
            assertThat(FixedProjects.broken(work, start)).as("seed " + seed).isEmpty();
            assertThat(plan.objective()).isCloseTo(FixedProjects.end(work, start), within(1e-9));
            assertThat(plan.objective())
                    .isLessThanOrEqualTo(Planner.plan(inputs, seed, 0).objective());
            assertThat(FixedProjects.end(work, start)).isGreaterThanOrEqualTo(FixedProjects.longestPath(work));
        }
    }

    @Test
    void stages_of_fixed_work_are_weighed() {
        // the heavy stage of 3 days first, then the light one of 4, on one trestle: 9 x 3 + 1 x 7
        ProjectInputs project = project().equipment("trestle", 1);
        project.stage(new Inputs.Stage("light", 0, 1, false, Inputs.Range.EMPTY));
        project.stage(new Inputs.Stage("heavy", 1, 9, false, Inputs.Range.EMPTY));
        project.task("a").stage("light").days(4).needs("trestle", 1);
        project.task("b").stage("heavy").days(3).needs("trestle", 1);
        assertThat(Planner.plan(project.inputs(), 1, 50).objective()).isCloseTo(34, within(1e-9));
    }

    @Test
    void people_come_within_a_hundredth_of_the_best_of_all_orders() {
        int reached = 0;
        for (int seed = 0; seed < 12; seed++) {
            Inputs inputs = people(seed, 6);
            Setup setup = new Setup(inputs);
            Plan plan = Planner.plan(setup, 1, 200);
            double best = bestOfAllOrders(setup, new ArrayList<>());
            assertThat(plan.objective()).as("seed " + seed).isBetween(best - 1e-9, best * 1.01);
            reached += plan.objective() <= best + 1e-9 ? 1 : 0;
        }
        // seeded, so the count is exact
        assertThat(reached).isEqualTo(12);
    }

    @Test
    void passes_better_the_order_of_people_and_the_same_seed_gives_the_same() {
        int better = 0;
        for (int seed = 0; seed < 8; seed++) {
            Inputs inputs = people(seed, 25);
            Plan rules = Planner.plan(inputs, 1, 0);
            Plan searched = Planner.plan(inputs, 1, 150);
            assertThat(searched.objective()).isLessThanOrEqualTo(rules.objective());
            assertThat(searched).isEqualTo(Planner.plan(inputs, 1, 150));
            assertThat(searched.ranks()).containsExactlyInAnyOrderElementsOf(rules.ranks());
            better += searched.objective() < rules.objective() ? 1 : 0;
        }
        assertThat(better).isGreaterThanOrEqualTo(6);
    }

    private static Inputs people(int seed, int tasks) {
        SplittableRandom random = new SplittableRandom(seed);
        ProjectInputs project = project().person("ana", "mason", "joiner").person("ben", "joiner", "smith");
        project.stage(new Inputs.Stage("a", 0, 1, false, Inputs.Range.EMPTY));
        project.stage(new Inputs.Stage("b", 1, 3, false, Inputs.Range.EMPTY));
        project.stage(new Inputs.Stage("c", 2, 2, false, Inputs.Range.EMPTY));
        String[] trades = {"mason", "joiner", "smith"};
        for (int t = 0; t < tasks; t++) {
            ProjectInputs.Task task = project.task("t" + t).stage("abc".charAt(random.nextInt(3)) + "");
            if (random.nextInt(4) == 0) {
                task.days(1 + random.nextInt(9));
            } else {
                int hours = 4 + random.nextInt(40);
                task.hours(hours, hours, hours).trades(trades[random.nextInt(3)]);
            }
            if (t > 0 && random.nextBoolean()) {
                project.link("t" + t, "t" + random.nextInt(t), 1, random.nextInt(3));
            }
        }
        return project.inputs();
    }

    private static double bestOfAllOrders(Setup setup, List<String> order) {
        List<Inputs.Task> tasks = setup.inputs().tasks();
        if (order.size() == tasks.size()) {
            return Planner.follow(setup, new Inputs.Kept(order, List.of())).objective();
        }
        double best = Double.POSITIVE_INFINITY;
        for (Inputs.Task task : tasks) {
            if (!order.contains(task.id())) {
                order.add(task.id());
                best = Math.min(best, bestOfAllOrders(setup, order));
                order.remove(order.size() - 1);
            }
        }
        return best;
    }

    private static int bestOfAllLists(FixedWork work, List<Integer> list, int[] start) {
        int n = work.days().length;
        if (list.size() == n) {
            return FixedProjects.end(work, start);
        }
        int best = Integer.MAX_VALUE;
        for (int t = 0; t < n; t++) {
            if (list.contains(t) || !followed(work, list, t)) {
                continue;
            }
            int day = 0;
            for (int l = 0; l < work.from().length; l++) {
                if (work.to()[l] == t) {
                    int before = work.from()[l];
                    day = Math.max(day, start[before] + work.days()[before] + work.waitDays()[l]);
                }
            }
            while (!fits(work, list, start, t, day)) {
                day++;
            }
            list.add(t);
            start[t] = day;
            best = Math.min(best, bestOfAllLists(work, list, start));
            list.remove(list.size() - 1);
        }
        return best;
    }

    private static boolean followed(FixedWork work, List<Integer> list, int t) {
        for (int l = 0; l < work.from().length; l++) {
            if (work.to()[l] == t && !list.contains(work.from()[l])) {
                return false;
            }
        }
        return true;
    }

    private static boolean fits(FixedWork work, List<Integer> list, int[] start, int t, int from) {
        for (int day = from; day < from + work.days()[t]; day++) {
            int today = day;
            for (int q = 0; q < work.quantity().length; q++) {
                int[] need = work.need()[q];
                int used = list.stream()
                        .filter(k -> start[k] <= today && today < start[k] + work.days()[k])
                        .mapToInt(k -> need[k])
                        .sum();
                if (used + need[t] > work.quantity()[q]) {
                    return false;
                }
            }
        }
        return true;
    }
}
