package weekwright.web.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import weekwright.forecast.ForecastJson;
import weekwright.forecast.SavedForecast;
import weekwright.forecast.SavedForecastStore;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.testkit.OakMill;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/** The track record is made beside the page, which says how far it is. */
class AheadRecordPageTest {
    @Test
    void a_project_without_work_says_what_it_needs() {
        try (ServerFixture server = ServerFixture.of(SmallProject::fillWithOnePerson)) {
            Visitor.Reply page = made(server);
            assertThat(page.page().select(".lead").text())
                    .isEqualTo("Nothing to look back on yet: a forecast of a past Friday needs work that had begun on"
                            + " it.");
            assertThat(page.page().select("section:not([data-kept])")).isEmpty();
        }
    }

    @Test
    void ahead_leads_to_it_and_the_first_look_says_how_far_it_is() {
        try (ServerFixture server = ServerFixture.sample()) {
            assertThat(server.as("ilse")
                            .get("/ahead")
                            .page()
                            .select("a[href=/ahead/record]")
                            .text())
                    .isEqualTo("Track record");
            Visitor.Reply page = server.as("ilse").get("/ahead/record");
            assertThat(page.status()).isEqualTo(200);
            assertThat(page.page().select("[role=status]").text()).contains("Looking back: ", " of 49 Fridays.");
            assertThat(page.page()
                            .select("[data-made=no] a[href=/ahead/record]")
                            .text())
                    .isEqualTo("Look again");
            // a page that loads itself anew takes away what is being read (WCAG 2.2, 2.2.1)
            assertThat(page.page().select("meta[http-equiv]")).isEmpty();
            assertThat(page.page().select("script[src=/static/again.js]")).hasSize(1);
        }
    }

    @Test
    void each_stage_is_drawn_with_the_same_figures_as_a_table() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor.Reply page = made(server);
            assertThat(page.page().select(".half-drawing svg title").eachText())
                    .isNotEmpty()
                    .allMatch(said -> said.matches("What was said of .+ from .+ to .+, at last .+ at even chances"));
            assertThat(page.page()
                            .select("[data-figures=track-record] details caption")
                            .eachText())
                    .contains("Weir");
        }
    }

    @Test
    void one_that_cannot_be_made_is_told_and_begun_anew_after_the_next_change() {
        try (ServerFixture server = ServerFixture.small().drawn()) {
            ProjectInputs torn = ProjectInputs.project().person("ana");
            torn.task("a").hours(1, 2, 3);
            torn.link("a", "gone", 1, 0);
            server.db().write("test", write -> {
                SavedForecast now = SavedForecastStore.oldest(write).orElseThrow();
                SavedForecastStore.insert(
                        write,
                        new SavedForecast(
                                LocalDate.of(2026, 11, 20),
                                now.madeAt(),
                                now.seed(),
                                now.trials(),
                                now.engine(),
                                now.projectVersion(),
                                true,
                                "torn",
                                now.ranks(),
                                now.results(),
                                ForecastJson.packed(torn.inputs())));
                return null;
            });
            Visitor.Reply page = made(server);
            assertThat(page.page().select("main [role=alert]").text())
                    .isEqualTo("Looking back did not finish The next change, or the next day, looks back anew.");
            assertThat(page.page().select("main .lead, [data-made=no], script[src=/static/again.js]"))
                    .isEmpty();
            server.db().write("test", write -> {
                write.handle().execute("DELETE FROM saved_forecast WHERE name = 'torn'");
                NoteStore.TABLE.insert(
                        write, OakMill.row(Note.class, "id", "n9", "title", "Frost", "date", "2026-11-25"));
                return null;
            });
            page = made(server);
            assertThat(page.page().select("[role=alert]")).isEmpty();
            assertThat(page.page().select(".lead")).hasSize(1);
        }
    }

    /** The page once what it shows is made. */
    private static Visitor.Reply made(ServerFixture server) {
        Visitor ilse = server.as("ilse");
        Visitor.Reply page = ilse.get("/ahead/record");
        for (int i = 0; i < 1000 && !page.page().select("[data-made=no]").isEmpty(); i++) {
            page = ilse.get("/ahead/record");
        }
        assertThat(page.page().select("[data-made=no]")).isEmpty();
        return page;
    }
}
