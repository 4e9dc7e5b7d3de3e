package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsLevelsNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_level_is_refused_then_added() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/funds/levels/new"))
                .with("name", "plank")
                .with("amount", "-3")
                .with("fee_percent", "120")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select("[aria-invalid=true]").eachAttr("id"))
                .containsExactly("name", "amount", "fee_percent");
        Visitor.Reply more =
                ilse.form(refused).with("amount", "0").with("fee_percent", "8").send();
        assertThat(more.troubles())
                .containsExactly(
                        "\"0.00\" is no pledge; write what a supporter pays, more than nothing",
                        "\"plank\" is the name of another level; choose another name");
        Visitor.Reply saved = ilse.follow(ilse.form(more)
                .with("name", "Bucket")
                .with("amount", "4,50")
                .with("charged", "episode")
                .send());
        assertThat(saved.page().select("tbody tr").get(1).text()).isEqualTo("Bucket €4.50 an episode 8 % the same day");
    }
}
