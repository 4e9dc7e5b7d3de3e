package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.testkit.ProjectInputs.day;
import static weekwright.testkit.ProjectInputs.project;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.Run;

/** Rules 76 to 92: money on simulated days. The as-of day is Monday 2027-03-01; weeks are asked by their Sundays. */
class MoneyRulesTest {
    @Test
    void rule_76_and_83_the_monthly_charge_is_net_of_declined_and_fees_and_comes_after_the_delay() {
        ProjectInputs project = project()
                .level(new Inputs.PledgeLevel("hand", 500, false, 6, 25, 3, 9, false))
                .supporters("2027-03", "hand", 200, 0, 0);
        Run run = Run.of(project);
        // 200 (1 - .03) (5.00 (1 - .06) - .25) = 863.30 on 10 March
        assertThat(run.cash("2027-03-07")).isZero();
        assertThat(run.cash("2027-03-14")).isEqualTo(86_330);
    }

    @Test
    void rule_76_a_level_per_episode_charges_at_each_publication_the_number_of_the_1st() {
        ProjectInputs project = project()
                .today("2027-03-02")
                .fridays("2027-03-05")
                .level("film", 300, true)
                .supporters("2027-03", "film", 50, 7, 0);
        project.episode(DatesRulesTest.cut("e1", "2027-03-05", "2027-02-20"));
        project.episode(DatesRulesTest.cut("e2", "2027-03-12", "2027-02-20"));
        Run run = Run.of(project);
        assertThat(run.cash("2027-03-07")).isEqualTo(15_000);
        assertThat(run.cash("2027-03-14")).isEqualTo(30_000);
        assertThat(run.cash("2027-03-28")).isEqualTo(30_000);
    }

    @Test
    void rule_82_only_the_first_publications_of_a_month_are_charged() {
        ProjectInputs project =
                project().today("2027-03-02").level("film", 300, true).supporters("2027-03", "film", 50, 0, 0);
        limit(project, 2);
        for (int i = 0; i < 3; i++) {
            project.episode(
                    DatesRulesTest.cut("e" + i, "2027-03-" + (i == 0 ? "05" : i == 1 ? "12" : "19"), "2027-02-20"));
        }
        Run run = Run.of(project);
        assertThat(run.cash("2027-03-14")).isEqualTo(30_000);
        assertThat(run.cash("2027-03-21")).isEqualTo(30_000);
    }

    @Test
    void rule_82_those_published_earlier_in_the_as_of_month_count() {
        ProjectInputs project =
                project().today("2027-03-08").level("film", 300, true).supporters("2027-03", "film", 50, 0, 0);
        limit(project, 2);
        project.published("e0", "2027-03-05");
        project.episode(DatesRulesTest.cut("e1", "2027-03-12", "2027-02-20"));
        project.episode(DatesRulesTest.cut("e2", "2027-03-19", "2027-02-20"));
        Run run = Run.of(project);
        assertThat(run.cash("2027-03-14")).isEqualTo(15_000);
        assertThat(run.cash("2027-03-28")).isEqualTo(15_000);
    }

    @Test
    void rule_86_other_income_and_costs_are_booked_on_the_15th() {
        ProjectInputs project = project().cash(1000, 0).otherMonths(-300L, -300L);
        Run run = Run.of(project);
        assertThat(run.cash("2027-03-14")).isEqualTo(1000);
        assertThat(run.cash("2027-03-21")).isEqualTo(700);
        // 15 March to 15 February: twelve times
        assertThat(run.cash("2028-02-27")).isEqualTo(1000 - 12 * 300);
    }

    @Test
    void rule_86_each_month_of_the_record_is_as_likely() {
        ProjectInputs project = project().horizonMonths(1).otherMonths(-100L, 0L, 0L, 700L);
        int trials = 4000;
        Run run = Run.of(project, trials);
        long[] cash = run.outcome().held.cash[run.week("2027-03-21")];
        double room = 4 * Math.sqrt(0.25 / trials);
        assertThat(Arrays.stream(cash).filter(c -> c == -100).count() / (double) trials)
                .isCloseTo(0.25, within(room));
        assertThat(Arrays.stream(cash).filter(c -> c == 0).count() / (double) trials)
                .isCloseTo(0.5, within(room));
        assertThat(Arrays.stream(cash).filter(c -> c == 700).count() / (double) trials)
                .isCloseTo(0.25, within(room));
    }

