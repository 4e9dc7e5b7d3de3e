package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.ProjectInputs.day;
import static weekwright.testkit.ProjectInputs.project;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.Run;

/** Rules 75, 89, 92 and 106: what becomes of the trials' numbers. */
class ForecastRulesTest {
    private static final int TRIALS = 400;

    @TempDir
    Path temp;

    @Test
    void rule_75_on_time_is_the_share_cut_by_the_early_day_and_safe_the_first_slot_kept_in_four_of_five()
            throws Exception {
        // ten hours of edit with a wide range, four hours a day from Monday 1 March; the slot is Friday 5 March
        ProjectInputs project =
                project().person("ana", 4, 4, 4, 4, 4, 0, 0, "edit").fridays("2027-03-05");
        project.episode(new Inputs.Episode(
                "e1",
                Inputs.EpisodeKind.BUILD,
                day("2027-03-05"),
                ProjectInputs.range(240, 900, 4000),
                "",
                0,
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                List.of()));
        Run run = Run.of(project, TRIALS);
        Forecast.Episode episode = forecast(run).episodes().get(0);
        int[] cut = run.outcome().episodeCut[0].clone();
        double onTime =
                Arrays.stream(cut).filter(each -> each <= day("2027-03-04")).count() / (double) TRIALS;
        assertThat(onTime).isBetween(0.1, 0.9);
        assertThat(episode.onTime()).contains(onTime);
        Arrays.sort(cut);
        // the 320th of 400; the slot's early day is the day before it
        int safe = cut[319];
        LocalDate slot = LocalDate.ofEpochDay(day("2027-03-05"));
        while (slot.toEpochDay() - 1 < safe) {
            slot = slot.plusWeeks(1);
        }
        assertThat(episode.safeFrom()).contains(slot);
    }

    @Test
    void rule_75_the_next_twelve_slots_are_those_after_the_as_of_day() throws Exception {
        ProjectInputs project = project().today("2027-03-05").fridays("2027-01-01");
        Forecast forecast = forecast(Run.of(project));
        assertThat(forecast.slots()).isEqualTo(new Forecast.Slots(12, 0));
        // today's slot is served by what is cut; it is not one of the twelve
        project.episode(new Inputs.Episode(
                "e1",
                Inputs.EpisodeKind.BUILD,
                day("2027-03-05"),
                Inputs.Range.of(60),
                "",
                0,
                day("2027-02-20"),
                day("2027-02-20"),
                Inputs.NONE,
                List.of()));
        assertThat(forecast(Run.of(project)).slots()).isEqualTo(new Forecast.Slots(12, 0));
        project.episode(new Inputs.Episode(
                "e2",
                Inputs.EpisodeKind.BUILD,
                day("2027-03-12"),
                Inputs.Range.of(60),
                "",
                0,
                day("2027-02-20"),
                day("2027-02-20"),
                Inputs.NONE,
                List.of()));
        assertThat(forecast(Run.of(project)).slots()).isEqualTo(new Forecast.Slots(11, 0));
    }

    @Test
    void rule_89_landings_are_held_for_funds_and_the_chances_of_going_under_are_work_first() throws Exception {
        ProjectInputs project =
                project().person("ana", 8, 8, 8, 8, 8, 8, 8).cash(0, 0).material("oak", "a", 5000, 3);
        project.task("a").exactly(8);
        project.regular("gift", 5000, Inputs.Every.YEAR, "2027-04-01", "");
        Forecast forecast = forecast(Run.of(project, 4));
        Forecast.Stage stage = forecast.stages().get(0);
        assertThat(stage.landing().p50()).contains(LocalDate.parse("2027-04-04"));
        assertThat(stage.workFirst().p50()).contains(LocalDate.parse("2027-03-04"));
        assertThat(forecast.cash().underZero().get(0).chance()).isEqualTo(1);
        assertThat(forecast.cash().weeks().get(0).p10().minor()).isZero();
        // the last day before the balance of 4 March goes under
        assertThat(forecast.cash().runway()).contains(LocalDate.parse("2027-03-03"));
    }

    @Test
    void rule_61_what_an_order_is_expected_to_cost_is_rounded_half_up_as_its_stages_need() throws Exception {
        ProjectInputs project = project().person("ana");
        project.task("a").stage("pit").hours(8, 8, 8);
        project.material(new Inputs.Material(
                "oak",
                "a",
                "",
                3,
                15,
                Inputs.Range.of(1010),
                Inputs.Source.BOUGHT,
                0,
                Inputs.Range.of(5),
                0,
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                0,
                ""));
        Forecast forecast = forecast(Run.of(project));
        // 3 × 1.15 × 1010 = 3484.5
        assertThat(forecast.orders().get(0).amount().minor()).isEqualTo(3485);
        assertThat(forecast.stage("pit").orElseThrow().materials().need().minor())
                .isEqualTo(3485);
    }

