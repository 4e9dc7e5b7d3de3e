package weekwright.web.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Db;
import weekwright.db.Stale;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class AheadPageTest {
    private static Visitor.Reply drawn(ServerFixture server, String who) throws InterruptedException {
        Visitor visitor = server.as(who);
        visitor.get("/ahead");
        server.app().forecasts().orElseThrow().await();
        return visitor.get("/ahead");
    }

    @Test
    void the_first_visit_gets_the_frame_at_once_and_a_link_to_look_again() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor.Reply first = server.as("ilse").get("/ahead");
            assertThat(first.status()).isEqualTo(200);
            assertThat(first.page().select("main a[href=/ahead]").text()).isEqualTo("Look again");
            server.app().forecasts().orElseThrow().await();
        }
    }

    @Test
    void the_drawn_forecast_answers_in_five_sentences_one_picture_and_its_tables() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor.Reply page = drawn(server, "ilse");
            assertThat(page.page().select("[data-moving]").attr("data-moving")).isEqualTo("false");
            assertThat(page.page().select("h1").text()).matches("Weir is done about \\d+ December\\.");
            assertThat(page.page().select(".chief p").text())
                    .matches("In \\d (days|weeks); four in five chances between \\d+ and \\d+ December\\."
                            + " Held mostly by .+\\.");
            assertThat(page.page().select(".answer h2").eachText())
                    .containsExactly(
                            "The episode of Friday 27 November is ready.",
                            "One Friday of story in hand.",
                            "Oak boards: the money is there.",
                            "Oak boards should have been ordered by 7 October, 7 weeks ago.");
            assertThat(page.page().select("figure svg.ahead-wide")).hasSize(1);
            assertThat(page.page().select("figure svg.ahead-upright")).hasSize(1);
            assertThat(page.page().select("details.figures caption").eachText())
                    .containsExactly("Stages", "Fridays", "Purchases");
            assertThat(page.page().select("dl.title-block div").eachText())
                    .containsExactly("Forecast run 25 Nov 2026, 09:00", "From 400 futures drawn", "Seed 1");
        }
    }

    @Test
    void the_state_names_the_forecast_that_the_page_shows_and_changes_with_the_project() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor.Reply page = drawn(server, "ilse");
            Visitor ilse = server.as("ilse");
            String key = page.page().select("[data-forecast]").attr("data-forecast");
            assertThat(ilse.get("/ahead/state").body())
                    .isEqualTo("{\"key\": \"" + key + "\", \"moving\": false, \"done\": 400, \"of\": 400}");
            nobodyWorks(server.db());
            // either the next one is being drawn, or on a quick machine it is there
            assertThat(ilse.get("/ahead/state").body())
                    .satisfiesAnyOf(
                            state -> assertThat(state).contains("\"moving\": true"),
                            state -> assertThat(state).doesNotContain(key));
            server.app().forecasts().orElseThrow().await();
            assertThat(ilse.get("/ahead/state").body()).doesNotContain(key);
        }
    }

    @Test
    void a_forecast_that_is_being_drawn_can_be_stopped_and_drawn_after_all() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply first = ilse.get("/ahead");
            // on a quick machine there may be nothing left to stop
            if (first.page().select("[data-moving]").attr("data-moving").equals("true")) {
                assertThat(first.page().select("main form[method=post] button").text())
                        .isEqualTo("Stop drawing");
                Visitor.Reply stopped =
                        ilse.form(first, "main form[method=post]").press("stop");
                assertThat(stopped.status()).isEqualTo(303);
                assertThat(stopped.to()).isEqualTo("/ahead");
            }
            // it may have ended before it was stopped; with the monitor held it cannot
            var forecasts = server.app().forecasts().orElseThrow();
            forecasts.await();
            nobodyWorks(server.db());
            LocalDate today = LocalDate.of(2026, 11, 25);
            synchronized (forecasts) {
                forecasts.current(today);
                forecasts.stop(today);
            }
            Visitor.Reply page = ilse.get("/ahead");
            assertThat(page.page().select("[data-moving]").attr("data-moving")).isEqualTo("false");
            assertThat(page.page().select("main form[method=post] button").text())
                    .isEqualTo("Draw it after all");
            ilse.form(page, "main form[method=post]").press("draw");
            forecasts.await();
            Visitor.Reply drawn = ilse.get("/ahead");
            assertThat(drawn.page().select("main form[method=post]")).isEmpty();
            assertThat(drawn.page().select("[data-forecast]").attr("data-forecast"))
                    .endsWith("-400");
        }
    }

    @Test
    void with_nobody_there_every_landing_is_after_the_horizon_and_the_page_says_so() throws Exception {
        try (ServerFixture server = ServerFixture.of(db -> {
            SmallProject.fill(db);
            nobodyWorks(db);
        })) {
            Visitor.Reply page = drawn(server, "ilse");
            assertThat(page.page().select("h1").text()).isEqualTo("Weir is done after 25 November 2029.");
            assertThat(page.page().select(".chief p").text())
                    .startsWith(
                            "Nothing in this forecast brings it to its end: somebody has to be there who can do it.");
        }
    }

    private static void nobodyWorks(Db db) {
        db.write("test", write -> {
            for (var row : CrewMemberStore.TABLE.list(write)) {
                CrewMember idle = SmallProject.of(
                        CrewMember.class,
                        "id",
                        row.value().id().value(),
                        "name",
                        row.value().name(),
                        "trades",
                        row.value().trades().text());
                try {
                    CrewMemberStore.TABLE.update(write, row.row(), row.version(), idle);
                } catch (Stale e) {
                    throw new IllegalStateException(e);
                }
            }
            return null;
        });
    }

    @Test
    void a_new_project_says_what_a_forecast_needs() {
        try (ServerFixture server = ServerFixture.empty()) {
            Visitor visitor = server.stranger();
            visitor.form(visitor.get("/start/new"))
                    .with("name", "The weir")
                    .with("crew", "Ilse")
                    .with("zone", "Europe/Berlin")
                    .send();
            Visitor.Reply page = visitor.get("/ahead");
            assertThat(page.page().select(".empty-sheet").text())
                    .isEqualTo("Nothing ahead to see yet A landing date appears as soon as these are there: A stage: a"
                            + " part of the build that is done one day. Its tasks, or rough hours for the whole"
                            + " stage.");
        }
    }

    @Test
    void rule_118_a_helper_does_not_see_it_and_begins_at_the_week() {
        try (ServerFixture server = ServerFixture.small()) {
            assertThat(server.as("noor").get("/ahead").status()).isEqualTo(403);
            assertThat(server.as("noor").get("/").to()).isEqualTo("/week");
        }
    }

    @Test
    void other_weeks_of_the_picture_are_a_link_away_and_what_cannot_be_drawn_is_said() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor.Reply page = drawn(server, "ilse");
            Visitor ilse = server.as("ilse");
            assertThat(page.page().select(".weeks-ways li").eachText())
                    .containsExactly("Earlier", "Later", "Fewer weeks", "More weeks");
            assertThat(page.page().select(".weeks-ways li a").eachAttr("href"))
                    .containsExactly(
                            "/ahead?from=2026-08-03&weeks=24",
                            "/ahead?from=2027-01-18&weeks=24",
                            "/ahead?from=2026-10-26&weeks=16",
                            "/ahead?from=2026-10-26&weeks=52");
            Visitor.Reply year = ilse.get("/ahead?from=2026-10-28&weeks=52");
            assertThat(year.page().select("figure svg.ahead-wide title").text())
                    .isEqualTo("Stages, Fridays and money on one line of weeks, 26 October 2026 to 24 October 2027");
            assertThat(year.page().select(".weeks-ways li").last().text()).isEqualTo("Around today");
            for (String odd : List.of("/ahead?from=soon", "/ahead?weeks=25", "/ahead?weeks=many")) {
                Visitor.Reply reply = ilse.get(odd);
                assertThat(reply.status()).isEqualTo(200);
                assertThat(reply.page().select("figure > p.quiet").text())
                        .isEqualTo("The address asks for weeks that cannot be drawn: these are the usual ones.");
                assertThat(reply.page().select("figure svg.ahead-wide title").text())
                        .isEqualTo("Stages, Fridays and money on one line of weeks, 26 October to 11 April 2027");
            }
            // nothing lies further off than ten years back and five ahead
            assertThat(ilse.get("/ahead?from=1066-10-14").page().select("#from").val())
                    .isEqualTo("2016-12-05");
            assertThat(ilse.get("/ahead?from=9000-01-01").page().select("#from").val())
                    .isEqualTo("2031-11-17");
        }
    }

    @Test
    void everything_on_the_picture_says_its_sentence_and_leads_to_its_page() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor.Reply page = drawn(server, "ilse");
            for (String drawing : List.of("ahead-wide", "ahead-medium", "ahead-upright")) {
                assertThat(page.page().select("svg." + drawing).attr("role")).isEqualTo("group");
                assertThat(page.page().select("svg." + drawing + " a.thing").eachAttr("aria-label"))
                        .anyMatch(said -> said.startsWith("Weir is done about "))
                        .anyMatch(said ->
                                said.matches("Friday.27.November: no\\..11, Sill stones, safe, all of it shot\\."
                                        + " It tells work on Weir, done about \\d+.December\\."))
                        .anyMatch(said -> said.matches("Friday.4.December: no\\..12, Boards for the gate, at risk,"
                                + " nothing of it is shot\\. It tells work on Sluice gate, done about \\d+.December\\."
                                + " To be bought for it: Oak boards and 1 more\\."))
                        .anyMatch(said -> said.startsWith("Oak boards and 1 more: €360, to be ordered by "))
                        .allMatch(said -> said.endsWith("."));
            }
            Visitor ilse = server.as("ilse");
            for (String link : page.page().select("a.thing").eachAttr("href").stream()
                    .distinct()
                    .toList()) {
                assertThat(ilse.get(link).status()).as(link).isEqualTo(200);
            }
        }
    }

    @Test
    void an_episode_is_tied_to_the_work_that_it_tells_and_to_what_has_to_be_bought_for_that() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor.Reply page = drawn(server, "ilse");
            // in the wide picture slots stand between the work above them and the money below
            double slots = Double.parseDouble(
                    page.page().select("svg.ahead-wide .slots .base-line").attr("y1"));
            assertThat(page.page().select("svg.ahead-wide .threads line").stream()
                            .map(line -> Double.parseDouble(line.attr("y1")) < slots ? "work" : "purchase"))
                    .as(page.page().select("svg.ahead-wide .threads").outerHtml())
                    .containsExactly("work", "work", "purchase");
        }
    }

    @Test
    void a_stage_of_which_nothing_is_known_is_neither_done_nor_beyond_the_forecast() throws Exception {
        try (ServerFixture server = ServerFixture.of(db -> {
            SmallProject.fillWithOnePerson(db);
            db.write("test", write -> {
                StageStore.TABLE.insert(write, SmallProject.of(Stage.class, "id", "weir", "name", "Weir"));
                StageStore.TABLE.insert(write, SmallProject.of(Stage.class, "id", "gear", "name", "Hurst and gear"));
                TaskStore.TABLE.insert(
                        write,
                        SmallProject.of(
                                Task.class,
                                "id",
                                "weir.1",
                                "stage",
                                "weir",
                                "title",
                                "Clear it",
                                "kind",
                                "work",
                                "likely",
                                "8",
                                "started",
                                "2026-11-20",
                                "done",
                                "2026-11-20"));
                return null;
            });
        })) {
            Visitor.Reply page = drawn(server, "ilse");
            assertThat(page.page().select("h1").text()).isEqualTo("No date stands for Hurst and gear yet.");
            assertThat(page.page().select(".chief p").text())
                    .isEqualTo("A stage gets one from its tasks, or from rough hours for the whole of it.");
            assertThat(page.text())
                    .contains("Hurst and gear without a date, as nothing to do is known of it")
                    .doesNotContain("later than the forecast reaches");
        }
    }
}
