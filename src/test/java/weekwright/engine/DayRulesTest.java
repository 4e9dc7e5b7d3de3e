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

/** Rules 37 to 51: a day's work. Who worked is read from the wages: ana costs 1 an hour, ben 100, cleo 10,000. */
class DayRulesTest {
    private static final long CASH = 100_000_000;

    @Test
    void rule_37_work_freed_at_hour_e_gets_at_most_what_is_left_of_the_day() {
        ProjectInputs two = anaAndBen().chain("a", "b");
        two.task("a").exactly(6).trades("mason").task("b").exactly(2).trades("smith");
        assertThat(Run.of(two).landing("b")).isEqualTo("2027-03-01");
        ProjectInputs three = anaAndBen().chain("a", "b");
        three.task("a").exactly(6).trades("mason").task("b").exactly(3).trades("smith");
        assertThat(Run.of(three).start("b")).isEqualTo("2027-03-01");
        assertThat(Run.of(three).landing("b")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_37_who_waits_for_a_colleague_fills_the_gap_with_other_work() {
        ProjectInputs project = anaAndBen().chain("a", "b").ranks("a", "b", "c");
        project.task("a").exactly(6).trades("mason");
        project.task("b").exactly(2).trades("smith").task("c").exactly(6).trades("smith");
        Run run = Run.of(project);
        assertThat(run.landing("b")).isEqualTo("2027-03-01");
        assertThat(run.landing("c")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_37_a_stretch_ends_at_the_larger_of_e_and_its_peoples_used_hours_plus_its_length() {
        ProjectInputs fits = anaAndBen().chain("a", "b", "c");
        fits.task("a")
                .exactly(2)
                .trades("mason")
                .task("b")
                .exactly(3)
                .trades("smith")
                .task("c")
                .exactly(3)
                .trades("mason");
        assertThat(Run.of(fits).landing("c")).isEqualTo("2027-03-01");
        ProjectInputs over = anaAndBen().chain("a", "b", "c");
        over.task("a")
                .exactly(2)
                .trades("mason")
                .task("b")
                .exactly(3)
                .trades("smith")
                .task("c")
                .exactly(4)
                .trades("mason");
        assertThat(Run.of(over).landing("c")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_37_all_that_became_possible_at_hour_e_shares_what_is_left_of_the_day() {
        ProjectInputs project = anaAndBen().chain("a", "b").chain("a", "c").ranks("a", "b", "c");
        project.task("a").exactly(6).trades("mason");
        project.task("b").exactly(1.5).trades("smith").task("c").exactly(1).trades("smith");
        Run run = Run.of(project);
        // ben has two hours after hour 6: one and a half for b, half an hour for c
        assertThat(run.landing("b")).isEqualTo("2027-03-01");
        assertThat(run.start("c")).isEqualTo("2027-03-01");
        assertThat(run.landing("c")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_38_of_two_the_one_with_more_hours_left_works() {
        ProjectInputs project = project()
                .cash(CASH, 0)
                .person("ben", 6, 8, 8, 8, 8, 0, 0)
                .paid(100)
                .person("ana")
                .paid(1);
        project.task("a").exactly(4);
        assertThat(wages(project)).isEqualTo(4);
    }

    @Test
    void rule_38_then_the_one_with_fewer_trades_then_the_first_of_the_list() {
        ProjectInputs fewer = project()
                .cash(CASH, 0)
                .person("ben", "mason", "smith")
                .paid(100)
                .person("ana", "mason")
                .paid(1);
        fewer.task("a").exactly(4).trades("mason");
        assertThat(wages(fewer)).isEqualTo(4);
        ProjectInputs first = project()
                .cash(CASH, 0)
                .person("ana", "mason")
                .paid(1)
                .person("ben", "mason")
                .paid(100);
        first.task("a").exactly(4).trades("mason");
        assertThat(wages(first)).isEqualTo(4);
    }

    @Test
    void rule_38_who_worked_on_it_last_goes_before_who_has_more_hours() {
        ProjectInputs project = project()
                .cash(CASH, 0)
                .person("ana")
                .paid(1)
                .person("ben", 6, 6, 6, 6, 6, 0, 0)
                .paid(100);
        project.task("a").exactly(8).logged("2027-02-26", "ben", 4);
        assertThat(wages(project)).isEqualTo(400);
    }

    @Test
    void rule_38_only_who_has_one_of_its_trades_is_a_hand() {
        ProjectInputs project = project().person("ana", "smith", "camera").person("ben", "mason");
        project.task("a").exactly(4).trades("joiner").task("b").exactly(4).trades("joiner", "smith");
        Run run = Run.of(project);
        assertThat(run.landing("a")).isEqualTo("later");
        assertThat(run.landing("b")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_38_each_hand_needs_at_least_half_an_hour() {
        ProjectInputs project = project().person("ana").workedToday("ana", 7.6);
        project.task("a").exactly(8);
        assertThat(Run.of(project).start("a")).isEqualTo("2027-03-02");
        ProjectInputs half = project().person("ana").workedToday("ana", 7.5);
        half.task("a").exactly(8);
        assertThat(Run.of(half).start("a")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_38_a_task_of_several_hands_takes_hands_times_the_least_of_their_hours() {
        ProjectInputs project = project().person("ana").person("ben", 3, 3, 3, 3, 3, 0, 0);
        project.task("a").exactly(12).hands(2, 2);
        // both for three hours a day: six person-hours on Monday and six on Tuesday
        assertThat(Run.of(project).landing("a")).isEqualTo("2027-03-02");
        assertThat(Run.of(project).start("a")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_39_no_stretch_is_shorter_than_half_an_hour_unless_it_finishes_the_task() {
        ProjectInputs project = project().person("ana").ranks("a", "b", "c");
        project.task("a").exactly(7.75).task("b").exactly(4).task("c").exactly(0.25);
        Run run = Run.of(project);
        assertThat(run.landing("a")).isEqualTo("2027-03-01");
        assertThat(run.start("b")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_40_after_a_stretch_the_same_task_is_tried_again_with_other_people() {
        // ana, who worked on it last, has three hours; ben goes on from hour 3 to hour 8
        ProjectInputs project = project().person("ana", 3, 8, 8, 8, 8, 0, 0).person("ben");
        project.task("a").exactly(12).logged("2027-02-26", "ana", 4);
        assertThat(Run.of(project).landing("a")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_40_other_people_go_on_where_the_stretch_ended_so_that_there_are_never_more_hands_at_once() {
        ProjectInputs project = project().person("ana").person("ben");
        project.task("a").exactly(12);
        assertThat(Run.of(project).landing("a")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_40_a_link_reached_opens_a_task_of_higher_rank_on_the_same_day() {
        ProjectInputs project =
                project().person("ana").link("first", "later", 1, 0).ranks("first", "later", "other");
        project.task("first").exactly(2).task("later").exactly(2).task("other").exactly(8);
        Run run = Run.of(project);
        assertThat(run.landing("first")).isEqualTo("2027-03-01");
        assertThat(run.landing("other")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_41_with_fewer_hands_than_asked_the_hours_grow_by_three_tenths() {
        ProjectInputs fits = project().person("ana");
        fits.task("a").exactly(6).hands(2, 1);
        assertThat(Run.of(fits).landing("a")).isEqualTo("2027-03-01");
        ProjectInputs over = project().person("ana");
        over.task("a").exactly(6.25).hands(2, 1);
        // 8.125 hours
        assertThat(Run.of(over).landing("a")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_41_never_under_its_least_hands() {
        ProjectInputs one = project().person("ana");
        one.task("a").exactly(6).hands(2, 2);
        assertThat(Run.of(one).landing("a")).isEqualTo("later");
        ProjectInputs two = project().person("ana").person("ben");
        two.task("a").exactly(16).hands(2, 2);
        assertThat(Run.of(two).landing("a")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_42_what_is_under_way_goes_before_what_ranks_higher() {
        ProjectInputs project = project().person("ana").ranks("new", "begun");
        project.task("new").exactly(8).task("begun").exactly(12).logged("2027-02-26", "ana", 4);
        Run run = Run.of(project);
        assertThat(run.landing("begun")).isEqualTo("2027-03-01");
        assertThat(run.start("new")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_42_a_task_whose_last_hours_are_over_eight_weeks_old_ranks_as_not_begun() {
        ProjectInputs project = project().person("ana").ranks("new", "begun");
        project.task("new").exactly(8).task("begun").exactly(12).logged("2027-01-03", "ana", 4);
        Run run = Run.of(project);
        assertThat(run.landing("new")).isEqualTo("2027-03-01");
        assertThat(run.landing("begun")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_42_a_task_begun_over_eight_weeks_ago_without_hours_ranks_as_not_begun() {
        ProjectInputs project = project().person("ana").ranks("new", "begun");
        project.task("new").exactly(8).task("begun").exactly(8).started("2027-01-03");
        assertThat(Run.of(project).landing("new")).isEqualTo("2027-03-01");
        ProjectInputs lately = project().person("ana").ranks("new", "begun");
        lately.task("new").exactly(8).task("begun").exactly(8).started("2027-01-04");
        assertThat(Run.of(lately).landing("begun")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_42_a_task_laid_aside_is_not_worked_on_until_its_day() {
        ProjectInputs project = project().person("ana");
        project.task("a").exactly(12).logged("2027-02-26", "ana", 4).asideUntil("2027-03-10");
        assertThat(Run.of(project).landing("a")).isEqualTo("2027-03-10");
        ProjectInputs never = project().person("ana");
        never.task("a").exactly(8).asideUntil("9999-12-31");
        assertThat(Run.of(never).landing("a")).isEqualTo("later");
    }

    @Test
    void rule_43_an_own_week_line_reserves_hours_before_anything_else() {
        ProjectInputs errand = project().person("ana").ownLine("2027-03-01", "ana", "", Inputs.LineKind.ERRAND, 8);
        errand.task("a").exactly(8);
        assertThat(Run.of(errand).start("a")).isEqualTo("2027-03-02");
        ProjectInputs half = project().person("ana").ownLine("2027-03-01", "ana", "", Inputs.LineKind.REST, 3);
        half.task("a").exactly(6);
        assertThat(Run.of(half).landing("a")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_43_an_own_line_for_a_task_is_worked_before_what_ranks_higher() {
        ProjectInputs project =
                project().person("ana").ranks("a", "b").ownLine("2027-03-01", "ana", "b", Inputs.LineKind.WORK, 8);
        project.task("a").exactly(8).task("b").exactly(8);
        Run run = Run.of(project);
        assertThat(run.landing("b")).isEqualTo("2027-03-01");
        assertThat(run.landing("a")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_43_an_own_line_for_an_episode_edits_it_before_its_window() {
        ProjectInputs project = project().person("ana", "edit").fridays("2027-03-05");
        project.episode("e1", "2027-06-04", 4);
        assertThat(Run.of(project).cut("e1")).isGreaterThan("2027-05-01");
        project.ownLine("2027-03-02", "ana", "e1", Inputs.LineKind.EDIT, 4);
        assertThat(Run.of(project).cut("e1")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_43_hours_are_kept_for_an_own_line_whose_task_becomes_possible_that_day() {
        ProjectInputs project = anaAndBen().chain("a", "b").ranks("a", "c", "b");
        project.task("a").exactly(4).trades("smith");
        project.task("b").exactly(4).trades("mason").task("c").exactly(8).trades("mason");
        project.ownLine("2027-03-01", "ana", "b", Inputs.LineKind.WORK, 4);
        Run run = Run.of(project);
        assertThat(run.landing("b")).isEqualTo("2027-03-01");
        assertThat(run.landing("c")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_43_hours_kept_for_what_does_not_become_possible_go_to_other_work() {
        ProjectInputs project = anaAndBen().chain("a", "b").ranks("a", "c", "b");
        project.task("a").exactly(12).trades("smith");
        project.task("b").exactly(4).trades("mason").task("c").exactly(8).trades("mason");
        project.ownLine("2027-03-01", "ana", "b", Inputs.LineKind.WORK, 4);
        assertThat(Run.of(project).landing("c")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_43_an_own_line_of_two_people_works_a_task_together() {
        ProjectInputs project = project()
                .person("ana")
                .person("ben")
                .ranks("a", "b")
                .ownLine("2027-03-01", "ana", "b", Inputs.LineKind.WORK, 4)
                .ownLine("2027-03-01", "ben", "b", Inputs.LineKind.WORK, 4);
        project.task("a").exactly(16).hands(2, 2).task("b").exactly(8).hands(2, 2);
        Run run = Run.of(project);
        assertThat(run.landing("b")).isEqualTo("2027-03-01");
        assertThat(run.landing("a")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_43_higher_priority_goes_first_among_what_is_not_under_way() {
        ProjectInputs project = project().person("ana").ranks("a", "b");
        project.task("a").exactly(8).task("b").exactly(8).priority(1);
        assertThat(Run.of(project).landing("b")).isEqualTo("2027-03-01");
        ProjectInputs begun = project().person("ana").ranks("a", "b");
        begun.task("a")
                .exactly(12)
                .logged("2027-02-26", "ana", 4)
                .task("b")
                .exactly(8)
                .priority(5);
        assertThat(Run.of(begun).landing("a")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_43_and_129_not_before_holds_a_start() {
        ProjectInputs project = project().person("ana");
        project.task("a").exactly(8).notBefore("2027-03-10");
        assertThat(Run.of(project).start("a")).isEqualTo("2027-03-10");
    }

    @Test
    void rule_44_a_work_task_frees_its_equipment_at_its_end_for_the_same_day() {
        ProjectInputs fits = anaAndBen().equipment("saw", 1).ranks("a", "b");
        fits.task("a")
                .exactly(4)
                .trades("mason")
                .needs("saw", 1)
                .task("b")
                .exactly(4)
                .trades("smith")
                .needs("saw", 1);
        assertThat(Run.of(fits).landing("b")).isEqualTo("2027-03-01");
        ProjectInputs over = anaAndBen().equipment("saw", 1).ranks("a", "b");
        over.task("a")
                .exactly(6)
                .trades("mason")
                .needs("saw", 1)
                .task("b")
                .exactly(4)
                .trades("smith")
                .needs("saw", 1);
        assertThat(Run.of(over).landing("b")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_44_an_unfinished_work_task_holds_its_equipment_to_the_end_of_the_day_but_not_overnight() {
        ProjectInputs project = anaAndBen().equipment("saw", 1).ranks("a", "b");
        project.task("a")
                .exactly(9)
                .trades("mason")
                .needs("saw", 1)
                .task("b")
                .exactly(4)
                .trades("smith")
                .needs("saw", 1);
        Run run = Run.of(project);
        assertThat(run.landing("a")).isEqualTo("2027-03-02");
        assertThat(run.start("b")).isEqualTo("2027-03-02");
        // with a held off Tuesday (its season closed on Monday night) the saw is free on Tuesday
        ProjectInputs stopped = anaAndBen().equipment("saw", 1).ranks("a", "b");
        stopped.task("a").exactly(9).trades("mason").needs("saw", 1).season(301, 301);
        stopped.task("b").exactly(4).trades("smith").needs("saw", 1);
        assertThat(Run.of(stopped).landing("b")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_44_two_of_an_equipment_serve_two_tasks_at_once() {
        ProjectInputs project = anaAndBen().equipment("saw", 2).ranks("a", "b");
        project.task("a")
                .exactly(8)
                .trades("mason")
                .needs("saw", 1)
                .task("b")
                .exactly(8)
                .trades("smith")
                .needs("saw", 1);
        assertThat(Run.of(project).landing("b")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_44_a_wait_holds_its_equipment_day_and_night() {
        ProjectInputs project = project().person("ana").equipment("press", 1).chain("glue", "cure");
        project.task("glue").exactly(2).needs("press", 1);
        project.task("cure").days(3).needs("press", 1);
        project.task("b").exactly(2).needs("press", 1).notBefore("2027-03-02");
        // glued on Monday, pressed until Thursday morning
        Run run = Run.of(project);
        assertThat(run.landing("cure")).isEqualTo("2027-03-04");
        assertThat(run.start("b")).isEqualTo("2027-03-04");
    }

    @Test
    void rule_44_a_need_over_the_quantity_never_starts() {
        ProjectInputs project = project().person("ana").equipment("saw", 1);
        project.task("a").exactly(2).needs("saw", 2);
        assertThat(Run.of(project).start("a")).isEqualTo("later");
    }

    @Test
    void rule_45_an_operator_task_goes_ahead_unfilmed_without_an_operator() {
        ProjectInputs project = project().person("ana", "mason", "camera");
        project.task("a")
                .exactly(8)
                .trades("mason")
                .camera(Inputs.Camera.OPERATOR, 30)
                .story(30);
        Run run = Run.of(project);
        assertThat(run.landing("a")).isEqualTo("2027-03-01");
        assertThat(run.bank("2027-03-07")).isZero();
    }

    @Test
    void rule_45_the_operators_hours_film_it() {
        ProjectInputs project = project().person("ana", "mason").person("ben", "camera");
        project.task("a")
                .exactly(8)
                .trades("mason")
                .camera(Inputs.Camera.OPERATOR, 30)
                .story(30);
        assertThat(Run.of(project).bank("2027-03-07")).isEqualTo(30);
    }

    @Test
    void rule_45_hours_that_nobody_can_film_yield_no_story_minutes() {
        // of 2.4 hours with the camera ben has 1.2
        ProjectInputs project = project().person("ana", "mason").person("ben", 1.2, 0, 0, 0, 0, 0, 0, "camera");
        project.task("a")
                .exactly(8)
                .trades("mason")
                .camera(Inputs.Camera.OPERATOR, 30)
                .story(30);
        assertThat(Run.of(project).bank("2027-03-07")).isCloseTo(15, within(0.05));
    }

    @Test
    void rule_45_once_starts_only_with_an_operator_who_is_not_one_of_its_hands() {
        ProjectInputs alone = project().person("ana", "mason", "camera");
        alone.task("a").exactly(4).trades("mason").camera(Inputs.Camera.ONCE, -1);
        assertThat(Run.of(alone).landing("a")).isEqualTo("later");
        ProjectInputs two = project().person("ana", "mason", "camera").person("ben", 0, 0, 8, 0, 0, 0, 0, "camera");
        two.task("a").exactly(4).trades("mason").camera(Inputs.Camera.ONCE, -1);
        assertThat(Run.of(two).start("a")).isEqualTo("2027-03-03");
    }

    @Test
    void rule_45_once_needs_the_operators_hours_for_all_of_it_or_for_the_day() {
        ProjectInputs less = project().person("ana", "mason").person("ben", 3, 3, 3, 3, 6, 0, 0, "camera");
        less.task("a").exactly(6).trades("mason").camera(Inputs.Camera.ONCE, -1);
        assertThat(Run.of(less).start("a")).isEqualTo("2027-03-05");
        // twelve hours: the day's eight are enough to begin, and once begun it goes on, filmed or not
        ProjectInputs longer = project().person("ana", "mason").person("ben", 8, 0, 0, 0, 0, 0, 0, "camera");
        longer.task("a").exactly(12).trades("mason").camera(Inputs.Camera.ONCE, -1);
        assertThat(Run.of(longer).start("a")).isEqualTo("2027-03-01");
        assertThat(Run.of(longer).landing("a")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_45_of_several_operators_the_one_with_most_hours_left_films() {
        ProjectInputs project = project()
                .cash(CASH, 0)
                .person("ana", "mason")
                .paid(1)
                .person("cleo", 4, 4, 4, 4, 4, 0, 0, "camera")
                .paid(10_000)
                .person("ben", 6, 6, 6, 6, 6, 0, 0, "camera")
                .paid(100);
        project.task("a").exactly(8).trades("mason").camera(Inputs.Camera.OPERATOR, 25);
        // eight hours of ana's and two of ben's
        assertThat(wages(project)).isEqualTo(208);
    }

    @Test
    void rule_46_the_operator_gives_a_percent_of_the_clock_hours() {
        // two hands, 16 person-hours, eight on the clock: 30 % is 2.4 h, which leaves cleo 5.6
        ProjectInputs fits = filmed().ranks("a", "c");
        fits.task("a").exactly(16).hands(2, 2).trades("mason").camera(Inputs.Camera.OPERATOR, 30);
        fits.task("c").exactly(5.5).trades("smith");
        assertThat(Run.of(fits).landing("c")).isEqualTo("2027-03-01");
        ProjectInputs over = filmed().ranks("a", "c");
        over.task("a").exactly(16).hands(2, 2).trades("mason").camera(Inputs.Camera.OPERATOR, 30);
        over.task("c").exactly(5.75).trades("smith");
        assertThat(Run.of(over).landing("c")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_46_once_takes_the_operator_for_all_of_the_clock_hours() {
        ProjectInputs project = filmed().ranks("a", "c");
        project.task("a").exactly(12).hands(2, 2).trades("mason").camera(Inputs.Camera.ONCE, 30);
        project.task("c").exactly(2.25).trades("smith");
        assertThat(Run.of(project).landing("c")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_47_an_empty_camera_extra_of_an_operator_is_30_percent() {
        ProjectInputs fits = filmed().ranks("a", "c");
        fits.task("a").exactly(16).hands(2, 2).trades("mason").camera(Inputs.Camera.OPERATOR, -1);
        fits.task("c").exactly(5.5).trades("smith");
        assertThat(Run.of(fits).landing("c")).isEqualTo("2027-03-01");
        ProjectInputs over = filmed().ranks("a", "c");
        over.task("a").exactly(16).hands(2, 2).trades("mason").camera(Inputs.Camera.OPERATOR, -1);
        over.task("c").exactly(5.75).trades("smith");
        assertThat(Run.of(over).landing("c")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_49_editing_takes_the_editors_hours_first() {
        ProjectInputs project = project().person("ana", "edit").fridays("2027-03-05");
        project.episode("e1", "2027-03-12", 4);
        project.task("a").exactly(8);
        Run run = Run.of(project);
        assertThat(run.cut("e1")).isEqualTo("2027-03-01");
        assertThat(run.landing("a")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_49_a_named_editor_is_never_replaced_and_nobody_with_the_trade_never_cuts() {
        ProjectInputs named = project()
                .person("ana", "edit")
                .person("ben", 0, 0, 0, 4, 0, 0, 0, "edit")
                .fridays("2027-03-05");
        named.episode(new Inputs.Episode(
                "e1",
                Inputs.EpisodeKind.BUILD,
                day("2027-03-12"),
                Inputs.Range.of(240),
                "ben",
                0,
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                List.of()));
        assertThat(Run.of(named).cut("e1")).isEqualTo("2027-03-04");
        ProjectInputs nobody = project().person("ana", "camera").fridays("2027-03-05");
        nobody.episode("e1", "2027-03-12", 4);
        assertThat(Run.of(nobody).cut("e1")).isEqualTo("later");
    }

    @Test
    void rule_49_without_a_name_the_one_with_most_hours_left_edits() {
        ProjectInputs project = project()
                .cash(CASH, 0)
                .person("ana", 5, 5, 5, 5, 5, 0, 0, "edit")
                .paid(1)
                .person("ben", "edit")
                .paid(100)
                .fridays("2027-03-05");
        project.episode("e1", "2027-03-12", 4);
        assertThat(wages(project)).isEqualTo(400);
    }

    @Test
    void rule_49_editing_goes_before_the_build_or_by_the_setting_after_it() {
        ProjectInputs project = project().person("ana", "edit").fridays("2027-03-05");
        project.model(new Inputs.Model(1, 18, 6, 0.1, false, 15, 30, 1, 0));
        project.episode("e1", "2027-03-12", 4);
        project.task("a").exactly(12);
        Run run = Run.of(project);
        assertThat(run.landing("a")).isEqualTo("2027-03-02");
        assertThat(run.cut("e1")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_50_chance_0_loses_no_day_and_chance_1_all_of_them_outdoors_only() {
        ProjectInputs never = project().person("ana").weather(0, 2);
        never.task("a").exactly(8).outdoors();
        assertThat(Run.of(never).landing("a")).isEqualTo("2027-03-01");
        ProjectInputs always = project().person("ana").weather(1, 2);
        always.task("a").exactly(8).outdoors().task("b").exactly(8);
        assertThat(Run.of(always).landing("a")).isEqualTo("later");
        assertThat(Run.of(always).landing("b")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_50_days_are_lost_with_the_months_chance_in_spells_of_the_given_length() {
        ProjectInputs project =
                project().horizonMonths(2).person("ana", 8, 8, 8, 8, 8, 8, 8).weather(0.3, 2);
        project.task("a").exactly(8).outdoors().notBefore("2027-03-10");
        int trials = 20_000;
        Run run = Run.of(project, trials);
        int[] starts = run.outcome().taskStart[0];
        double onDay = share(starts, day("2027-03-10"));
        double nextDay = share(starts, day("2027-03-11"));
        double later = 1 - onDay - nextDay;
        // fine with 0.7; lost once then fine 0.3 / 2; lost at least twice 0.3 / 2; four standard errors
        double room = 4 * Math.sqrt(0.25 / trials);
        assertThat(onDay).isCloseTo(0.7, within(room));
        assertThat(nextDay).isCloseTo(0.15, within(room));
        assertThat(later).isCloseTo(0.15, within(room));
    }

    @Test
    void rule_50_a_chance_that_leaves_no_room_for_its_spells_keeps_its_share_of_lost_days() {
        // p = 0.8, L = 2: fine to lost would be 2, so it is 1, and lost to lost 2 - 1/0.8 = 0.75
        ProjectInputs project =
                project().horizonMonths(3).person("ana", 8, 8, 8, 8, 8, 8, 8).weather(0.8, 2);
        project.task("a").exactly(8).outdoors().notBefore("2027-03-20");
        int trials = 20_000;
        int[] starts = Run.of(project, trials).outcome().taskStart[0];
        double room = 4 * Math.sqrt(0.25 / trials);
        assertThat(share(starts, day("2027-03-20"))).isCloseTo(0.2, within(room));
        assertThat(share(starts, day("2027-03-21"))).isCloseTo(0.8 * 0.25, within(room));
        assertThat(share(starts, day("2027-03-22"))).isCloseTo(0.8 * 0.75 * 0.25, within(room));
    }

    @Test
    void rule_50_a_lost_day_is_the_same_for_all_outdoor_tasks() {
        ProjectInputs project = project()
                .horizonMonths(2)
                .person("ana", "mason")
                .person("ben", "smith")
                .weather(0.5, 2);
        project.task("a")
                .exactly(8)
                .outdoors()
                .trades("mason")
                .task("b")
                .exactly(8)
                .outdoors()
                .trades("smith");
        Run run = Run.of(project, 300);
        assertThat(run.outcome().taskStart[0]).isEqualTo(run.outcome().taskStart[1]);
        assertThat(Arrays.stream(run.outcome().taskStart[0]).distinct().count()).isGreaterThan(3);
    }

    @Test
    void rule_51_who_had_hands_hours_on_the_last_logged_date_goes_on() {
        ProjectInputs project = project()
                .cash(CASH, 0)
                .person("ana", 8, 8, 8, 8, 8, 0, 0)
                .paid(1)
                .person("ben", 6, 6, 6, 6, 6, 0, 0)
                .paid(100)
                .person("cleo", 4, 4, 4, 4, 4, 0, 0)
                .paid(10_000);
        project.task("a")
                .exactly(20)
                .logged("2027-02-25", "ana", 8)
                .logged("2027-02-26", "cleo", Inputs.As.CAMERA, 2, 0, true)
                .logged("2027-02-26", "ben", 8);
        // four hours are left and ben does them
        assertThat(wages(project)).isEqualTo(400);
    }

    private static double share(int[] days, int day) {
        return Arrays.stream(days).filter(each -> each == day).count() / (double) days.length;
    }

    /** What the first week's work cost. */
    private static long wages(ProjectInputs project) {
        return CASH - Run.of(project).cash("2027-03-07");
    }

    private static ProjectInputs anaAndBen() {
        return project().person("ana", "mason").person("ben", "smith");
    }

    private static ProjectInputs filmed() {
        return project().person("ana", "mason").person("ben", "mason").person("cleo", "camera", "smith");
    }
}