    @Test
    void rule_137_what_is_the_crews_own_is_laid_down_no_earlier_for_deliveries_that_come_late() throws Exception {
        ProjectInputs project =
                project().person("ana", 8, 8, 8, 8, 8, 8, 8).cash(100_000, 0).chain("cure", "a");
        project.task("cure")
                .days(100)
                .task("a")
                .exactly(8)
                .task("b")
                .hours(8, 8, 8)
                .done("2027-02-20");
        for (int order = 0; order < 6; order++) {
            project.material(new Inputs.Material(
                    "late" + order,
                    "b",
                    "",
                    1,
                    0,
                    Inputs.Range.of(2000),
                    Inputs.Source.BOUGHT,
                    0,
                    ProjectInputs.range(8, 10, 15),
                    0,
                    ProjectInputs.day("2027-01-04"),
                    Inputs.NONE,
                    ProjectInputs.day("2027-02-15"),
                    0,
                    ""));
        }
        project.material(new Inputs.Material(
                "oak",
                "a",
                "",
                1,
                0,
                Inputs.Range.ZERO,
                Inputs.Source.OWN,
                0,
                ProjectInputs.range(20, 20, 40),
                0,
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                0,
                ""));
        Forecast.Order order = forecast(Run.of(project, 50)).orders().get(0);
        assertThat(order.needBy()).contains(LocalDate.parse("2027-06-09"));
        assertThat(order.orderBy()).contains(LocalDate.parse("2027-04-16"));
    }

    @Test
    void rule_92_order_by_is_the_need_day_less_the_high_lead_less_the_margin() throws Exception {
        ProjectInputs project =
                project().person("ana", 8, 8, 8, 8, 8, 8, 8).cash(100_000, 0).chain("cure", "a");
        project.task("cure").days(100).task("a").exactly(8);
        project.material(new Inputs.Material(
                "oak",
                "a",
                "",
                1,
                0,
                Inputs.Range.of(2000),
                Inputs.Source.BOUGHT,
                0,
                ProjectInputs.range(20, 20, 40),
                0,
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                0,
                ""));
        Forecast.Order order = forecast(Run.of(project, 50)).orders().get(0);
        assertThat(order.needBy()).contains(LocalDate.parse("2027-06-09"));
        // 40 and 14 days before it
        assertThat(order.orderBy()).contains(LocalDate.parse("2027-04-16"));
    }

    @Test
    void rule_106_all_tasks_not_dropped_stand_in_the_order_of_the_file_done_ones_with_their_dates() throws Exception {
        ProjectInputs project = project().person("ana");
        project.task("z").exactly(8);
        project.task("gone").hours(1, 2, 3).dropped("2027-02-20");
        project.task("done").hours(1, 2, 3).started("2027-02-10").done("2027-02-11");
        project.task("a").exactly(8);
        Forecast forecast = forecast(Run.of(project, 5));
        assertThat(forecast.tasks().stream().map(Forecast.Task::id).limit(3)).containsExactly("z", "done", "a");
        Forecast.Task done = forecast.task("done").orElseThrow();
        assertThat(done.start()).isEqualTo(Forecast.Days.past(LocalDate.parse("2027-02-10")));
        assertThat(done.landing()).isEqualTo(Forecast.Days.past(LocalDate.parse("2027-02-11")));
    }

    @Test
    void rule_7_and_90_nothing_landed_has_no_date_and_its_share_is_beyond() throws Exception {
        ProjectInputs project = project();
        project.task("a").stage("pit").hours(1, 2, 3);
        Forecast forecast = forecast(Run.of(project, 5));
        Optional<LocalDate> none = Optional.empty();
        assertThat(forecast.stages().get(0).landing()).isEqualTo(new Forecast.Days(none, none, none, none, 1));
        assertThat(forecast.cash().runway()).isEmpty();
        assertThat(forecast.cash().weeks().get(0).date()).isEqualTo(LocalDate.parse("2027-03-07"));
    }

    @Test
    void rule_110_a_first_look_of_a_thousand_futures_comes_before_ten_thousand() throws Exception {
        assertThat(Forecasts.FIRST_LOOK).isEqualTo(1000);
        assertThat(Forecasts.TRIALS).isEqualTo(10_000);
        try (SmallProject small = SmallProject.withOneTask(temp.resolve("p"));
                Forecasts forecasts = new Forecasts(small.db(), SmallProject.CLOCK, 1, 30, 90)) {
            assertThat(forecasts.current(SmallProject.TODAY).state()).isEqualTo(Forecasts.State.RUNNING);
            forecasts.await();
            Forecasts.Look look = forecasts.current(SmallProject.TODAY);
            assertThat(look.state()).isEqualTo(Forecasts.State.READY);
            assertThat(look.shown().orElseThrow().firstLook()).isFalse();
            assertThat(look.shown().orElseThrow().forecast().trials()).isEqualTo(90);
        }
    }

    private Forecast forecast(Run run) throws Exception {
        try (SmallProject small = new SmallProject(temp.resolve("p" + System.nanoTime()))) {
            Outcome outcome = run.outcome();
            return ForecastMaker.of(new Basis(run.inputs(), small.basis().names(), "EUR", 1), outcome, 1);
        }
    }
}
