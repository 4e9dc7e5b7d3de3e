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

/** Rules 65 to 74: slots, episodes and the story bank. The as-of day is Monday 2027-03-01; slots are Fridays. */
class EpisodesRulesTest {
    @Test
    void rule_65_slots_are_every_so_many_weeks_from_the_first_less_those_skipped() {
        ProjectInputs project = project();
        slots(project, "2027-02-26", 2, List.of(day("2027-03-26")));
        assertThat(first(project, 3)).containsExactly("2027-03-12", "2027-04-09", "2027-04-23");
    }

    @Test
    void rule_65_a_first_day_that_is_no_such_weekday_is_the_next_one() {
        ProjectInputs project = project();
        slots(project, "2027-03-06", 1, List.of());
        assertThat(first(project, 2)).containsExactly("2027-03-12", "2027-03-19");
    }

    @Test
    void rule_66_an_episode_must_be_cut_the_early_days_before_its_slot() {
        ProjectInputs thursday = editor(0, 0, 0, 4, 0).fridays("2027-03-05");
        thursday.episode("e1", "2027-03-05", 4);
        assertThat(Run.of(thursday).cut("e1")).isEqualTo("2027-03-04");
        assertThat(Run.of(thursday).slot("2027-03-05")).isEqualTo(Outcome.Slot.OWN);
        ProjectInputs friday = editor(0, 0, 0, 0, 4).fridays("2027-03-05");
        friday.episode("e1", "2027-03-05", 4);
        assertThat(Run.of(friday).cut("e1")).isEqualTo("2027-03-05");
        assertThat(Run.of(friday).slot("2027-03-05")).isEqualTo(Outcome.Slot.EMPTY);
        assertThat(Run.of(friday).slot("2027-03-12")).isEqualTo(Outcome.Slot.OTHER);
    }

