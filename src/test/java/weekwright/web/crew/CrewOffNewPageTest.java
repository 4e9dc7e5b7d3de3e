package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewOffNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void days_off_are_refused_then_kept() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/crew/off/new"))
                .with("from", "2026-12-24")
                .with("to", "2026-12-20")
                .with("hours", "25")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select("[aria-invalid=true]").eachAttr("id")).containsExactly("to", "hours");
        Visitor.Reply more = ilse.form(refused).with("hours", "").send();
        assertThat(more.troubles())
                .containsExactly("\"20 December 2026\" is before from 24 December 2026; write 24 December 2026 or"
                        + " later, or change from");
        Visitor.Reply saved = ilse.follow(ilse.form(more)
                .with("crew", "ilse")
                .with("to", "2027-01-02")
                .with("reason", "Her sister's")
                .send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("The time off is kept.");
        assertThat(saved.page().select("section:has(#off-head) tbody tr").get(0).text())
                .isEqualTo("24 Dec to 2 Jan 2027 Ilse, away Her sister's");
    }
}
