package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.forecast.SavedForecast;
import weekwright.forecast.SavedForecastStore;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildStagePageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_stage_shows_tasks_with_tallies_materials_and_what_it_cost() {
        Visitor.Reply page = SERVER.as("ilse").get("/build/stages/gate");
        assertThat(page.page().select("h1").text()).isEqualTo("Sluice gate");
        assertThat(page.page().select(".tasks tbody th a").eachText())
                .containsExactly("Plane the gate boards", "Hang the gate", "Forge the straps");
        assertThat(page.page().select(".tasks svg.tally")).hasSize(3);
        assertThat(page.page().select(".materials a").eachText()).containsExactlyInAnyOrder("Oak boards", "Flat iron");
        assertThat(page.page().select("#cost .ledger tr").eachText())
                .containsExactly(
                        "Estimate €355.00",
                        "Spent so far €0.00",
                        "Committed €0.00",
                        "Left to order €355.00",
                        "Comes to €355.00");
    }

    @Test
    void its_timber_has_the_same_days_as_a_table() {
        try (ServerFixture server = ServerFixture.small().drawn()) {
            Visitor.Reply page = server.as("ilse").get("/build/stages/weir");
            assertThat(page.page().select(".strip svg").eachAttr("class"))
                    .containsExactly("stage-strip wide", "stage-strip medium", "stage-strip narrow");
            assertThat(page.page()
                            .select("details[data-figures=stage-progress] tr")
                            .eachText())
                    .startsWith("What Day", "Begun 5 Oct")
                    .anyMatch(row -> row.matches("All done, one chance in ten by \\d+ \\w{3}( 2027)?"))
                    .anyMatch(row -> row.matches("All done, even chances by \\d+ \\w{3}( 2027)?"))
                    .anyMatch(row -> row.matches(".+ about \\d+ \\w{3}( 2027)?"));
        }
    }

    @Test
    void of_two_tasks_with_one_title_the_table_says_which_is_done() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            String done =
                    ilse.get("/build/tasks/weir.1/edit").page().select("#title").val();
            ilse.form(ilse.get("/build/tasks/weir.2/edit")).with("title", done).send();
            server.drawn();
            assertThat(ilse
                            .get("/build/stages/weir")
                            .page()
                            .select("details[data-figures=stage-progress] tr")
                            .eachText()
                            .stream()
                            .filter(row -> row.startsWith(done))
                            .map(row -> row.substring(done.length()).replaceAll("\\d+ \\w{3}( 2027)?$", "…")))
                    .containsExactly(" done …", " about …");
        }
    }

    @Test
    void a_stage_that_is_not_there_is_said() {
        Visitor.Reply page = SERVER.as("ilse").get("/build/stages/roof");
        assertThat(page.status()).isEqualTo(404);
        assertThat(page.text()).contains("There is no stage roof.");
    }

    @Test
    void several_tasks_are_done_on_one_day_or_none_of_them() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply page = ilse.get("/build/stages/gate");
            Visitor.Reply none = ilse.form(page, "form#close").press("close");
            assertThat(none.troubles()).containsExactly("no task is ticked; tick those that are done");
            Visitor.Reply refused = ilse.form(none, "form#close")
                    .with("task", "gate.1", "gate.2")
                    .press("close");
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.troubles())
                    .containsExactly(
                            "\"Hang the gate\" cannot be done before what it follows: Lime cures and Forge the"
                                    + " straps are not done; mark that done first, or log the hours worked on this",
                            "\"The gate drops home\" is a must-have shot, happens once and is not captured; tick it off"
                                    + " first, or say so where \"Hang the gate\" is marked done");
            assertThat(refused.page().select("input[name=task][checked]").eachAttr("value"))
                    .containsExactly("gate.1", "gate.2");
            assertThat(OakMill.task(server.db(), "gate.1").done()).isEmpty();
            Visitor.Reply done = ilse.follow(ilse.form(refused, "form#close")
                    .with("task", "gate.3", "gate.1")
                    .with("day", "2026-11-24")
                    .press("close"));
            assertThat(done.page().select(".flash p").text())
                    .isEqualTo("Plane the gate boards and Forge the straps are done.");
        }
    }

    /**
     * Worked by hand. The plan: 16 h by 14 October, 30 h by 28 October, from 5 October on, so after each week 0, 16, 16, 46 hours.
     * Done 16 h, and 13.5 of 30 h with 16.5 left: earned 29.5 for 33 logged. ES = 3 + 13.5/30 = 3.45 weeks of 51 days = 7.29 weeks.
     */
    @Test
    void earned_value_and_earned_schedule_are_folded_away_and_compare_with_the_first_kept_forecast() {
        try (ServerFixture server = ServerFixture.small().drawn()) {
            Visitor ilse = server.as("ilse");
            assertThat(ilse.get("/build/stages/weir").page().select(".earned p").text())
                    .isEqualTo("These compare with the first forecast that was kept, once that is a week old.");
            server.db().write("test", write -> {
                SavedForecast now = SavedForecastStore.oldest(write).orElseThrow();
                String plan = planned(
                        planned(now.results(), "weir.1", "2026-10-05", "2026-10-14"),
                        "weir.2",
                        "2026-10-15",
                        "2026-10-28");
                SavedForecastStore.insert(
                        write,
                        new SavedForecast(
                                LocalDate.of(2026, 10, 1),
                                now.madeAt(),
                                now.seed(),
                                now.trials(),
                                now.engine(),
                                now.projectVersion(),
                                false,
                                "",
                                now.ranks(),
                                plan,
                                now.inputs()));
                return null;
            });
            Visitor.Reply page = ilse.get("/build/stages/weir");
            assertThat(page.page().select("details.earned[open]")).isEmpty();
            assertThat(page.page().select(".earned p").text())
                    .isEqualTo(
                            "Against the forecast of 1 October 2026, the first that was kept, in hours of the hands.");
            assertThat(page.page().select(".earned tr").eachText())
                    .containsExactly(
                            "Budget BAC 46 hours",
                            "Planned by today PV 46 hours",
                            "Earned EV 29½ hours",
                            "What it took AC 33 hours",
                            "Cost variance CV −3½ hours",
                            "Schedule variance SV −16½ hours",
                            "Cost index CPI 0.89",
                            "Schedule index SPI 0.64",
                            "At completion, as it goes EAC 51½ hours",
                            "Earned schedule ES 3.5 weeks",
                            "Time gone AT 7.3 weeks",
                            "Schedule variance in time SV(t) −3.8 weeks",
                            "Schedule index in time SPI(t) 0.47",
                            "Duration, as it goes PD/SPI(t) 8.4 weeks, planned 4.0 weeks");
            assertThat(server.as("noor").get("/build/stages/weir").page().select(".earned"))
                    .isEmpty();
        }
    }

    private static String planned(String json, String task, String start, String landing) {
        String dates = "\\{[^}]*\\}";
        String now = "\"id\" ?: ?\"" + task + "\", ?\"start\" ?: ?" + dates + ", ?\"landing\" ?: ?" + dates;
        String then = "\"id\":\"" + task + "\",\"start\":" + days(start) + ",\"landing\":" + days(landing);
        String changed = json.replaceFirst(now, then);
        assertThat(changed).isNotEqualTo(json);
        return changed;
    }

    private static String days(String day) {
        return "{\"p10\":\"%1$s\",\"p50\":\"%1$s\",\"p80\":\"%1$s\",\"p90\":\"%1$s\",\"beyond\":0}".formatted(day);
    }
}
