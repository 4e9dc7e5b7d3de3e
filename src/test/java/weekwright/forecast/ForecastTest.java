package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.forecast.SmallProject.TODAY;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Money;
import weekwright.build.DaysOffStore;
import weekwright.build.StageStore;
import weekwright.build.TaskStore;
import weekwright.engine.simulate.Progress;
import weekwright.episodes.EpisodeStore;
import weekwright.funds.MaterialStore;

class ForecastTest {
    @TempDir
    Path folder;

    private SmallProject project;

    @BeforeEach
    void start() throws Exception {
        project = SmallProject.withOneTask(
                folder,
                "reserve",
                "100",
                "opening_cash",
                "1000",
                "model.prior_ratio",
                "1",
                "model.turnout",
                "1",
                "model.found_share",
                "0");
    }

    @AfterEach
    void close() {
        project.close();
    }

    private Forecast forecast() {
        return ForecastRun.run(project.basis(), 400, 1, 2, Progress.NONE).forecast();
    }

    private static List<String> fields(JsonNode node) {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void the_json_has_exactly_the_fields_of_the_format() throws Exception {
        project.add(MaterialStore.TABLE, "id=m1", "task=pit.1", "item=Pump", "price_likely=40", "lead_likely=5");
        project.add(EpisodeStore.TABLE, "id=E1", "title=Digging", "slot=2026-12-04");
        JsonNode json = new ObjectMapper().readTree(new ForecastJson(2).lines(forecast()));
        assertThat(fields(json))
                .containsExactly(
                        "asOf",
                        "trials",
                        "seed",
                        "engine",
                        "horizon",
                        "effortRatio",
                        "stages",
                        "tasks",
                        "episodes",
                        "slots",
                        "storyBank",
                        "weeksInHand",
                        "orders",
                        "cash");
        assertThat(fields(json.get("effortRatio"))).containsExactly("p10", "p50", "p90", "finishedTasks");
        JsonNode stage = json.get("stages").get(0);
        assertThat(fields(stage))
                .containsExactly(
                        "id", "name", "start", "landing", "workFirst", "heldBy", "rough", "materials", "joint");
        assertThat(fields(stage.get("landing"))).containsExactly("p10", "p50", "p80", "p90", "beyond");
        assertThat(fields(stage.get("heldBy").get(0))).containsExactly("kind", "what", "share");
        assertThat(fields(stage.get("rough"))).containsExactly("tasks", "hours");
        assertThat(fields(stage.get("materials")))
                .containsExactly("need", "needBy", "orderBy", "covered", "shortfall", "coveredFrom");
        assertThat(fields(stage.get("joint").get(0))).containsExactly("by", "held", "workFirst");
        assertThat(fields(stage.get("joint").get(0).get("held"))).containsExactly("landed", "kept", "both");
        assertThat(fields(stage.get("materials").get("shortfall"))).containsExactly("p50", "p90");
        assertThat(fields(json.get("tasks").get(0)))
                .containsExactly("id", "start", "landing", "critical", "correlation");
        assertThat(fields(json.get("episodes").get(0))).containsExactly("id", "slot", "onTime", "safeFrom", "lateBy");
        assertThat(fields(json.get("slots"))).containsExactly("expectedEmpty12", "noneEmpty12");
        assertThat(fields(json.get("storyBank").get(0))).containsExactly("week", "p10", "p50", "p90");
        assertThat(fields(json.get("orders").get(0)))
                .containsExactly("material", "orderBy", "needBy", "amount", "short");
        JsonNode cash = json.get("cash");
        assertThat(fields(cash))
                .containsExactly(
                        "now",
                        "available",
                        "weeks",
                        "weeksUnspent",
                        "putBy",
                        "supporters",
                        "underReserve",
                        "underZero",
                        "runway",
                        "runwayWithoutPledges");
        assertThat(fields(cash.get("weeks").get(0))).containsExactly("date", "p10", "p50", "p90");
        assertThat(fields(cash.get("weeksUnspent").get(0))).containsExactly("date", "p10", "p25", "p50", "p75", "p90");
        assertThat(fields(cash.get("putBy").get(0))).containsExactly("date", "p50");
        assertThat(fields(cash.get("underReserve").get(0))).containsExactly("month", "chance");
        assertThat(json.get("asOf").asText()).isEqualTo("2026-11-25");
        assertThat(json.get("horizon").asText()).isEqualTo("2029-11-25");
        assertThat(cash.get("now").asText()).isEqualTo("1000.00");
        assertThat(cash.get("underReserve").get(0).get("month").asText()).isEqualTo("2026-11");
        assertThat(json.get("orders").get(0).get("amount").asText()).isEqualTo("40.00");
    }

    @Test
    void a_forecast_comes_back_from_its_json_with_the_same_text() {
        project.add(EpisodeStore.TABLE, "id=E1", "title=Digging", "slot=2026-12-04");
        ForecastJson json = new ForecastJson(2);
        String text = json.text(forecast());
        assertThat(json.text(json.forecast(text))).isEqualTo(text);
    }

    /** 6, 8 and 14 hours by one person of eight hours a day: one day in some futures, two in nearly all (worked by hand). */
    @Test
    void a_day_of_work_lands_today_or_tomorrow_and_is_held_by_the_person() {
        Forecast.Stage stage = forecast().stage("pit").orElseThrow();
        assertThat(stage.start().p10()).contains(TODAY);
        assertThat(stage.landing().p10()).contains(TODAY);
        assertThat(stage.landing().p90()).contains(TODAY.plusDays(1));
        assertThat(stage.landing().beyond()).isZero();
        assertThat(stage.heldBy()).first().satisfies(held -> {
            assertThat(held.kind()).isEqualTo("person");
            assertThat(held.what()).isEqualTo("ilse");
        });
        assertThat(stage.heldBy().stream().mapToDouble(Forecast.HeldBy::share).sum())
                .isCloseTo(1, within(1e-9));
        assertThat(stage.workFirst()).isEqualTo(stage.landing());
    }

    @Test
    void rule_94_a_stage_that_is_done_has_its_past_date_in_every_percentile() {
        project.add(StageStore.TABLE, "id=roof", "name=Roof");
        project.add(
                TaskStore.TABLE,
                "id=roof.1",
                "stage=roof",
                "title=Laths",
                "kind=work",
                "likely=9",
                "started=2026-10-01",
                "done=2026-10-20");
        Forecast forecast = forecast();
        Forecast.Days past = Forecast.Days.past(LocalDate.of(2026, 10, 20));
        assertThat(forecast.stage("roof").orElseThrow().landing()).isEqualTo(past);
        assertThat(forecast.task("roof.1").orElseThrow().landing()).isEqualTo(past);
        assertThat(forecast.task("roof.1").orElseThrow().start())
                .isEqualTo(Forecast.Days.past(LocalDate.of(2026, 10, 1)));
    }

    @Test
    void rule_34_and_106_a_dropped_task_is_not_listed_and_a_stage_of_dropped_tasks_has_no_landing() {
        project.add(StageStore.TABLE, "id=roof", "name=Roof");
        project.add(
                TaskStore.TABLE,
                "id=roof.1",
                "stage=roof",
                "title=Laths",
                "kind=work",
                "likely=9",
                "dropped=2026-10-20");
        Forecast forecast = forecast();
        assertThat(forecast.tasks()).extracting(Forecast.Task::id).containsExactly("pit.1");
        assertThat(forecast.stage("roof").orElseThrow().landing()).isEqualTo(Forecast.Days.NONE);
        assertThat(forecast.stage("roof").orElseThrow().landing().some()).isFalse();
    }

    @Test
    void rule_7_what_never_lands_has_no_date_and_is_beyond_in_every_future() {
        project.add(TaskStore.TABLE, "id=pit.2", "stage=pit", "title=Forge", "kind=work", "likely=9", "trades=smith");
        Forecast.Days landing = forecast().stage("pit").orElseThrow().landing();
        assertThat(landing)
                .isEqualTo(
                        new Forecast.Days(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), 1));
    }

