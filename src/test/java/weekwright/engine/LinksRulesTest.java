package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static weekwright.testkit.ProjectInputs.project;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.Run;

/** Rules 27 to 36: links and waits. */
class LinksRulesTest {
    @Test
    void rule_27_a_share_is_tested_at_the_end_of_each_stretch_of_work() {
        // ana's stretch on Monday ends at hour 8 with eight of ten hours done, so that ben begins on Tuesday
        ProjectInputs project = masonAndSmith().link("b", "a", 0.5, 0);
        project.task("a").exactly(10).trades("mason").task("b").exactly(4).trades("smith");
        Run run = Run.of(project);
        assertThat(run.start("b")).isEqualTo("2027-03-02");
        assertThat(run.landing("a")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_27_a_share_that_monday_does_not_reach_is_reached_on_tuesday() {
        ProjectInputs project = masonAndSmith().link("b", "a", 0.5, 0);
        project.task("a").exactly(18).trades("mason").task("b").exactly(4).trades("smith");
        assertThat(Run.of(project).start("b")).isEqualTo("2027-03-03");
    }

    @Test
    void rule_27_share_0_is_reached_once_the_task_has_begun() {
        ProjectInputs project = masonAndSmith().link("b", "a", 0, 0);
        project.task("a")
                .exactly(80)
                .trades("mason")
                .notBefore("2027-03-03")
                .task("b")
                .exactly(4)
                .trades("smith");
        assertThat(Run.of(project).start("b")).isBetween("2027-03-03", "2027-03-04");
    }

    @Test
    void rule_27_the_share_of_a_pieces_task_is_pieces_done_of_all() {
        ProjectInputs project = masonAndSmith().link("b", "a", 0.5, 0).link("c", "a", 0.51, 0);
        project.task("a")
                .hours(20, 20, 20)
                .pieces(4, 100)
                .trades("mason")
                .logged("2027-02-25", "ana", Inputs.As.HANDS, 3, 2, false);
        project.task("b").exactly(1).trades("smith").task("c").exactly(1).trades("smith");
        Run run = Run.of(project);
        assertThat(run.start("b")).isEqualTo("2027-03-01");
        assertThat(run.start("c")).isGreaterThan("2027-03-01");
    }

    @Test
    void rule_27_the_share_of_a_wait_is_days_gone_of_its_days() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8).link("b", "cure", 0.5, 0);
        project.task("cure").days(10).task("b").exactly(4);
        // the wait begins on the evening of the 1st; five of ten days are gone on the morning of the 6th
        assertThat(Run.of(project).start("b")).isEqualTo("2027-03-06");
    }