    @Test
    void rule_87_regular_items_fall_due_weekly_monthly_and_yearly_from_their_first_day_to_their_last() {
        ProjectInputs month =
                project().cash(1000, 0).regular("rent", -10, Inputs.Every.MONTH, "2027-01-31", "2027-05-31");
        Run monthly = Run.of(month);
        // the last day of short months: 31 March, 30 April, 31 May
        assertThat(monthly.cash("2027-03-28")).isEqualTo(1000);
        assertThat(monthly.cash("2027-04-04")).isEqualTo(990);
        assertThat(monthly.cash("2027-05-02")).isEqualTo(980);
        assertThat(monthly.cash("2027-06-06")).isEqualTo(970);
        assertThat(monthly.cash("2028-02-27")).isEqualTo(970);
        ProjectInputs week =
                project().cash(1000, 0).regular("bread", -10, Inputs.Every.WEEK, "2027-03-03", "2027-03-17");
        Run weekly = Run.of(week);
        assertThat(weekly.cash("2027-03-07")).isEqualTo(990);
        assertThat(weekly.cash("2027-03-28")).isEqualTo(970);
        ProjectInputs year =
                project().horizonMonths(36).cash(1000, 0).regular("tax", -10, Inputs.Every.YEAR, "2020-06-01", "");
        Run yearly = Run.of(year);
        assertThat(yearly.cash("2027-06-06")).isEqualTo(990);
        assertThat(yearly.cash("2030-02-24")).isEqualTo(970);
    }

    @Test
    void rule_87_an_item_per_episode_falls_due_at_each_publication() {
        ProjectInputs project =
                project().cash(1000, 0).fridays("2027-03-05").regular("music", -30, Inputs.Every.EPISODE, "", "");
        project.episode(DatesRulesTest.cut("e1", "2027-03-05", "2027-02-20"));
        project.episode(DatesRulesTest.cut("e2", "2027-03-12", "2027-02-20"));
        Run run = Run.of(project);
        assertThat(run.cash("2027-03-07")).isEqualTo(970);
        assertThat(run.cash("2027-03-28")).isEqualTo(940);
    }

    @Test
    void rule_87_the_spread_is_a_standard_deviation_in_percent() {
        ProjectInputs project = project().horizonMonths(1);
        project.regular(new Inputs.Regular("fuel", -10_000, 20, Inputs.Every.YEAR, day("2027-03-05"), Inputs.NONE));
        int trials = 4000;
        Run run = Run.of(project, trials);
        long[] cash = run.outcome().held.cash[run.week("2027-03-07")];
        double mean = Arrays.stream(cash).average().orElseThrow();
        double deviation = Math.sqrt(
                Arrays.stream(cash).mapToDouble(c -> (c - mean) * (c - mean)).sum() / trials);
        assertThat(mean).isCloseTo(-10_000, within(4 * 2000 / Math.sqrt(trials)));
        assertThat(deviation).isCloseTo(2000, within(4 * 2000 / Math.sqrt(2.0 * trials)));
    }

    @Test
    void rule_88_wages_are_pay_times_hours_worked_booked_the_next_morning() {
        ProjectInputs project =
                project().cash(100_000, 0).person("ana", 0, 0, 0, 0, 0, 6, 6).paid(2000);
        project.task("a").exactly(10);
        Run run = Run.of(project);
        // six hours on Saturday are booked on Sunday, four of Sunday on Monday
        assertThat(run.cash("2027-03-07")).isEqualTo(100_000 - 6 * 2000);
        assertThat(run.cash("2027-03-14")).isEqualTo(100_000 - 10 * 2000);
        assertThat(run.outcome().workFirst.cash[run.week("2027-03-14")][0]).isEqualTo(100_000 - 10 * 2000);
    }