    @Test
    void rule_67_footage_is_complete_on_the_evening_on_which_the_told_share_is_done_and_editable_the_next_day() {
        ProjectInputs project = editor(8, 8, 8, 8, 8).person("ben", "mason").fridays("2027-03-05");
        project.task("a").exactly(6).trades("mason");
        project.episode("e1", "2027-03-05", 4, "a");
        Run run = Run.of(project);
        assertThat(run.landing("a")).isEqualTo("2027-03-01");
        assertThat(run.cut("e1")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_67_an_episode_that_tells_nothing_is_complete_from_the_start() {
        ProjectInputs project = editor(8, 8, 8, 8, 8).fridays("2027-03-05");
        project.episode("e1", "2027-03-05", 4);
        assertThat(Run.of(project).cut("e1")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_67_the_told_share_is_enough_and_all_told_tasks_are_needed() {
        ProjectInputs project = editor(8, 8, 8, 8, 8)
                .person("ben", "mason")
                .fridays("2027-03-05")
                .ranks("a", "b");
        project.task("a").exactly(16).trades("mason").task("b").exactly(8).trades("mason");
        project.episode(telling("e1", "2027-03-05", new Inputs.Tell("a", 0.5)));
        project.episode(telling("e2", "2027-03-12", new Inputs.Tell("a", 0.5), new Inputs.Tell("b", 1)));
        Run run = Run.of(project);
        assertThat(run.cut("e1")).isEqualTo("2027-03-02");
        // b is done on Wednesday
        assertThat(run.cut("e2")).isEqualTo("2027-03-04");
        assertThat(run.outcome().episodeLast[1][0]).isEqualTo(run.task("b"));
    }

    @Test
    void rule_67_published_implies_cut_implies_complete() {
        ProjectInputs project = editor(0, 0, 0, 0, 0).person("ben", "mason").fridays("2027-03-05");
        project.task("a").exactly(400).trades("mason");
        project.episode(new Inputs.Episode(
                "e1",
                Inputs.EpisodeKind.BUILD,
                day("2027-03-05"),
                Inputs.Range.of(600),
                "",
                0,
                Inputs.NONE,
                day("2027-02-20"),
                Inputs.NONE,
                List.of(new Inputs.Tell("a", 1))));
        assertThat(Run.of(project).slot("2027-03-05")).isEqualTo(Outcome.Slot.OWN);
    }

    @Test
    void rule_68_editing_begins_the_window_before_the_slot_and_late_ones_are_edited_till_cut() {
        ProjectInputs project = editor(8, 8, 8, 8, 8).fridays("2027-03-05");
        project.episode("e1", "2027-03-26", 4);
        // 26 March less 14 days is Friday 12 March
        assertThat(Run.of(project).cut("e1")).isEqualTo("2027-03-12");
        ProjectInputs late = editor(4, 4, 4, 4, 4).fridays("2027-03-05");
        late.episode("e1", "2027-03-05", 30);
        // 30 hours at four a day: the eighth working day
        assertThat(Run.of(late).cut("e1")).isEqualTo("2027-03-10");
    }

    @Test
    void rule_69_a_slot_without_its_own_takes_the_cut_planned_one_with_the_earliest_slot() {
        ProjectInputs project = editor(0, 0, 0, 0, 0).fridays("2027-03-05");
        project.episode("e1", "2027-03-05", 400);
        project.episode(DatesRulesTest.cut("e3", "2027-03-19", "2027-02-20"));
        project.episode(DatesRulesTest.cut("e2", "2027-03-12", "2027-02-20"));
        project.episode(DatesRulesTest.cut("s1", "", "2027-02-20"));
        Run run = Run.of(project);
        assertThat(run.slot("2027-03-05")).isEqualTo(Outcome.Slot.OTHER);
        // e2 went on the first slot, e3 goes on the second, the third falls to the standby, the fourth is empty
        assertThat(run.slot("2027-03-12")).isEqualTo(Outcome.Slot.OTHER);
        assertThat(run.slot("2027-03-19")).isEqualTo(Outcome.Slot.STANDBY);
        assertThat(run.slot("2027-03-26")).isEqualTo(Outcome.Slot.EMPTY);
    }

    @Test
    void rule_70_a_gap_before_the_last_planned_slot_is_served_by_the_same_rule() {
        ProjectInputs project = editor(0, 0, 0, 0, 0).fridays("2027-03-05");
        project.episode(DatesRulesTest.cut("s1", "", "2027-02-20"));
        project.episode(DatesRulesTest.cut("e3", "2027-03-19", "2027-02-20"));
        Run run = Run.of(project);
        assertThat(run.slot("2027-03-05")).isEqualTo(Outcome.Slot.OTHER);
        assertThat(run.slot("2027-03-12")).isEqualTo(Outcome.Slot.STANDBY);
        assertThat(run.slot("2027-03-19")).isEqualTo(Outcome.Slot.EMPTY);
    }

    @Test
    void rule_71_a_standby_is_edited_inside_the_window_of_a_slot_that_has_nothing_else() {
        ProjectInputs project = editor(8, 8, 8, 8, 8).fridays("2027-03-26");
        project.episode("s1", "", 4);
        Run run = Run.of(project);
        assertThat(run.cut("s1")).isEqualTo("2027-03-12");
        assertThat(run.slot("2027-03-26")).isEqualTo(Outcome.Slot.STANDBY);
    }

    @Test
    void rule_71_a_standby_is_edited_after_all_others() {
        ProjectInputs project = editor(4, 4, 4, 4, 4).fridays("2027-03-05");
        project.episode("s1", "", 4);
        project.episode("e1", "2027-03-05", 8);
        Run run = Run.of(project);
        assertThat(run.cut("e1")).isEqualTo("2027-03-02");
        assertThat(run.cut("s1")).isGreaterThan("2027-03-02");
    }

    @Test
    void rule_72_the_bank_is_story_minutes_times_filmed_share_less_told_share() {
        ProjectInputs project = project().person("ben", "mason");
        project.task("a")
                .hours(5, 10, 20)
                .camera(Inputs.Camera.FIXED, 0)
                .story(40)
                .logged("2027-02-01", "ben", Inputs.As.HANDS, 6, 0, true)
                .logged("2027-02-02", "ben", 2)
                .done("2027-02-02");
        // filmed on a day with six of eight hours
        assertThat(Run.of(project).bank("2027-03-07")).isCloseTo(30, within(1e-4));
        project.episode(telling("e1", "2027-06-04", new Inputs.Tell("a", 0.5)));
        assertThat(Run.of(project).bank("2027-03-07")).isCloseTo(10, within(1e-4));
        project.episode(telling("e2", "2027-06-11", new Inputs.Tell("a", 0.9)));
        assertThat(Run.of(project).bank("2027-03-07")).isZero();
    }

    @Test
    void rule_72_a_day_is_filmed_by_camera_hours_a_shot_or_the_word_filmed() {
        for (int way = 0; way < 4; way++) {
            ProjectInputs project = project().person("ben", "mason");
            ProjectInputs.Task a = project.task("a")
                    .hours(5, 10, 20)
                    .camera(Inputs.Camera.OPERATOR, 30)
                    .story(40);
            a.logged("2027-02-01", "ben", Inputs.As.HANDS, 4, 0, way == 1);
            a.logged("2027-02-02", "ben", 4).done("2027-02-02");
            if (way == 2) {
                a.logged("2027-02-01", "ana", Inputs.As.CAMERA, 1, 0, false);
            } else if (way == 3) {
                a.shot("2027-02-01");
            }
            assertThat(Run.of(project).bank("2027-03-07")).isCloseTo(way == 0 ? 0 : 20, within(1e-4));
        }
    }

    @Test
    void rule_72_no_camera_and_story_told_give_nothing() {
        ProjectInputs project = project().person("ben", "mason");
        project.task("a").exactly(4).trades("mason").story(40);
        project.task("b")
                .exactly(4)
                .trades("mason")
                .camera(Inputs.Camera.FIXED, 0)
                .story(40)
                .storyTold();
        assertThat(Run.of(project).bank("2027-03-07")).isZero();
    }

    @Test
    void rule_72_work_to_come_with_a_fixed_camera_fills_the_bank_as_it_is_done() {
        ProjectInputs project = project().person("ben", "mason");
        project.task("a")
                .exactly(80)
                .trades("mason")
                .camera(Inputs.Camera.FIXED, 0)
                .story(40);
        Run run = Run.of(project);
        assertThat(run.bank("2027-03-07")).isCloseTo(20, within(0.01));
        assertThat(run.bank("2027-03-14")).isCloseTo(40, within(0.01));
    }

    @Test
    void rule_73_a_slot_without_its_own_makes_an_episode_from_the_bank() {
        ProjectInputs project = editor(8, 8, 8, 8, 8).fridays("2027-03-05");
        bankOf(project, 50);
        withEdit(project, 8);
        Run run = Run.of(project);
        // 50 minutes are two episodes of 20
        assertThat(run.slot("2027-03-05")).isEqualTo(Outcome.Slot.BANK);
        assertThat(run.slot("2027-03-12")).isEqualTo(Outcome.Slot.BANK);
        assertThat(run.slot("2027-03-19")).isEqualTo(Outcome.Slot.EMPTY);
        assertThat(run.bank("2027-03-07")).isCloseTo(10, within(1e-4));
    }

    @Test
    void rule_73_a_bank_under_the_target_makes_none() {
        ProjectInputs project = editor(8, 8, 8, 8, 8).fridays("2027-03-05");
        bankOf(project, 19);
        withEdit(project, 8);
        Run run = Run.of(project);
        assertThat(run.slot("2027-03-05")).isEqualTo(Outcome.Slot.EMPTY);
        assertThat(run.bank("2027-03-07")).isCloseTo(19, within(1e-4));
    }

    @Test
    void rule_69_and_73_the_bank_goes_before_a_standby() {
        ProjectInputs project = editor(8, 8, 8, 8, 8).fridays("2027-03-05");
        bankOf(project, 20);
        withEdit(project, 8);
        project.episode(DatesRulesTest.cut("s1", "", "2027-02-20"));
        Run run = Run.of(project);
        assertThat(run.slot("2027-03-05")).isEqualTo(Outcome.Slot.BANK);
        assertThat(run.slot("2027-03-12")).isEqualTo(Outcome.Slot.STANDBY);
    }

    @Test
    void rule_74_edit_hours_logged_come_off_and_a_tenth_of_an_hour_remains() {
        ProjectInputs project = editor(8, 8, 8, 8, 8).fridays("2027-03-05");
        project.episode(edited("e1", "2027-03-05", 12, 5));
        assertThat(Run.of(project).cut("e1")).isEqualTo("2027-03-01");
        ProjectInputs over = editor(8, 8, 8, 8, 8).fridays("2027-03-05");
        over.episode(edited("e1", "2027-03-05", 4, 30));
        over.task("a").exactly(8);
        assertThat(Run.of(over).cut("e1")).isEqualTo("2027-03-01");
        assertThat(Run.of(over).landing("a")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_74_an_empty_edit_takes_the_publishing_default() {
        ProjectInputs project = editor(8, 8, 8, 8, 8).fridays("2027-03-05");
        withEdit(project, 20);
        project.episode(new Inputs.Episode(
                "e1",
                Inputs.EpisodeKind.BUILD,
                day("2027-03-12"),
                Inputs.Range.EMPTY,
                "",
                0,
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                List.of()));
        assertThat(Run.of(project).cut("e1")).isEqualTo("2027-03-03");
    }

    @Test
    void rule_98_unfilmed_hours_do_not_hold_an_episode() {
        ProjectInputs project = editor(8, 8, 8, 8, 8).person("ben", "mason").fridays("2027-03-05");
        project.task("a")
                .exactly(6)
                .trades("mason")
                .camera(Inputs.Camera.OPERATOR, 30)
                .story(30);
        project.episode("e1", "2027-03-05", 4, "a");
        Run run = Run.of(project);
        assertThat(run.bank("2027-03-07")).isZero();
        assertThat(run.slot("2027-03-05")).isEqualTo(Outcome.Slot.OWN);
    }

    private static List<String> first(ProjectInputs project, int count) {
        return Arrays.stream(Run.of(project).outcome().slots)
                .limit(count)
                .mapToObj(Run::text)
                .toList();
    }

    private static ProjectInputs editor(double mon, double tue, double wed, double thu, double fri) {
        return project().person("ana", mon, tue, wed, thu, fri, 0, 0, "edit");
    }

    private static void slots(ProjectInputs project, String first, int everyWeeks, List<Integer> skip) {
        project.publishing(new Inputs.Publishing(
                5, day(first), everyWeeks, 20, 1, 14, Inputs.Range.of(480), Inputs.NO_LIMIT, 1, skip, List.of(), 3, 0));
    }

    private static void withEdit(ProjectInputs project, double hours) {
        Inputs.Publishing p = project.publishing();
        project.publishing(new Inputs.Publishing(
                5,
                p.first(),
                1,
                20,
                1,
                14,
                Inputs.Range.of(hours * 60),
                Inputs.NO_LIMIT,
                1,
                List.of(),
                List.of(),
                3,
                0));
    }

    /** Filmed and untold work of so many finished minutes. */
    private static void bankOf(ProjectInputs project, double minutes) {
        project.task("past")
                .hours(5, 10, 20)
                .camera(Inputs.Camera.FIXED, 0)
                .story(minutes)
                .logged("2027-02-01", "ana", Inputs.As.HANDS, 8, 0, true)
                .done("2027-02-01");
    }

    private static Inputs.Episode telling(String id, String slot, Inputs.Tell... tells) {
        return new Inputs.Episode(
                id,
                Inputs.EpisodeKind.BUILD,
                day(slot),
                Inputs.Range.of(240),
                "",
                0,
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                List.of(tells));
    }

    private static Inputs.Episode edited(String id, String slot, double hours, double logged) {
        return new Inputs.Episode(
                id,
                Inputs.EpisodeKind.BUILD,
                day(slot),
                Inputs.Range.of(hours * 60),
                "",
                (int) (logged * 60),
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                List.of());
    }
}