    @Test
    void rule_28_without_a_wait_the_successor_may_work_from_that_hour_on() {
        ProjectInputs project = project().person("ana").chain("a", "b");
        project.task("a").exactly(4).task("b").exactly(4);
        assertThat(Run.of(project).landing("b")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_28_a_wait_of_w_days_lets_the_successor_work_from_day_D_plus_w() {
        for (int wait : new int[] {1, 2, 5, 7, 12}) {
            ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8).link("b", "a", 1, wait);
            project.task("a").exactly(4).task("b").exactly(4);
            assertThat(Run.of(project).start("b")).isEqualTo("2027-03-%02d".formatted(1 + wait));
        }
    }

    @Test
    void rule_28_weekends_count_in_a_wait() {
        // five days after Monday is Saturday; ana works again on Monday 8
        ProjectInputs project = project().person("ana").link("b", "a", 1, 5).link("c", "a", 1, 7);
        project.task("a").exactly(4).task("b").exactly(4).task("c").exactly(4);
        Run run = Run.of(project);
        assertThat(run.start("b")).isEqualTo("2027-03-08");
        assertThat(run.start("c")).isEqualTo("2027-03-08");
    }

    @Test
    void rule_29_a_share_reached_in_the_past_counts_from_the_first_date_on_which_the_log_reached_it() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8).link("b", "a", 0.5, 7);
        project.task("a").exactly(16).logged("2027-02-26", "ana", 5).logged("2027-02-27", "ana", 5);
        project.task("b").exactly(4);
        // ten of sixteen hours: half was reached on 27 February, seven days later is 6 March
        assertThat(Run.of(project).start("b")).isEqualTo("2027-03-06");
    }

    @Test
    void rule_29_of_a_done_task_the_share_is_of_its_logged_hours_and_without_a_log_its_done_date() {
        ProjectInputs project = project()
                .person("ana", 8, 8, 8, 8, 8, 8, 8)
                .link("x", "a", 0.5, 7)
                .link("y", "a", 1, 7)
                .link("z", "b", 0.5, 7);
        project.task("a")
                .hours(20, 40, 80)
                .logged("2027-02-24", "ana", 5)
                .logged("2027-02-26", "ana", 5)
                .done("2027-02-27");
        project.task("b").hours(20, 40, 80).done("2027-02-25");
        project.task("x").exactly(1).task("y").exactly(1).task("z").exactly(1);
        Run run = Run.of(project);
        assertThat(run.start("x")).isEqualTo("2027-03-03");
        assertThat(run.start("y")).isEqualTo("2027-03-06");
        assertThat(run.start("z")).isEqualTo("2027-03-04");
    }

    @Test
    void rule_27_and_29_a_share_of_a_wait_that_is_over_was_reached_on_the_first_morning_with_so_many_days_gone() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8).link("b", "cure", 0.33, 18);
        project.task("cure").days(10).started("2027-02-10").done("2027-02-20");
        project.task("b").exactly(4);
        // three of ten days are less than a third; the fourth was gone on 14 February, 18 days later is 4 March
        assertThat(Run.of(project).start("b")).isEqualTo("2027-03-04");
    }

    @Test
    void rule_30_a_wait_under_way_is_told_by_its_start() {
        Run run = Run.of(project().task("cure").days(10).started("2027-02-25").and());
        assertThat(run.landing("cure")).isEqualTo("2027-03-07");
        assertThat(run.start("cure")).isEqualTo("2027-02-25");
    }

    @Test
    void rule_30_an_overdue_wait_ends_tomorrow_at_the_earliest() {
        assertThat(Run.of(project().task("cure").days(10).started("2027-02-01").and())
                        .landing("cure"))
                .isEqualTo("2027-03-02");
        Run spread = Run.of(
                project().task("cure").days(8, 10, 14).started("2027-02-22").and(), 300);
        assertThat(Arrays.stream(spread.outcome().taskLanding[0]).min().orElseThrow())
                .isGreaterThan(spread.inputs().asOf());
    }

    @Test
    void rule_31_a_seven_day_cure_of_mondays_pour_lets_work_go_on_next_monday() {
        ProjectInputs project = project().person("ana").chain("pour", "cure", "strip");
        project.task("pour").exactly(8).task("cure").days(7).task("strip").exactly(8);
        Run run = Run.of(project);
        assertThat(run.start("cure")).isEqualTo("2027-03-01");
        assertThat(run.landing("cure")).isEqualTo("2027-03-08");
        assertThat(run.start("strip")).isEqualTo("2027-03-08");
    }

    @Test
    void rule_31_a_wait_of_no_days_lands_on_the_day_on_which_it_begins() {
        ProjectInputs project = project().person("ana").chain("a", "cure");
        project.task("a").exactly(12).task("cure").days(0);
        assertThat(Run.of(project).landing("cure")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_32_waits_follow_waits_on_the_same_evening() {
        ProjectInputs project = project().chain("a", "b", "c", "d");
        project.task("d").days(3).task("c").days(0).task("b").days(0).task("a").days(0);
        Run run = Run.of(project);
        assertThat(run.landing("c")).isEqualTo("2027-03-01");
        assertThat(run.landing("d")).isEqualTo("2027-03-04");
    }

    @Test
    void rule_32_waits_take_scarce_equipment_in_the_order_of_the_ranks() {
        for (String first : new String[] {"a", "b"}) {
            String second = first.equals("a") ? "b" : "a";
            ProjectInputs project = project().equipment("kiln", 1).ranks(first, second);
            project.task("a").days(5).needs("kiln", 1).task("b").days(5).needs("kiln", 1);
            Run run = Run.of(project);
            assertThat(run.plan().ranks()).containsExactly(first, second);
            assertThat(run.landing(first)).isEqualTo("2027-03-06");
            assertThat(run.landing(second)).isEqualTo("2027-03-11");
        }
    }

    @Test
    void rule_33_materials_and_equipment_count_for_waits() {
        ProjectInputs project = project().cash(10_000, 0).equipment("kiln", 1).material("clay", "a", 1000, 3);
        project.task("a").days(5).needs("kiln", 1);
        Run run = Run.of(project);
        assertThat(run.start("a")).isEqualTo("2027-03-04");
        assertThat(run.landing("a")).isEqualTo("2027-03-09");
    }

    @Test
    void rule_34_a_dropped_task_counts_as_done_on_its_drop_date_for_its_links() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8).link("b", "a", 1, 7);
        project.task("a").hours(20, 40, 80).dropped("2027-02-25").task("b").exactly(4);
        assertThat(Run.of(project).start("b")).isEqualTo("2027-03-04");
    }

    @Test
    void rule_34_a_dropped_task_gives_no_story() {
        ProjectInputs project = project().person("ana");
        project.task("a")
                .hours(8, 8, 8)
                .camera(Inputs.Camera.FIXED, 0)
                .story(10)
                .logged("2027-02-20", "ana", Inputs.As.HANDS, 8, 0, true)
                .dropped("2027-02-25");
        project.task("b").exactly(4);
        assertThat(Run.of(project).bank("2027-03-07")).isZero();
    }

    @Test
    void rule_34_a_dropped_task_orders_nothing_and_is_left_out_of_its_stages_landing() {
        ProjectInputs project = project().person("ana").cash(10_000, 0).material("oak", "a", 2000, 3);
        project.task("a").stage("roof").hours(20, 40, 80).dropped("2027-02-25");
        project.task("b").stage("roof").days(4);
        project.task("c").stage("leat").hours(20, 40, 80).dropped("2027-02-25");
        Run run = Run.of(project);
        assertThat(run.ordered("oak")).isIn("", "later");
        assertThat(run.cash("2028-02-27")).isEqualTo(10_000);
        assertThat(run.stageLanding("roof")).isEqualTo("2027-03-05");
        assertThat(run.stageLanding("leat")).isEmpty();
    }

    @Test
    void rule_35_a_task_with_hours_logged_is_under_way_whatever_its_links_and_materials_say() {
        ProjectInputs project = project().person("ana").link("a", "cure", 1, 0).material("oak", "a", 2000, 30);
        project.task("cure").days(60).task("a").exactly(16).logged("2027-02-26", "ana", 8);
        assertThat(Run.of(project).landing("a")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_35_a_done_task_counts_for_its_successors_whatever_its_predecessors_say() {
        ProjectInputs project = project().person("ana").chain("cure", "a", "b");
        project.task("cure")
                .days(60)
                .task("a")
                .hours(1, 2, 3)
                .done("2027-02-26")
                .task("b")
                .exactly(8);
        assertThat(Run.of(project).start("b")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_36_links_in_a_cycle_are_refused_by_the_names_of_their_tasks() {
        ProjectInputs project =
                project().person("ana").chain("a", "b", "c", "a").chain("a", "d");
        project.task("a")
                .exactly(1)
                .task("b")
                .exactly(1)
                .task("c")
                .exactly(1)
                .task("d")
                .exactly(1);
        assertThatThrownBy(() -> Run.of(project))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("a")
                .hasMessageContaining("b")
                .hasMessageContaining("c");
    }

    private static ProjectInputs masonAndSmith() {
        return project().person("ana", "mason").person("ben", "smith");
    }
}