    @Test
    void rule_88_hours_logged_on_the_as_of_day_are_booked_the_next_morning_with_what_is_still_worked_on_it() {
        ProjectInputs project = project()
                .today("2027-03-06")
                .cash(100_000, 0)
                .person("ana", 0, 0, 0, 0, 0, 6, 0)
                .paid(2000)
                .workedToday("ana", 2);
        project.regular("rent", -1, Inputs.Every.YEAR, "2027-03-06", "");
        Run run = Run.of(project);
        // nobody works any more: two hours of Saturday morning, paid on Sunday
        assertThat(run.cash("2027-03-07")).isEqualTo(100_000 - 2 * 2000);
        project.task("a").exactly(10);
        // four hours more on Saturday, and the last six a week later
        Run more = Run.of(project);
        assertThat(more.cash("2027-03-07")).isEqualTo(100_000 - 6 * 2000);
        assertThat(more.cash("2027-03-14")).isEqualTo(100_000 - 12 * 2000);
    }

    @Test
    void rule_88_hours_with_the_camera_and_at_the_edit_are_paid_too() {
        ProjectInputs project = project()
                .cash(1_000_000, 0)
                .person("ana", "mason")
                .paid(1000)
                .person("ben", "camera", "edit")
                .paid(100_0)
                .fridays("2027-03-12");
        project.task("a").exactly(8).trades("mason").camera(Inputs.Camera.OPERATOR, 50);
        project.episode("e1", "2027-03-12", 3);
        // eight hours of hands, four with the camera, three of editing
        assertThat(Run.of(project).cash("2027-03-07")).isEqualTo(1_000_000 - 15 * 1000);
    }

    @Test
    void rule_89_work_first_sends_orders_whatever_the_balance_and_held_for_funds_waits() {
        ProjectInputs project =
                project().person("ana", 8, 8, 8, 8, 8, 8, 8).cash(0, 0).material("oak", "a", 5000, 3);
        project.task("a").exactly(8);
        project.regular("gift", 5000, Inputs.Every.YEAR, "2027-04-01", "");
        Run run = Run.of(project);
        int stage = run.stage("of-a");
        assertThat(Run.text(run.outcome().workFirst.stageLanding[stage][0])).isEqualTo("2027-03-04");
        assertThat(run.landing("a")).isEqualTo("2027-04-04");
        assertThat(Run.text(run.outcome().held.stageLanding[stage][0])).isEqualTo("2027-04-04");
        // work first goes under zero in March, held for funds never does
        assertThat(run.outcome().workFirst.underZero[0][0]).isTrue();
        assertThat(run.outcome().held.underZero[0][0]).isFalse();
        assertThat(Run.text(run.outcome().workFirst.firstUnderZero[0])).isEqualTo("2027-03-04");
        assertThat(run.outcome().held.firstUnderZero[0]).isEqualTo(Outcome.LATER);
    }

    @Test
    void rule_90_weeks_are_sundays_and_a_month_is_under_if_any_of_its_days_ends_under() {
        ProjectInputs project = project().cash(100, 50);
        project.regular("out", -80, Inputs.Every.YEAR, "2027-05-03", "");
        project.regular("in", 1000, Inputs.Every.YEAR, "2027-05-05", "");
        Run run = Run.of(project);
        assertThat(Run.text(run.outcome().weeks[0])).isEqualTo("2027-03-07");
        assertThat(Run.text(run.outcome().weeks[1])).isEqualTo("2027-03-14");
        for (int month = 0; month < 12; month++) {
            assertThat(run.outcome().workFirst.underReserve[month][0]).isEqualTo(month == 2);
            assertThat(run.outcome().workFirst.underZero[month][0]).isFalse();
        }
        assertThat(Run.text(run.outcome().workFirst.firstUnderReserve[0])).isEqualTo("2027-05-03");
    }

    @Test
    void rule_90_the_as_of_day_counts_where_nothing_is_left_to_build_and_nothing_moves_on_it() {
        Run run = Run.of(project().today("2027-03-02").cash(-100, 50));
        assertThat(Run.text(run.outcome().workFirst.firstUnderReserve[0])).isEqualTo("2027-03-02");
        assertThat(Run.text(run.outcome().held.firstUnderZero[0])).isEqualTo("2027-03-02");
    }

