package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.ProjectInputs.day;
import static weekwright.testkit.ProjectInputs.project;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.Run;

/** Rules 56 to 64: materials and orders. */
class OrdersRulesTest {
    @Test
    void rule_56_the_order_day_is_the_planned_start_less_the_likely_lead_less_the_margin() {
        ProjectInputs project =
                project().person("ana", 8, 8, 8, 8, 8, 8, 8).cash(10_000, 0).chain("cure", "a");
        project.task("cure").days(100).task("a").exactly(8);
        project.material("oak", "a", 2000, 30);
        // 1 March + 100 days is 9 June; 44 days before it is 26 April
        Run run = Run.of(project);
        assertThat(run.plannedStart("a")).isEqualTo("2027-06-09");
        assertThat(run.ordered("oak")).isEqualTo("2027-04-26");
        assertThat(run.start("a")).isEqualTo("2027-06-09");
    }

    @Test
    void rule_56_order_days_follow_the_trial_when_the_work_before_is_late() {
        ProjectInputs project = project()
                .horizonMonths(24)
                .person("ana", 8, 8, 8, 8, 8, 8, 8)
                .cash(10_000, 0)
                .chain("a", "b");
        project.task("a").hours(200, 400, 1200).task("b").exactly(8);
        project.material("oak", "b", 2000, 10);
        int trials = 400;
        Run run = Run.of(project, trials);
        int[] landing = run.outcome().taskLanding[0];
        int[] ordered = run.outcome().orderDay[0];
        int middle = Outcome.quantile(landing, 0.5);
        double early = Arrays.stream(indices(trials))
                .filter(i -> landing[i] < middle)
                .map(i -> ordered[i])
                .average()
                .orElseThrow();
        double late = Arrays.stream(indices(trials))
                .filter(i -> landing[i] > middle)
                .map(i -> ordered[i])
                .average()
                .orElseThrow();
        assertThat(late).isGreaterThan(early + 5);
    }

    @Test
    void rule_56_once_a_week_the_drift_of_a_task_is_carried_along_its_links_to_later_orders() {
        // planned: a today, the cure to 30 April, b then, so iron is to be asked for on 17 March. But a waits for money
        // until
        // 1 April, a month and a day: the cure ends on 31 May, and iron's day is 44 days before it
        ProjectInputs project =
                project().person("ana", 8, 8, 8, 8, 8, 8, 8).cash(0, 0).chain("a", "cure", "b");
        project.task("a").exactly(8).task("cure").days(60).task("b").exactly(8);
        project.material("oak", "a", 5000, 0);
        project.material(new Inputs.Material(
                "iron",
                "b",
                "",
                1,
                0,
                Inputs.Range.ZERO,
                Inputs.Source.GIVEN,
                0,
                Inputs.Range.of(30),
                0,
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                0,
                ""));
        project.regular("gift", 5000, Inputs.Every.YEAR, "2027-04-01", "");
        Run run = Run.of(project);
        assertThat(run.plannedStart("b")).isEqualTo("2027-04-30");
        assertThat(run.landing("a")).isEqualTo("2027-04-01");
        assertThat(run.ordered("iron")).isEqualTo("2027-04-17");
        assertThat(run.start("b")).isEqualTo("2027-05-31");
    }

    @Test
    void rule_57_an_order_day_that_is_past_is_today_and_the_margin_is_a_setting() {
        ProjectInputs past = project().person("ana").cash(10_000, 0);
        past.task("a").exactly(8);
        past.material("oak", "a", 2000, 30);
        assertThat(Run.of(past).ordered("oak")).isEqualTo("2027-03-01");
        ProjectInputs none = project()
                .cash(10_000, 0)
                .person("ana", 8, 8, 8, 8, 8, 8, 8)
                .chain("cure", "a")
                .orders(0, 0);
        none.task("cure").days(100).task("a").exactly(8);
        none.material("oak", "a", 2000, 30);
        assertThat(Run.of(none).ordered("oak")).isEqualTo("2027-05-10");
    }

