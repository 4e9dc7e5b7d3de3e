package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Id;
import weekwright.base.Quantity;
import weekwright.build.CrewMemberStore;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.engine.Inputs;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.Progress;
import weekwright.testkit.SettableClock;

/** What replay takes for known on a past Friday, and the rivals it is held against. Cases worked by hand. */
class ReplayTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final LocalDate FRIDAY = LocalDate.of(2026, 11, 20);

    @TempDir
    Path folder;

    private static double likely(Replay.Past friday, String task) {
        return friday.basis().inputs().tasks().stream()
                        .filter(one -> one.id().equals(task))
                        .map(Inputs.Task::estimate)
                        .findFirst()
                        .orElseThrow()
                        .likely()
                / 60;
    }

    @Test
    void rule_2_a_friday_knows_the_estimates_that_stood_on_its_evening_and_a_thing_first_recorded_later_as_it_was_then()
            throws Exception {
        SettableClock clock = new SettableClock(Clock.fixed(Instant.parse("2026-11-18T08:00:00Z"), ZoneOffset.UTC));
        try (Db db = new Folder(folder).create(clock)) {
            weekwright.testkit.SmallProject.fill(db);
            // Wednesday 18 November: 30 hours; Friday afternoon 40; Tuesday 48
            clock.step(Duration.ofDays(2).plusHours(6));
            estimate(db, 40);
            clock.step(Duration.ofDays(4));
            estimate(db, 48);
            clock.step(Duration.ofDays(1));
            Replay.Asked asked = db.read(read -> Replay.ask(read, TODAY));
            List<Replay.Past> fridays = asked.fridays();
            // work began on Monday 5 October
            assertThat(fridays.get(0).basis().asOf()).isEqualTo(LocalDate.of(2026, 10, 9));
            assertThat(likely(fridays.get(0), "weir.2")).isEqualTo(30);
            assertThat(likely(fridays.get(fridays.size() - 2), "weir.2")).isEqualTo(30);
            assertThat(fridays.get(fridays.size() - 1).basis().asOf()).isEqualTo(FRIDAY);
            assertThat(likely(fridays.get(fridays.size() - 1), "weir.2")).isEqualTo(40);
            assertThat(asked.now().inputs().tasks().stream()
                            .filter(task -> task.id().equals("weir.2"))
                            .mapToDouble(task -> task.estimate().likely() / 60)
                            .findFirst())
                    .hasValue(48);
            // since when estimates are known is said
            assertThat(asked.estimatesFrom()).contains(LocalDate.of(2026, 11, 18));
            // nor does a Friday know hours of a later day
            assertThat(fridays.get(0).basis().inputs().tasks().get(0).log()).hasSize(2);
        }
    }

    private static void estimate(Db db, int hours) throws Stale {
        db.write("ilse", write -> {
            Stored<Task> sill = TaskStore.TABLE.find(write, new Id("weir.2")).orElseThrow();
            return TaskStore.TABLE.update(
                    write,
                    sill.row(),
                    sill.version(),
                    TaskStore.TABLE.shape().with(sill.value(), "likely", Optional.of(Quantity.of(hours))));
        });
    }

    /** Ilse states 44 hours a week. */
    private SmallProject project(String started, String done) throws Exception {
        return new SmallProject(folder)
                .add(
                        CrewMemberStore.TABLE,
                        "id=ilse name=Ilse trades=joiner mon=8 tue=8 wed=8 thu=8 fri=8 sat=4".split(" "))
                .add(StageStore.TABLE, "id=pit name=Pit order=1".split(" "))
                .add(StageStore.TABLE, "id=roof name=Roof order=2".split(" "))
                .add(
                        TaskStore.TABLE,
                        "id=pit.1",
                        "stage=pit",
                        "title=Dig",
                        "kind=work",
                        "likely=40",
                        "started=" + started,
                        "done=" + done)
                .add(TaskStore.TABLE, "id=pit.2", "stage=pit", "title=Wall", "kind=work", "likely=88")
                .add(TaskStore.TABLE, "id=roof.1", "stage=roof", "title=Rafters", "kind=work", "likely=44");
    }

    private static Map<String, TrackRecord.Stage> lastFriday(SmallProject project) {
        Replay.Asked asked = project.db().read(read -> Replay.ask(read, TODAY));
        Replay.Past last = asked.fridays().get(asked.fridays().size() - 1);
        assertThat(last.basis().asOf()).isEqualTo(FRIDAY);
        TrackRecord record =
                Replay.run(new Replay.Asked(asked.now(), List.of(last), asked.estimatesFrom()), 1, Progress.NONE);
        return record.fridays().get(0).stages().stream().collect(Collectors.toMap(TrackRecord.Stage::id, one -> one));
    }

    @Test
    void rule_97_the_rivals_divide_the_likely_hours_left_of_stages_up_to_this_one_by_a_rate() throws Exception {
        try (SmallProject project = project("2026-10-12", "2026-10-30")) {
            Map<String, TrackRecord.Stage> stages = lastFriday(project);
            // 88 hours at 44 a week, and with the roof's 44 three weeks
            assertThat(stages.get("pit").likely()).isEqualTo(FRIDAY.plusDays(14));
            assertThat(stages.get("roof").likely()).isEqualTo(FRIDAY.plusDays(21));
            // 40 hours were finished in the last eight weeks: 5 a week; 88 / 5 = 17.6 weeks, 132 / 5 = 26.4
            assertThat(stages.get("pit").velocity()).isEqualTo(FRIDAY.plusDays(124));
            assertThat(stages.get("roof").velocity()).isEqualTo(FRIDAY.plusDays(185));
        }
    }

    @Test
    void rule_97_with_nothing_finished_in_eight_weeks_the_pace_is_that_of_the_whole_record() throws Exception {
        try (SmallProject project = project("2026-07-03", "2026-07-31")) {
            Map<String, TrackRecord.Stage> stages = lastFriday(project);
            // 40 hours in the 20 weeks since 3 July: 2 a week; 44 weeks
            assertThat(stages.get("pit").velocity()).isEqualTo(FRIDAY.plusDays(7 * 44));
        }
    }

    @Test
    void rule_97_the_third_rival_is_the_plan_as_one_date() throws Exception {
        try (SmallProject project = project("2026-10-12", "2026-10-30")) {
            Map<String, TrackRecord.Stage> stages = lastFriday(project);
            Replay.Asked asked = project.db().read(read -> Replay.ask(read, TODAY));
            Inputs inputs =
                    asked.fridays().get(asked.fridays().size() - 1).basis().inputs();
            int planned = Planner.plan(inputs, Forecasts.SEED, 10).landing().get(1);
            assertThat(stages.get("pit").plan()).isEqualTo(LocalDate.ofEpochDay(planned));
            assertThat(stages.get("pit").landed()).isEmpty();
        }
    }

    @Test
    void rule_2_a_task_put_down_later_is_not_known_on_a_friday_before() throws Exception {
        try (SmallProject project = project("2026-10-12", "2026-10-30")) {
            project.add(
                    TaskStore.TABLE,
                    "id=pit.3",
                    "stage=pit",
                    "title=Shore",
                    "kind=work",
                    "likely=8",
                    "added=2026-11-21");
            List<String> then =
                    project
                            .db()
                            .read(read -> Replay.ask(read, TODAY))
                            .fridays()
                            .get(5)
                            .basis()
                            .inputs()
                            .tasks()
                            .stream()
                            .map(Inputs.Task::id)
                            .toList();
            assertThat(then).containsExactly("pit.1", "pit.2", "roof.1");
            List<Task> now = project.db()
                    .read(read -> TaskStore.TABLE.list(read).stream()
                            .map(Stored::value)
                            .toList());
            assertThat(now).hasSize(4);
        }
    }
}