    @Test
    void rule_135_what_is_put_by_for_tax_is_never_theirs_and_goes_out_at_the_end_of_the_tax_month() {
        ProjectInputs project = project()
                .cash(10_000, 0)
                .putBy(1_500, 20, 5)
                .level("friend", 1_000, false)
                .supporters("2027-03", "friend", 10, 0, 0);
        Run run = Run.of(project);
        // 100.00 in the bank, 15.00 of it put by; on the as-of 1 March 10 supporters pay 100.00, of which 20 % are put
        // by
        assertThat(run.cash("2027-03-07")).isEqualTo(10_000 - 1_500 + 8_000);
        assertThat(putBy(run, "2027-03-07")).isEqualTo(1_500 + 2_000);
        // who stays is drawn: what is theirs and what is put by grow four to one
        long theirs = run.cash("2027-05-30");
        assertThat(4 * (putBy(run, "2027-05-30") - 1_500)).isEqualTo(theirs - 8_500);
        // from 1 June nothing of before is left; what June brought is put by again
        long june = run.cash("2027-06-06") - theirs;
        assertThat(june).isPositive();
        assertThat(4 * putBy(run, "2027-06-06")).isEqualTo(june);
    }

    /** 10.00 from each, no fee, paid out on the day: what comes in is ten times who is there on the 1st, worked by hand. */
    @Test
    void who_is_there_on_the_first_and_what_is_paid_out_is_recorded_by_month() {
        ProjectInputs project = project()
                .cash(10_000, 0)
                .putBy(1_500, 20, 5)
                .level("friend", 1_000, false)
                .supporters("2027-03", "friend", 10, 0, 0);
        Outcome outcome = Run.of(project).outcome();
        assertThat(outcome.supporters[0]).containsOnly(10);
        for (int month = 0; month < outcome.months.length; month++) {
            for (int trial = 0; trial < outcome.trials; trial++) {
                assertThat(outcome.paidOut[month][trial]).isEqualTo(1_000L * outcome.supporters[month][trial]);
            }
        }
        assertThat(Arrays.stream(outcome.supporters)
                        .mapToInt(month -> month[0])
                        .distinct()
                        .count())
                .isGreaterThan(1);
    }

    private static long putBy(Run run, String sunday) {
        return run.outcome().putBy[run.week(sunday)][0];
    }

    @Test
    void rule_135_a_pay_out_share_is_rounded_half_up() {
        // 2.5 % of 5.00, 4.98 and 5.40: 12.5, 12.45 and 13.5
        Inputs.PutBy putBy = new Inputs.PutBy(0, 2.5, 0);
        assertThat(List.of(putBy.of(500), putBy.of(498), putBy.of(540))).containsExactly(13L, 12L, 14L);
        assertThat(Inputs.PutBy.NOTHING.of(100_000)).isZero();
    }

    @Test
    void rule_135_an_order_waits_for_money_that_is_theirs_and_cover_counts_only_that() {
        ProjectInputs all = project().person("ana").cash(6_000, 1_000).material("oak", "a", 5_000, 3);
        all.task("a").exactly(8);
        Run run = Run.of(all);
        assertThat(Run.text(run.outcome().orderDay[0][0])).isEqualTo("2027-03-01");
        assertThat(run.outcome().stageShort[0][0]).isZero();
        // a cent of it put by: 59.99 - 50.00 is under the reserve of 10.00, until 0.01 comes in on 10 March
        ProjectInputs less =
                project().person("ana").cash(6_000, 1_000).putBy(1, 0, 0).material("oak", "a", 5_000, 3);
        less.task("a").exactly(8);
        less.regular("gift", 1, Inputs.Every.YEAR, "2027-03-10", "");
        Run waits = Run.of(less);
        assertThat(Run.text(waits.outcome().orderDay[0][0])).isEqualTo("2027-03-10");
        assertThat(waits.outcome().stageShort[0][0]).isEqualTo(1);
        assertThat(waits.outcome().stageCovered[0][waits.week("2027-03-07")]).isZero();
        assertThat(waits.outcome().stageCovered[0][waits.week("2027-03-14")]).isEqualTo(1);
    }

    @Test
    void rule_135_the_money_lasts_as_long_as_what_is_theirs() {
        ProjectInputs project =
                project().cash(1_000, 0).putBy(400, 0, 0).regular("rent", -100, Inputs.Every.WEEK, "2027-03-02", "");
        Run run = Run.of(project);
        // 6.00 are theirs: gone after six rents, under zero with the seventh, on 13 April
        assertThat(Run.text(run.outcome().workFirst.firstUnderZero[0])).isEqualTo("2027-04-13");
        assertThat(Run.text(run.outcome().firstUnderWithoutPledges[0])).isEqualTo("2027-04-13");
    }