    @Test
    void rule_58_an_order_goes_out_when_cash_less_its_whole_cost_stays_at_the_reserve() {
        ProjectInputs enough = oneLine().cash(1500, 500);
        enough.material(ProjectInputs.line("oak", "a", 1000, 5, 50));
        assertThat(Run.of(enough).ordered("oak")).isEqualTo("2027-03-01");
        ProjectInputs short1 = oneLine().cash(1499, 500);
        short1.material(ProjectInputs.line("oak", "a", 1000, 5, 50));
        assertThat(Run.of(short1).ordered("oak")).isEqualTo("later");
        assertThat(Run.of(short1).landing("a")).isEqualTo("later");
    }

    @Test
    void rule_58_balances_still_owed_count_as_spent() {
        // the first pays 10 % down and owes 900 for 300 days; the second is not covered by that money
        ProjectInputs project = oneLine().cash(2499, 500).orders(14, 0);
        project.task("b").exactly(8);
        project.material(ProjectInputs.line("oak", "a", 1000, 300, 10));
        project.material(ProjectInputs.line("iron", "b", 1000, 5, 10));
        Run run = Run.of(project);
        assertThat(Arrays.asList(run.ordered("oak"), run.ordered("iron")))
                .containsExactlyInAnyOrder("2027-03-01", "later");
        ProjectInputs both = oneLine().cash(2500, 500).orders(14, 0);
        both.task("b").exactly(8);
        both.material(ProjectInputs.line("oak", "a", 1000, 300, 10));
        both.material(ProjectInputs.line("iron", "b", 1000, 5, 10));
        assertThat(Run.of(both).ordered("oak")).isEqualTo("2027-03-01");
        assertThat(Run.of(both).ordered("iron")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_59_an_order_that_waits_for_funds_holds_back_later_ones_but_small_ones_pass() {
        // three waits that could begin today: equal order days and planned starts, so the order of the file decides
        ProjectInputs project = project().cash(1000, 0).orders(14, 100);
        project.task("a").days(1).task("b").days(1).task("c").days(1);
        project.material("oak", "a", 5000, 30);
        project.material("iron", "b", 101, 30);
        project.material("nails", "c", 100, 30);
        Run run = Run.of(project);
        assertThat(run.ordered("oak")).isEqualTo("later");
        assertThat(run.ordered("iron")).isEqualTo("later");
        assertThat(run.ordered("nails")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_59_orders_are_looked_at_by_their_order_day() {
        ProjectInputs project =
                oneLine().person("ben").cash(1000, 0).orders(14, 0).chain("cure", "b");
        project.task("b").exactly(8).task("cure").days(60);
        // the money is enough for one; oak is listed last but its day comes first
        project.material("iron", "b", 800, 10);
        project.material("oak", "a", 800, 10);
        Run run = Run.of(project);
        assertThat(run.ordered("oak")).isEqualTo("2027-03-01");
        assertThat(run.ordered("iron")).isEqualTo("later");
    }

    @Test
    void rule_60_the_balance_is_paid_on_arrival_even_when_the_money_is_short() {
        ProjectInputs project = oneLine().cash(1000, 0);
        project.material(ProjectInputs.line("oak", "a", 1000, 10, 20));
        project.regular("rent", -700, Inputs.Every.YEAR, "2027-03-05", "");
        Run run = Run.of(project);
        assertThat(run.cash("2027-03-07")).isEqualTo(1000 - 200 - 700);
        assertThat(run.cash("2027-03-14")).isEqualTo(1000 - 200 - 700 - 800);
        assertThat(run.start("a")).isEqualTo("2027-03-11");
    }

    @Test
    void rule_61_a_line_costs_its_quantity_with_waste_times_its_price() {
        ProjectInputs project = oneLine().cash(100_000, 0);
        project.material(new Inputs.Material(
                "oak",
                "a",
                "",
                3,
                15,
                Inputs.Range.of(1010),
                Inputs.Source.BOUGHT,
                0,
                Inputs.Range.of(3),
                30,
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                0,
                ""));
        Run run = Run.of(project);
        // 3 x 1.15 x 10.10 = 34.845, so 34.85; 30 % down is 10.455, so 10.46; the rest 24.39 on arrival
        assertThat(run.cash("2027-03-07")).isEqualTo(100_000 - 3485);
        ProjectInputs down = oneLine().cash(100_000, 0);
        down.material(ProjectInputs.line("oak", "a", 3485, 30, 30));
        assertThat(Run.of(down).cash("2027-03-07")).isEqualTo(100_000 - 1046);
    }

    @Test
    void rule_62_of_an_order_out_the_rest_is_paid_on_arrival_by_its_promise() {
        ProjectInputs project = oneLine().cash(10_000, 0);
        project.material(ordered("oak", 10, "2027-02-20", "2027-03-10", "", 300));
        Run run = Run.of(project);
        assertThat(run.start("a")).isEqualTo("2027-03-10");
        assertThat(run.cash("2027-03-07")).isEqualTo(10_000);
        assertThat(run.cash("2027-03-14")).isEqualTo(10_000 - 700);
    }

    @Test
    void rule_62_without_a_promise_by_its_lead_and_overdue_tomorrow_at_the_earliest() {
        ProjectInputs lead = oneLine().cash(10_000, 0);
        lead.material(ordered("oak", 12, "2027-02-20", "", "", 0));
        assertThat(Run.of(lead).start("a")).isEqualTo("2027-03-04");
        ProjectInputs overdue = oneLine().cash(10_000, 0);
        overdue.material(ordered("oak", 12, "2027-01-04", "", "", 0));
        assertThat(Run.of(overdue).start("a")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_62_what_is_received_is_there_and_what_is_overpaid_costs_nothing_more() {
        ProjectInputs there = oneLine().cash(10_000, 0);
        there.material(ordered("oak", 12, "2027-01-04", "", "2027-02-10", 400));
        assertThat(Run.of(there).start("a")).isEqualTo("2027-03-01");
        assertThat(Run.of(there).cash("2028-02-27")).isEqualTo(10_000);
        ProjectInputs overpaid = oneLine().cash(10_000, 0);
        overpaid.material(ordered("oak", 12, "2027-01-04", "", "", 1400));
        assertThat(Run.of(overpaid).cash("2028-02-27")).isEqualTo(10_000);
    }

    @Test
    void rule_63_what_is_given_is_asked_for_like_an_order_and_costs_nothing() {
        ProjectInputs project = oneLine().cash(0, 500);
        project.material(line("oak", Inputs.Source.GIVEN, 0, 9));
        Run run = Run.of(project);
        assertThat(run.ordered("oak")).isEqualTo("2027-03-01");
        assertThat(run.start("a")).isEqualTo("2027-03-10");
        assertThat(run.cash("2028-02-27")).isZero();
    }

    @Test
    void rule_63_own_stock_without_a_lead_is_there_from_the_start() {
        ProjectInputs project = oneLine();
        project.material(line("oak", Inputs.Source.OWN, 0, 0));
        assertThat(Run.of(project).start("a")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_63_an_empty_lead_is_no_days() {
        ProjectInputs project = oneLine().cash(10_000, 0);
        project.material("oak", "a", 1000, 0);
        assertThat(Run.of(project).start("a")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_64_a_task_starts_when_all_its_lines_are_there() {
        ProjectInputs project = oneLine().cash(10_000, 0);
        project.material("oak", "a", 1000, 3);
        project.material("iron", "a", 1000, 7);
        assertThat(Run.of(project).start("a")).isEqualTo("2027-03-08");
    }

    private static int[] indices(int count) {
        int[] all = new int[count];
        Arrays.setAll(all, i -> i);
        return all;
    }

    /** Task a of eight hours and ana every day of the week. */
    private static ProjectInputs oneLine() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8);
        project.task("a").exactly(8);
        return project;
    }

    private static Inputs.Material line(String id, Inputs.Source source, long price, double lead) {
        return new Inputs.Material(
                id,
                "a",
                "",
                1,
                0,
                Inputs.Range.of(price),
                source,
                0,
                Inputs.Range.of(lead),
                0,
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                0,
                "");
    }

    private static Inputs.Material ordered(
            String id, double lead, String ordered, String promised, String received, long paid) {
        return new Inputs.Material(
                id,
                "a",
                "",
                1,
                0,
                Inputs.Range.of(1000),
                Inputs.Source.BOUGHT,
                0,
                Inputs.Range.of(lead),
                0,
                day(ordered),
                day(promised),
                day(received),
                paid,
                "");
    }
}
