package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewCautionsNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_caution_of_ones_own_is_refused_then_stands_under_safety() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/crew/cautions/new"))
                .with("hazard", "juggling")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles()).hasSize(2).contains("is missing; write the caution");
        Visitor.Reply saved = ilse.follow(ilse.form(refused)
                .with("hazard", "lift")
                .with("text", "The north chain block is for 500 kg, not more. The rigger decides.")
                .send());
        assertThat(saved.page().select("section:has(#cautions-head) li").text())
                .endsWith("The north chain block is for 500 kg, not more. The rigger decides.");
    }
}
