package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.forecast.SmallProject.CLOCK;
import static weekwright.forecast.SmallProject.TODAY;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.function.Consumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import weekwright.build.LinkStore;
import weekwright.build.TaskStore;
import weekwright.engine.explain.Cause;
import weekwright.engine.explain.WhatMoved;
import weekwright.testkit.Requirement;

@Timeout(120)
class ForecastsTest {
    @TempDir
    Path folder;

    private SmallProject project;
    private Forecasts forecasts;

    @BeforeEach
    void start() throws Exception {
        project = SmallProject.withOneTask(folder);
        forecasts = new Forecasts(project.db(), CLOCK, 2, 20, 60);
    }

    @AfterEach
    void close() {
        forecasts.close();
        project.close();
    }

    private Forecasts.Look waited(LocalDate day) throws InterruptedException {
        forecasts.current(day);
        forecasts.await();
        return forecasts.current(day);
    }

    private SavedForecast saved(LocalDate day) {
        return project.db().read(read -> SavedForecastStore.newest(read, day)).orElseThrow();
    }

    @Test
    void the_first_question_is_answered_at_once_with_nothing_and_later_with_the_whole_forecast() throws Exception {
        Forecasts.Look first = forecasts.current(TODAY);
        assertThat(first.state()).isEqualTo(Forecasts.State.RUNNING);
        Forecasts.Look look = waited(TODAY);
        assertThat(look.state()).isEqualTo(Forecasts.State.READY);
        assertThat(look.shown().orElseThrow().firstLook()).isFalse();
        assertThat(look.shown().orElseThrow().forecast().trials()).isEqualTo(60);
        assertThat(look.shown().orElseThrow().version()).isEqualTo(project.db().version());
        assertThat(look.shown().orElseThrow().names().task("pit.1")).isEqualTo("Dig");
    }

    @Test
    @Requirement({"2.4.1", "15.2.2"})
    void the_same_question_again_gets_the_kept_forecast() throws Exception {
        Forecasts.Shown once = waited(TODAY).shown().orElseThrow();
        assertThat(forecasts.current(TODAY).shown().orElseThrow()).isSameAs(once);
    }

    @Test
    @Requirement({"15.1.3"})
    void a_change_is_answered_by_the_last_forecast_until_the_new_one_is_there() throws Exception {
        Forecasts.Shown old = waited(TODAY).shown().orElseThrow();
        project.add(TaskStore.TABLE, "id=pit.2", "stage=pit", "title=Wall", "kind=work", "likely=40");
        Forecasts.Look look = waited(TODAY);
        assertThat(look.state()).isEqualTo(Forecasts.State.READY);
        assertThat(look.shown().orElseThrow().version()).isEqualTo(old.version() + 1);
        assertThat(look.shown().orElseThrow().forecast().task("pit.2")).isPresent();
    }

    @Test
    void rule_52_the_first_forecast_of_a_day_is_saved_with_its_ranks_and_inputs_and_raises_no_version()
            throws Exception {
        long version = project.db().version();
        waited(TODAY);
        assertThat(project.db().version()).isEqualTo(version);
        SavedForecast saved = saved(TODAY);
        assertThat(saved.day()).isEqualTo(TODAY);
        assertThat(saved.trials()).isEqualTo(60);
        assertThat(saved.unpackedInputs().tasks()).hasSize(1);
        assertThat(saved.forecast(2).stage("pit")).isPresent();
        assertThat(project.basis().inputs().kept().ranks()).containsExactly("pit.1");
        project.add(TaskStore.TABLE, "id=pit.2", "stage=pit", "title=Wall", "kind=work", "likely=40");
        waited(TODAY);
        assertThat(saved(TODAY).unpackedInputs().tasks()).hasSize(1);
    }

    @Test
    void what_was_said_a_week_before_is_the_saved_forecast_nearest_to_seven_days_back() throws Exception {
        waited(TODAY.minusDays(9));
        waited(TODAY.minusDays(6));
        waited(TODAY.minusDays(1));
        assertThat(forecasts.earlier().orElseThrow().day()).isEqualTo(TODAY.minusDays(9));
        waited(TODAY);
        assertThat(forecasts.earlier().orElseThrow().day()).isEqualTo(TODAY.minusDays(6));
    }

