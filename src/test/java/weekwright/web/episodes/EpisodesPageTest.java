package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class EpisodesPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void coming_fridays_standbys_and_published_ones_are_listed() {
        Visitor.Reply page = SERVER.as("bram").get("/episodes");
        assertThat(page.page().select(".slots .slot-what b").eachText())
                .startsWith("Sill stones", "Boards for the gate", "Nothing planned")
                .hasSize(12);
        assertThat(page.page().select(".slots .slot-far").get(1).text()).isEqualTo("0 of 1 shot");
        assertThat(page.page()
                        .select("section[aria-labelledby=standby-head] li a")
                        .eachText())
                .containsExactly("Why a weir");
        assertThat(page.page()
                        .select("section[aria-labelledby=published-head] li")
                        .eachText())
                .containsExactly("20 Nov no. 10, The footing");
    }

    @Test
    void the_story_bank_is_drawn_with_its_range_and_unsafe_slots_are_warned_of() {
        SERVER.drawn();
        Visitor.Reply page = SERVER.as("bram").get("/episodes");
        assertThat(page.page().select("figure.bank-drawing svg")).hasSize(2);
        assertThat(page.page().select("figure.bank-drawing + details caption").text())
                .isEqualTo("Story bank in finished minutes");
        assertThat(page.page().select("figure.bank-drawing + details tbody tr")).hasSize(26);
        assertThat(page.page().select(".remark-box").text())
                .matches(
                        "The next twelve slots are not safe\\. At least one of them stays empty: almost"
                                + " certain\\. In the mean \\d+\\.\\d of the twelve do\\. Film ahead, or make a standby ready\\.");
    }

    @Test
    void a_helper_is_sent_away() {
        assertThat(SERVER.as("noor").get("/episodes").status()).isEqualTo(403);
    }

    @Test
    void more_than_the_story_bank_holds_is_refused_and_what_was_typed_stays() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply refused = bram.form(bram.get("/episodes"), "form:has(button[value=bank])")
                .with("title", "Loose ends")
                .with("slot", "2026-11-13")
                .with("minutes", "30")
                .press("bank");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"30\" is more than the story bank holds of finished tasks, 0 minutes; write fewer, or"
                                + " list the episode with what it tells");
        assertThat(refused.page().select("#title").val()).isEqualTo("Loose ends");
    }

    @Test
    void an_episode_past_its_slot_is_not_counted_among_the_slots_ahead() throws Exception {
        Clock clock = Clock.fixed(Instant.parse("2027-01-03T09:00:00Z"), ZoneOffset.UTC);
        try (ServerFixture server = ServerFixture.under(clock, SmallProject::fill)) {
            Visitor bram = server.as("bram");
            bram.get("/ahead");
            server.app().forecasts().orElseThrow().await();
            Visitor.Reply page = bram.get("/episodes");
            assertThat(page.page().select("h1").text()).matches("(None|One) of the next twelve Fridays (is|are) safe");
            assertThat(page.text()).contains("; two episodes are past their slot.");
        }
    }

    @Test
    void without_episodes_it_asks_for_no_day_that_is_set() {
        try (ServerFixture own = ServerFixture.of(SmallProject::fillWithOnePerson)) {
            assertThat(own.as("ilse")
                            .get("/episodes")
                            .page()
                            .select(".empty-sheet li")
                            .eachText())
                    .containsExactly(
                            "Look at the day of publication under Crew and settings",
                            "Add the next episode",
                            "Say which work it tells, and what the camera must not miss");
        }
    }
}
