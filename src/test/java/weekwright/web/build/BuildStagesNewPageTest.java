package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildStagesNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_stage_is_added_under_an_id_made_of_its_name() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/build/stages/new"))
                .with("name", "Weir")
                .with("rough_low", "9")
                .with("rough_likely", "8")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"9\" is over the likely 8; write 8 or less",
                        "\"Weir\" is the name of another stage; choose another name");
        Visitor.Reply saved = ilse.form(refused)
                .with("name", "Fish pass")
                .with("rough_low", "")
                .send();
        assertThat(saved.to()).isEqualTo("/build/stages/pass");
        assertThat(ilse.follow(saved).page().select(".flash p").text()).isEqualTo("The stage is added. Now its tasks.");
    }

    /** Rule 121: a form that asked for the rest alone would have it taken off twice. */
    @Test
    void rule_121_rough_hours_are_asked_for_as_those_of_the_whole_stage() {
        Visitor.Reply page = SERVER.as("ilse").get("/build/stages/new");
        assertThat(page.page().select("fieldset.group legend").text())
                .isEqualTo("Hours of the whole stage, as far as you can guess");
        assertThat(page.page().select("#rough_likely-hint").text())
                .isEqualTo("What its listed tasks come to is taken off; the rest is counted after them.");
    }

    @Test
    void a_helper_is_sent_away() {
        assertThat(SERVER.as("noor").get("/build/stages/new").status()).isEqualTo(403);
    }
}
