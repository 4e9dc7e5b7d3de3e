package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class EpisodeEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void fields_and_what_it_tells_are_changed() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply page = bram.get("/episodes/ep.12/edit");
        assertThat(bram.form(page).value("task.0")).isEqualTo("gate.1");
        Visitor.Reply refused =
                bram.form(page).with("title", "").with("views", "-3").send();
        assertThat(refused.troubles())
                .containsExactly("\"-3\" is under 0; write 0 or more", "is missing; write what it is called");
        Visitor.Reply saved = bram.follow(bram.form(refused)
                .with("title", "Boards, planed")
                .with("views", "")
                .with("task.0", "gate.1")
                .with("share.0", "0.5")
                .send());
        assertThat(saved.page().select("h1").text()).isEqualTo("Boards, planed");
        assertThat(saved.page().select("section[aria-labelledby=tells-head] li").text())
                .contains("50 % of it");
    }

    @Test
    void somebody_elses_change_is_shown_beside_ones_own() {
        Visitor bram = SERVER.as("bram");
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply old = bram.get("/episodes/ep.11/edit");
        ilse.follow(ilse.form(ilse.get("/episodes/ep.11/edit"))
                .with("title", "Sill stones, dry")
                .send());
        Visitor.Reply stale = bram.form(old).with("title", "Sill stones, wet").send();
        assertThat(stale.status()).isEqualTo(409);
        assertThat(stale.text()).contains("Sill stones, dry").contains("Sill stones, wet");
    }
}