    @Test
    void rule_121_a_task_without_hours_is_counted_as_guessed() {
        project.add(TaskStore.TABLE, "id=pit.2", "stage=pit", "title=Gate", "kind=work");
        Forecast.Rough rough = forecast().stage("pit").orElseThrow().rough();
        assertThat(rough.tasks()).isEqualTo(1);
        assertThat(rough.hours().minutes()).isPositive();
    }

    @Test
    void rule_121_a_task_without_hours_of_which_the_crew_said_what_is_left_is_not_guessed() {
        project.add(TaskStore.TABLE, "id=pit.2", "stage=pit", "title=Gate", "kind=work", "left=6");
        Forecast.Rough rough = forecast().stage("pit").orElseThrow().rough();
        assertThat(rough.tasks()).isZero();
        assertThat(rough.hours().minutes()).isZero();
    }

    @Test
    void rule_92_an_order_has_to_go_out_before_its_need_by_day_less_the_high_lead_and_the_margin() {
        project.add(
                TaskStore.TABLE,
                "id=pit.2",
                "stage=pit",
                "title=Line",
                "kind=work",
                "likely=8",
                "not_before=2027-03-01");
        project.add(
                MaterialStore.TABLE,
                "id=m1",
                "task=pit.2",
                "item=Oak",
                "quantity=10",
                "waste=10",
                "price_likely=100",
                "lead_likely=20",
                "lead_high=30");
        Forecast.Order order = forecast().order("m1").orElseThrow();
        assertThat(order.needBy()).contains(LocalDate.of(2027, 3, 1));
        assertThat(order.orderBy()).contains(LocalDate.of(2027, 3, 1).minusDays(30 + 14));
        assertThat(order.amount()).isEqualTo(new Money(110_000));
        assertThat(order.shortBy()).isEqualTo(new Forecast.Shortfall(new Money(20_000), new Money(20_000)));
    }

    @Test
    void nobody_available_for_a_year_is_told_and_is_no_crash() {
        project.add(DaysOffStore.TABLE, "from=2026-11-25", "to=2027-11-25");
        assertThat(forecast().stage("pit").orElseThrow().landing().p10()).contains(LocalDate.of(2027, 11, 26));
    }

    @Test
    void the_same_seed_gives_the_same_json_on_one_thread_and_on_three() {
        ForecastJson json = new ForecastJson(2);
        String one = json.text(
                ForecastRun.run(project.basis(), 300, 7, 1, Progress.NONE).forecast());
        String three = json.text(
                ForecastRun.run(project.basis(), 300, 7, 3, Progress.NONE).forecast());
        assertThat(three).isEqualTo(one);
    }

    /** Spearman 1904 by hand: ranks 1 2 3 4 against 1 2 4 3: 1 - 6 * 2 / (4 * 15) = 0.8; ties share their mean rank. */
    @Test
    void the_rank_correlation_is_spearmans_and_the_largest_whole_number_ranks_last() {
        assertThat(new Correlation(new int[] {10, 20, 30, 40}).with(new int[] {1, 2, Integer.MAX_VALUE, 3}))
                .isCloseTo(0.8, within(1e-12));
        assertThat(new Correlation(new int[] {1, 1, 2, 2}).with(new int[] {5, 5, 9, 9}))
                .isCloseTo(1, within(1e-12));
        assertThat(new Correlation(new int[] {1, 2, 3}).with(new int[] {4, 4, 4}))
                .isZero();
    }
}
