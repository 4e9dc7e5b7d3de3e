package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class EpisodeRightsPageTest {
    private ServerFixture server;
    private Visitor ilse;

    @BeforeEach
    void open() {
        server = ServerFixture.sample();
        ilse = server.as("ilse");
    }

    @AfterEach
    void close() {
        server.close();
    }

    @Test
    void a_licence_that_ends_before_the_episode_is_out_and_a_missing_consent_are_warned_of() {
        assertThat(ilse.get("/episodes/e49/rights").page().select("main .short").eachText())
                .containsExactly("The licence of “Water over stones” ends on 15 December, in 3 weeks, before the"
                        + " episode is out.");
        assertThat(ilse.get("/episodes/e49")
                        .page()
                        .select("section:has(#rights-head) .short")
                        .eachText())
                .containsExactly("The licence of “Water over stones” ends on 15 December, in 3 weeks, before the"
                        + " episode is out.");
        assertThat(ilse.get("/episodes/e54/rights").page().select("main .short").eachText())
                .containsExactly(
                        "The consent of The parish, for the old bridge is still to be got before 5 February 2027.");
        assertThat(ilse.get("/episodes/e48/rights").page().select("main .short"))
                .isEmpty();
    }

    @Test
    void both_lists_are_kept_at_once() {
        Visitor.Reply page = ilse.get("/episodes/e54/rights");
        Visitor.Reply kept = ilse.follow(ilse.form(page, "form.parts-form")
                .with("music.0.title", "The long wall")
                .with("music.0.licence", "lent for this film")
                .with("music.0.until", "2026-11-20")
                .with("releases.0.got", "2026-11-25")
                .send());
        assertThat(kept.page().select(".flash p").text()).isEqualTo("Music and releases are saved.");
        assertThat(kept.page().select("section:has(#rights-head) li").eachText())
                .containsExactly(
                        "“The long wall”, lent for this film, until 20 November",
                        "The parish, for the old bridge: consent got 25 November");
        assertThat(kept.page().select("section:has(#rights-head) .short").eachText())
                .containsExactly("The licence of “The long wall” ended on 20 November, 5 days ago.");
    }

    @Test
    void faults_of_both_lists_are_said_at_once() {
        Visitor.Reply more =
                ilse.form(ilse.get("/episodes/e54/rights"), "form.parts-form").press("releases-more");
        Visitor.Reply refused = ilse.form(more, "form.parts-form")
                .with("music.0.title", "The long wall")
                .with("music.0.until", "soon")
                .with("releases.0.got", "2026-12-24")
                .with("releases.1.note", "who was that?")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"soon\" is not a date; write year-month-day, such as 2026-03-05",
                        "\"24 December 2026\" is after today; write it down once you have it",
                        "is missing; write the person or the place");
    }
}