    @Test
    void rule_136_a_line_from_the_yard_costs_nothing_and_is_there_when_it_is_dry() {
        ProjectInputs project = project().person("ana").cash(0, 0);
        project.task("a").exactly(8);
        // laid down on 1 January, dry after 80 days: on 22 March
        project.material(new Inputs.Material(
                "oak",
                "a",
                "",
                3,
                0,
                Inputs.Range.ZERO,
                Inputs.Source.OWN,
                0,
                Inputs.Range.of(80),
                0,
                day("2027-01-01"),
                Inputs.NONE,
                Inputs.NONE,
                0,
                ""));
        Run run = Run.of(project);
        assertThat(Run.text(run.outcome().taskStart[0][0])).isEqualTo("2027-03-22");
        assertThat(run.outcome().stageNeed[0]).isZero();
        assertThat(run.cash("2027-03-28")).isZero();
        assertThat(run.outcome().stageShort[0][0]).isZero();
    }

    @Test
    void rule_91_a_stages_need_is_what_is_left_to_pay_for_its_lines() {
        ProjectInputs project = project().person("ana").cash(100_000, 0);
        project.task("a").exactly(8).task("b").exactly(8);
        project.material(ProjectInputs.line("oak", "a", 5000, 3, 0));
        project.material(new Inputs.Material(
                "iron",
                "a",
                "",
                2,
                0,
                ProjectInputs.range(100, 400, 1000),
                Inputs.Source.BOUGHT,
                0,
                Inputs.Range.of(3),
                0,
                day("2027-02-20"),
                Inputs.NONE,
                Inputs.NONE,
                250,
                ""));
        Run run = Run.of(project);
        // iron: 2 x (100 + 1600 + 1000) / 6 = 900, of which 250 are paid
        assertThat(run.outcome().stageNeed[run.stage("of-a")]).isEqualTo(5650);
        assertThat(run.outcome().stageNeed[run.stage("of-b")]).isZero();
    }

    @Test
    void rule_91_the_shortfall_is_the_deepest_gap_under_the_reserve_on_days_on_which_a_line_was_paid() {
        ProjectInputs project = project().person("ana").cash(3000, 1000).material("oak", "a", 5000, 3);
        project.task("a").exactly(8);
        Run run = Run.of(project);
        // work first: 3000 - 5000 against a reserve of 1000
        assertThat(run.outcome().stageShort[run.stage("of-a")][0]).isEqualTo(3000);
        ProjectInputs covered = project().person("ana").cash(6000, 1000).material("oak", "a", 5000, 3);
        covered.task("a").exactly(8);
        assertThat(Run.of(covered).outcome().stageShort[0][0]).isZero();
    }

    @Test
    void rule_91_covered_from_counts_trials_whose_cash_without_the_stage_would_keep_the_reserve() {
        ProjectInputs project = project().person("ana").cash(3000, 1000).material("oak", "a", 5000, 3);
        project.task("a").exactly(8);
        project.regular("gift", 3000, Inputs.Every.YEAR, "2027-03-10", "");
        Run run = Run.of(project);
        int stage = run.stage("of-a");
        assertThat(run.outcome().stageCovered[stage][run.week("2027-03-07")]).isZero();
        assertThat(run.outcome().stageCovered[stage][run.week("2027-03-14")]).isEqualTo(1);
        assertThat(run.outcome().stageCovered[stage][run.week("2028-02-27")]).isEqualTo(1);
    }

    @Test
    void rule_92_the_need_day_is_the_day_on_which_the_task_would_have_begun_but_for_its_lines() {
        ProjectInputs project =
                project().person("ana").cash(100_000, 0).chain("cure", "a").material("oak", "a", 5000, 60);
        project.task("cure").days(7).task("a").exactly(8);
        Run run = Run.of(project);
        assertThat(Run.text(run.outcome().needDay[0][0])).isEqualTo("2027-03-08");
        assertThat(run.start("a")).isEqualTo("2027-04-30");
    }

    private static void limit(ProjectInputs project, int chargesAMonth) {
        Inputs.Publishing p = project.publishing();
        project.publishing(new Inputs.Publishing(
                5, day("2027-03-05"), 1, 20, 1, 14, p.editMinutes(), chargesAMonth, 1, List.of(), List.of(), 3, 0));
    }
}
