package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.ProjectInputs.day;
import static weekwright.testkit.ProjectInputs.month;
import static weekwright.testkit.ProjectInputs.project;

import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.Run;

/** Rules 1 to 10: dates, days, what is known. Monday 2027-03-01 is the as-of day; people work eight hours Monday to Friday. */
class DatesRulesTest {
    @Test
    void rule_1_the_as_of_day_is_the_first_simulated_working_day() {
        Run run = Run.of(project().person("ana").task("a").exactly(8).and());
        assertThat(run.start("a")).isEqualTo("2027-03-01");
        assertThat(run.landing("a")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_1_hours_logged_today_are_taken_off_todays_hours() {
        ProjectInputs project = project().person("ana").workedToday("ana", 3);
        project.task("a").exactly(5);
        assertThat(Run.of(project).landing("a")).isEqualTo("2027-03-01");
        ProjectInputs more = project().person("ana").workedToday("ana", 3.5);
        more.task("a").exactly(5);
        assertThat(Run.of(more).landing("a")).isEqualTo("2027-03-02");
        ProjectInputs over = project().person("ana").workedToday("ana", 9);
        over.task("a").exactly(5);
        assertThat(Run.of(over).start("a")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_1_regular_items_dated_today_are_taken_as_recorded() {
        ProjectInputs project = project().cash(100_000, 0);
        project.regular("rent", -1000, Inputs.Every.WEEK, "2027-02-01", "");
        Run run = Run.of(project);
        // 1 March is a Monday of the series and recorded; 8 March is the first that is simulated
        assertThat(run.cash("2027-03-07")).isEqualTo(100_000);
        assertThat(run.cash("2027-03-14")).isEqualTo(99_000);
    }

    @Test
    void rule_1_todays_slot_stays_open_until_something_is_published_on_it() {
        ProjectInputs open = project().today("2027-03-05").fridays("2027-01-01");
        assertThat(Run.of(open).outcome().slots[0]).isEqualTo(day("2027-03-05"));
        ProjectInputs published =
                project().today("2027-03-05").fridays("2027-01-01").published("e1", "2027-03-05");
        assertThat(Run.of(published).outcome().slots[0]).isEqualTo(day("2027-03-12"));
    }

    @Test
    void rule_1_a_cut_episode_is_published_on_todays_open_slot() {
        ProjectInputs project = project().today("2027-03-05").fridays("2027-01-01");
        project.episode(cut("e1", "2027-03-05", "2027-03-03"));
        assertThat(Run.of(project).slot("2027-03-05")).isEqualTo(Outcome.Slot.OWN);
    }

    @Test
    void rule_1_a_charge_of_today_is_simulated_unless_its_pay_out_is_recorded() {
        ProjectInputs open = project().level("hand", 500, false).supporters("2027-03", "hand", 100, 0, 0);
        assertThat(Run.of(open).cash("2027-03-07")).isEqualTo(50_000);
        ProjectInputs paid = project()
                .level(new Inputs.PledgeLevel("hand", 500, false, 0, 0, 0, 0, true))
                .supporters("2027-03", "hand", 100, 0, 0);
        assertThat(Run.of(paid).cash("2027-03-07")).isZero();
    }

    @Test
    void rule_1_the_charge_of_a_film_published_today_is_simulated_unless_its_pay_out_is_recorded() {
        ProjectInputs open = project().level("film", 500, true).supporters("2027-03", "film", 100, 0, 0);
        assertThat(Run.of(open.published("e1", "2027-03-01")).cash("2027-03-07"))
                .isEqualTo(50_000);
        ProjectInputs paid = project()
                .level(new Inputs.PledgeLevel("film", 500, true, 0, 0, 0, 0, true))
                .supporters("2027-03", "film", 100, 0, 0);
        assertThat(Run.of(paid.published("e1", "2027-03-01")).cash("2027-03-07"))
                .isZero();
    }

    @Test
    void rule_1_orders_may_go_out_today() {
        ProjectInputs project = project().person("ana").cash(10_000, 0).material("oak", "a", 2000, 3);
        project.task("a").exactly(8);
        assertThat(Run.of(project).ordered("oak")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_3_hours_of_a_season_replace_the_weekday_hours_and_the_last_from_wins() {
        ProjectInputs project = project()
                .person("ana")
                .season("ana", "2027-03-02", "2027-12-31", 2)
                .season("ana", "2027-01-01", "2027-12-31", 4);
        project.task("a").exactly(9);
        // Monday 4, Tuesday on 2: 4 + 2 + 2 + 1
        assertThat(Run.of(project).landing("a")).isEqualTo("2027-03-04");
    }

    @Test
    void rule_3_a_days_off_row_replaces_that_persons_hours() {
        ProjectInputs project = project().person("ana").off("ana", "2027-03-01", "2027-03-02", 0);
        project.task("a").exactly(8);
        assertThat(Run.of(project).start("a")).isEqualTo("2027-03-03");
        ProjectInputs less = project().person("ana").off("ana", "2027-03-01", "2027-03-02", 3);
        less.task("a").exactly(8);
        assertThat(Run.of(less).landing("a")).isEqualTo("2027-03-03");
    }

    @Test
    void rule_3_a_row_of_one_day_gives_a_sunday_its_hours_and_a_row_of_more_does_not() {
        ProjectInputs one = project().person("ana").off("ana", "2027-03-07", "2027-03-07", 6);
        one.task("a").exactly(46);
        assertThat(Run.of(one).landing("a")).isEqualTo("2027-03-07");
        ProjectInputs weekend = project().person("ana").off("ana", "2027-03-06", "2027-03-07", 6);
        weekend.task("a").exactly(46);
        assertThat(Run.of(weekend).landing("a")).isEqualTo("2027-03-08");
    }

    @Test
    void rule_3_a_row_without_a_person_is_a_ceiling_for_everyone() {
        ProjectInputs project = project()
                .person("ana", 8, 8, 8, 8, 8, 0, 0, "mason")
                .person("ben", 2, 2, 2, 2, 2, 0, 0, "smith")
                .off("", "2027-03-01", "2027-03-01", 5);
        project.task("a").exactly(6).trades("mason").task("b").exactly(2).trades("smith");
        Run run = Run.of(project);
        assertThat(run.landing("a")).isEqualTo("2027-03-02");
        assertThat(run.landing("b")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_3_among_equal_rows_the_later_in_the_file_wins() {
        ProjectInputs project = project()
                .person("ana")
                .off("ana", "2027-03-01", "2027-03-05", 0)
                .off("ana", "2027-03-01", "2027-03-05", 4);
        project.task("a").exactly(4);
        assertThat(Run.of(project).landing("a")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_4_both_ends_of_from_to_are_included() {
        ProjectInputs two = project().person("ana").between("2027-03-03", "2027-03-04");
        two.task("a").exactly(16);
        assertThat(Run.of(two).start("a")).isEqualTo("2027-03-03");
        assertThat(Run.of(two).landing("a")).isEqualTo("2027-03-04");
        ProjectInputs more = project().person("ana").between("2027-03-03", "2027-03-04");
        more.task("a").exactly(16.5);
        assertThat(Run.of(more).landing("a")).isEqualTo("later");
    }

    @Test
    void rule_5_work_waits_for_its_season_and_stops_when_it_closes() {
        ProjectInputs opens =
                project().person("ana").task("a").exactly(8).season(315, 331).and();
        assertThat(Run.of(opens).start("a")).isEqualTo("2027-03-15");
        // five days from 1 to 5 March, then the next year's first open working day, Wednesday 1 March 2028
        ProjectInputs closes = project()
                .person("ana")
                .horizonMonths(24)
                .task("a")
                .exactly(41)
                .season(301, 305)
                .and();
        assertThat(Run.of(closes).landing("a")).isEqualTo("2028-03-01");
    }

    @Test
    void rule_5_a_season_may_run_across_new_year() {
        ProjectInputs project =
                project().person("ana").task("a").exactly(8).season(1101, 228).and();
        assertThat(Run.of(project).start("a")).isEqualTo("2027-11-01");
        assertThat(Run.of(project.today("2027-01-04")).start("a")).isEqualTo("2027-01-04");
    }

    @Test
    void rule_5_the_29th_of_february_in_a_common_year_opens_on_1_March_and_closes_on_28_February() {
        ProjectInputs opens = project().today("2027-02-22").person("ana", 8, 8, 8, 8, 8, 8, 8);
        opens.task("a").exactly(8).season(229, 331);
        assertThat(Run.of(opens).start("a")).isEqualTo("2027-03-01");
        ProjectInputs closes = project().today("2027-02-25").person("ana", 8, 8, 8, 8, 8, 8, 8);
        closes.task("a").exactly(32).season(101, 229);
        assertThat(Run.of(closes).landing("a")).isEqualTo("2027-02-28");
        ProjectInputs over = project().today("2027-02-25").person("ana", 8, 8, 8, 8, 8, 8, 8);
        over.task("a").exactly(33).season(101, 229);
        assertThat(Run.of(over).landing("a")).isEqualTo("2028-01-01");
    }

    @Test
    void rule_5_a_wait_needs_its_season_on_its_first_day_only() {
        ProjectInputs project = project().task("cure").days(10).season(301, 305).and();
        assertThat(Run.of(project).landing("cure")).isEqualTo("2027-03-11");
        ProjectInputs late = project()
                .today("2027-03-06")
                .task("cure")
                .days(10)
                .season(301, 305)
                .and();
        assertThat(Run.of(late).landing("cure")).isEqualTo("later");
    }

    @Test
    void rule_6_the_horizon_is_so_many_calendar_months_after_the_as_of_day() {
        Run run = Run.of(project()
                .person("ana", 8, 8, 8, 8, 8, 8, 8)
                .task("a")
                .exactly(8)
                .and());
        assertThat(run.outcome().horizon).isEqualTo(day("2028-03-01"));
        assertThat(run.outcome().months[0]).isEqualTo(month("2027-03"));
        assertThat(run.outcome().months[run.outcome().months.length - 1]).isEqualTo(month("2028-02"));
        ProjectInputs last = project()
                .person("ana", 8, 8, 8, 8, 8, 8, 8)
                .task("a")
                .exactly(8)
                .notBefore("2028-02-29")
                .and();
        assertThat(Run.of(last).landing("a")).isEqualTo("2028-02-29");
        ProjectInputs after = project()
                .person("ana", 8, 8, 8, 8, 8, 8, 8)
                .task("a")
                .exactly(8)
                .notBefore("2028-03-01")
                .and();
        assertThat(Run.of(after).landing("a")).isEqualTo("later");
    }

    @Test
    void rule_7_a_percentile_is_an_order_statistic_and_what_has_not_happened_is_later_than_every_date() {
        int[] days = {50, 10, 40, Outcome.LATER, 20, 30, 60, Outcome.LATER, 70, 80};
        assertThat(Outcome.quantile(days, 0.1)).isEqualTo(10);
        assertThat(Outcome.quantile(days, 0.11)).isEqualTo(20);
        assertThat(Outcome.quantile(days, 0.5)).isEqualTo(50);
        assertThat(Outcome.quantile(days, 0.8)).isEqualTo(80);
        assertThat(Outcome.quantile(days, 0.81)).isEqualTo(Outcome.LATER);
        assertThat(Outcome.beyond(days)).isEqualTo(0.2);
        assertThat(Outcome.quantiles(new long[] {3, 1, 2}, 0.1, 0.34, 1)).containsExactly(1, 2, 3);
    }

    @Test
    void rule_7_percentiles_of_all_numbers_of_trials_follow_the_ceiling() {
        for (int n = 1; n <= 60; n++) {
            int[] days = new int[n];
            for (int i = 0; i < n; i++) {
                days[i] = i + 1;
            }
            for (int percent = 1; percent <= 100; percent++) {
                // whole-number ceiling, free of rounding
                int expected = (percent * n + 99) / 100;
                assertThat(Outcome.quantile(days, percent / 100.0)).isEqualTo(expected);
            }
        }
    }

    @Test
    void rule_8_what_arrives_can_be_used_the_same_day() {
        ProjectInputs project = project().person("ana").cash(10_000, 0).material("oak", "a", 2000, 2);
        project.task("a").exactly(8);
        Run run = Run.of(project);
        assertThat(run.ordered("oak")).isEqualTo("2027-03-01");
        assertThat(run.start("a")).isEqualTo("2027-03-03");
    }

    @Test
    void rule_8_money_that_came_in_can_be_spent_on_orders_the_same_day() {
        ProjectInputs project = project().person("ana").orders(14, 0).material("oak", "a", 2000, 0);
        project.regular("gift", 2000, Inputs.Every.YEAR, "2027-03-04", "");
        project.task("a").exactly(8);
        Run run = Run.of(project);
        assertThat(run.ordered("oak")).isEqualTo("2027-03-04");
    }

    @Test
    void rule_8_on_the_1st_supporters_change_before_they_are_charged() {
        // everyone leaves in March: nobody is charged on 1 April
        ProjectInputs project =
                project().today("2027-03-31").level("hand", 500, false).supporters("2027-03", "hand", 100, 0, 100);
        assertThat(Run.of(project).cash("2027-04-04")).isLessThan(500 * 5);
    }

    static Inputs.Episode cut(String id, String slot, String cutOn) {
        return new Inputs.Episode(
                id,
                slot.isEmpty() ? Inputs.EpisodeKind.STANDBY : Inputs.EpisodeKind.BUILD,
                day(slot),
                Inputs.Range.of(600),
                "",
                0,
                day(cutOn),
                day(cutOn),
                Inputs.NONE,
                List.of());
    }
}
