package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewGatheringsNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_gathering_is_refused_with_every_fault_then_kept() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/crew/gatherings/new"))
                .with("date", "2027-02-30")
                .with("hands", "0")
                .with("hours", "0")
                .with("come_share", "80")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select("[aria-invalid=true]").eachAttr("id"))
                .containsExactly("date", "hands", "hours", "come_share");
        Visitor.Reply saved = ilse.follow(ilse.form(refused)
                .with("date", "2027-02-27")
                .with("hands", "6")
                .with("hours", "5")
                .with("come_share", "0.8")
                .send());
        assertThat(saved.page().select("section:has(#gatherings-head) tbody tr").text())
                .isEqualTo("27 Feb 2027 6 helpers, of whom 80 % come, 5 hours each");
    }
}
