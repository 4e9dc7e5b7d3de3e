package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.testkit.ProjectInputs.project;

import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.engine.Inputs;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.Progress;
import weekwright.engine.simulate.Setup;
import weekwright.testkit.ProjectInputs;

/** Cases worked by hand; the as-of day is Monday 2027-03-01, ana and ben work eight hours from Monday to Friday. */
class StoryWorkTest {
    private static StoryWork of(ProjectInputs project, int weeksInHand) {
        Inputs inputs = project.inputs();
        // in the order in which they are written down
        List<String> ranks = inputs.tasks().stream().map(Inputs.Task::id).toList();
        Plan plan = Planner.follow(new Setup(inputs), new Inputs.Kept(ranks, List.of()));
        return StoryWork.of(inputs, 7, plan, weeksInHand, 20, 1, Progress.NONE);
    }

    private static ProjectInputs mill() {
        ProjectInputs project = project().person("ana").fridays("2027-03-05");
        project.stage(new Inputs.Stage("pit", 1, 1, false, Inputs.Range.EMPTY));
        project.stage(new Inputs.Stage("gate", 2, 1, false, Inputs.Range.EMPTY));
        project.stage(new Inputs.Stage("lathe", 3, 1, true, Inputs.Range.EMPTY));
        project.task("a").stage("pit").exactly(40);
        return project;
    }

    private static List<String> tasks(StoryWork work) {
        return work.rows().stream().map(StoryWork.Row::task).toList();
    }

    @Test
    void a_day_of_story_work_before_a_week_of_another_stage_puts_that_off_over_the_week_end() {
        ProjectInputs project = mill();
        // the pit lands on Monday the 8th and no longer on Friday the 5th; that the gate comes a week sooner does not
        // make up for it
        project.task("b")
                .stage("gate")
                .exactly(8)
                .camera(Inputs.Camera.FIXED, 0)
                .story(12);
        StoryWork work = of(project, 0);
        assertThat(work.rows()).hasSize(1);
        StoryWork.Row row = work.rows().get(0);
        assertThat(row.task()).isEqualTo("b");
        assertThat(row.minutes()).isCloseTo(12, within(1e-9));
        assertThat(row.delayDays()).isCloseTo(3, within(1e-9));
        assertThat(row.stage()).isEqualTo("pit");
        assertThat(row.free()).isFalse();
        assertThat(work.version()).isEqualTo(7);
        assertThat(work.futures()).isEqualTo(20);
    }

    @Test
    void beside_the_build_it_only_delays_and_the_most_minutes_for_a_day_come_first() {
        ProjectInputs project = mill();
        // each puts the pit off from Friday the 5th to Monday the 8th: three days
        project.task("few")
                .stage("lathe")
                .exactly(8)
                .camera(Inputs.Camera.FIXED, 0)
                .story(6);
        project.task("many")
                .stage("lathe")
                .exactly(8)
                .camera(Inputs.Camera.FIXED, 0)
                .story(15);
        // and a week of it puts it off to Friday the 12th: seven days, 4 minutes a day
        project.task("long")
                .stage("of-long")
                .exactly(40)
                .camera(Inputs.Camera.FIXED, 0)
                .story(28);
        project.stage(new Inputs.Stage("of-long", 4, 1, true, Inputs.Range.EMPTY));
        StoryWork work = of(project, 0);
        assertThat(tasks(work)).containsExactly("many", "long", "few");
        assertThat(work.rows().get(0).delayDays()).isCloseTo(3, within(1e-9));
        assertThat(work.rows().get(1).delayDays()).isCloseTo(7, within(1e-9));
    }

    @Test
    void rule_72_the_half_of_a_task_that_was_done_unfilmed_gives_no_minutes() {
        ProjectInputs project = mill();
        project.task("b")
                .stage("gate")
                .hours(16, 16, 16)
                .logged("2027-02-26", "ana", 8)
                .camera(Inputs.Camera.FIXED, 0)
                .story(12);
        assertThat(of(project, 0).rows()).hasSize(1);
        assertThat(of(project, 0).rows().get(0).minutes()).isCloseTo(6, within(1e-9));
    }

    @Test
    void work_that_only_another_can_do_holds_nothing_up_and_comes_first() {
        ProjectInputs project =
                project().person("ana", "mason").person("ben", "smith").fridays("2027-03-05");
        project.task("a").trades("mason").exactly(40);
        project.task("slow")
                .trades("mason")
                .exactly(8)
                .camera(Inputs.Camera.FIXED, 0)
                .story(60);
        project.task("free")
                .trades("smith")
                .exactly(8)
                .camera(Inputs.Camera.FIXED, 0)
                .story(5);
        StoryWork work = of(project, 0);
        assertThat(tasks(work)).containsExactly("free", "slow");
        assertThat(work.rows().get(1).delayDays()).isCloseTo(3, within(1e-9));
        assertThat(work.rows().get(0).free()).isTrue();
    }

    @Test
    void what_cannot_begin_this_week_is_told_already_or_is_not_filmed_is_left_out() {
        ProjectInputs project = mill();
        project.task("after").exactly(8).camera(Inputs.Camera.FIXED, 0).story(10);
        project.link("after", "a", 1, 0);
        project.task("told").exactly(8).camera(Inputs.Camera.FIXED, 0).story(10);
        project.task("unfilmed").exactly(8).story(10);
        project.task("half").exactly(8).camera(Inputs.Camera.FIXED, 0).story(10);
        project.episode(new Inputs.Episode(
                "e",
                Inputs.EpisodeKind.BUILD,
                ProjectInputs.day("2027-04-02"),
                Inputs.Range.of(480),
                "",
                0,
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                List.of(new Inputs.Tell("told", 1), new Inputs.Tell("half", 0.5))));
        StoryWork work = of(project, 0);
        assertThat(tasks(work)).containsExactly("half");
        assertThat(work.rows().get(0).minutes()).isCloseTo(5, within(1e-9));
    }

    @Test
    void rule_126_work_with_somebody_beside_or_that_happens_once_is_never_proposed() {
        ProjectInputs project = mill().person("ben", "camera");
        project.task("beside")
                .exactly(8)
                .camera(Inputs.Camera.FIXED, 0)
                .story(50)
                .company(Inputs.Company.BY);
        project.task("once").exactly(8).camera(Inputs.Camera.ONCE, 0).story(50);
        project.task("call").exactly(8).camera(Inputs.Camera.FIXED, 0).story(5).company(Inputs.Company.CALL);
        assertThat(tasks(of(project, 0))).containsExactly("call");
    }

    @Test
    void the_story_in_hand_is_thin_under_the_floor_of_the_settings() {
        assertThat(of(mill(), 2).thin()).isTrue();
        assertThat(of(mill(), 3).thin()).isFalse();
    }
}