    @Test
    void why_the_dates_moved_since_then_is_known_once_the_forecast_stands() throws Exception {
        waited(TODAY.minusDays(7));
        assertThat(forecasts.moved()).isEmpty();
        project.add(TaskStore.TABLE, "id=pit.2", "stage=pit", "title=Wall", "kind=work", "likely=40");
        waited(TODAY);
        Moved moved = forecasts.moved().orElseThrow();
        assertThat(moved.since()).isEqualTo(TODAY.minusDays(7));
        WhatMoved.Stage pit = moved.stage("pit").orElseThrow();
        assertThat(pit.of(Cause.PLAN)).isGreaterThan(3);
        assertThat(pit.of(Cause.WORK)).isGreaterThan(3);
        assertThat(pit.of(Cause.ESTIMATES)).isZero();
        assertThat(Arrays.stream(Moved.wholeDays(pit)).sum()).isEqualTo(pit.now() - pit.then());
        MovedStore.Kept kept =
                project.db().read(read -> MovedStore.find(read, "pit", TODAY)).orElseThrow();
        assertThat(kept.since()).isEqualTo(TODAY.minusDays(7));
        assertThat(kept.days()).isEqualTo(Moved.wholeDays(pit));
    }

    @Test
    void after_a_restart_the_saved_forecast_is_shown_without_running_again() throws Exception {
        waited(TODAY);
        forecasts.close();
        forecasts = new Forecasts(project.db(), CLOCK, 2, 20, 60);
        Forecasts.Look look = waited(TODAY);
        assertThat(look.state()).isEqualTo(Forecasts.State.READY);
        assertThat(look.shown().orElseThrow().plan()).isEmpty();
    }

    @Test
    void a_forecast_that_fails_says_why_and_the_last_good_one_stays() throws Exception {
        waited(TODAY);
        project.add(TaskStore.TABLE, "id=pit.2", "stage=pit", "title=Wall", "kind=work", "likely=40");
        project.add(LinkStore.TABLE, "task=pit.1", "after=pit.2");
        project.add(LinkStore.TABLE, "task=pit.2", "after=pit.1");
        Forecasts.Look look = waited(TODAY);
        assertThat(look.state()).isEqualTo(Forecasts.State.FAILED);
        assertThat(look.trouble()).contains("pit.1", "pit.2");
        assertThat(look.shown().orElseThrow().forecast().asOf()).isEqualTo(TODAY);
    }

    /**
     * Does something in the midst of a run: while the monitor is held nothing more is told or shown, so the run cannot end. Where one
     * ended before it was seen, that of the next day is tried.
     *
     * @return the day of the run
     */
    private static LocalDate inTheMidst(Forecasts running, Consumer<LocalDate> then) {
        LocalDate day = TODAY;
        while (true) {
            synchronized (running) {
                Forecasts.Look look = running.current(day);
                if (look.state() == Forecasts.State.RUNNING && look.done() > 0 && look.done() < look.of()) {
                    then.accept(day);
                    return day;
                }
                day = look.state() == Forecasts.State.READY ? day.plusDays(1) : day;
            }
            Thread.onSpinWait();
        }
    }

    private boolean isSaved(LocalDate day) {
        return project.db().read(read -> SavedForecastStore.has(read, day));
    }

    @Test
    void a_run_that_was_stopped_is_given_up_and_begins_again_only_when_it_is_wanted() throws Exception {
        try (Forecasts running = new Forecasts(project.db(), CLOCK, 2, 20, 3000)) {
            LocalDate day = inTheMidst(running, running::stop);
            running.await();
            assertThat(running.current(day).state()).isEqualTo(Forecasts.State.STOPPED);
            assertThat(running.current(day).key()).endsWith("-stopped");
            running.await();
            assertThat(isSaved(day)).isFalse();
            running.draw(day);
            running.await();
            assertThat(running.current(day).state()).isEqualTo(Forecasts.State.READY);
            assertThat(isSaved(day)).isTrue();
        }
    }

    @Test
    void a_run_is_given_up_for_a_newer_change_and_a_change_draws_what_was_stopped() throws Exception {
        try (Forecasts running = new Forecasts(project.db(), CLOCK, 2, 20, 3000)) {
            LocalDate day = inTheMidst(running, now -> wall("pit.2"));
            running.await();
            // the first forecast that is finished on a day is saved: this one knows the change
            assertThat(saved(day).projectVersion()).isEqualTo(project.db().version());
            LocalDate next = day.plusDays(1);
            synchronized (running) {
                running.current(next);
                running.stop(next);
            }
            running.await();
            assertThat(running.current(next).state()).isEqualTo(Forecasts.State.STOPPED);
            wall("pit.3");
            assertThat(running.current(next).state()).isEqualTo(Forecasts.State.RUNNING);
            running.await();
            assertThat(running.current(next).state()).isEqualTo(Forecasts.State.READY);
        }
    }

    private void wall(String id) {
        project.add(TaskStore.TABLE, "id=" + id, "stage=pit", "title=Wall", "kind=work", "likely=40");
    }
}
