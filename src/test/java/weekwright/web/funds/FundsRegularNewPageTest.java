package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsRegularNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void what_comes_again_is_refused_then_added() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/funds/regular/new"))
                .with("amount", "0")
                .with("spread", "-5")
                .with("to", "2026-11-01")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select("[aria-invalid=true]").eachAttr("id"))
                .containsExactly("name", "amount", "spread", "to");
        Visitor.Reply more = ilse.form(refused).with("spread", "10").send();
        assertThat(more.troubles())
                .containsExactly(
                        "is missing; write what it is for",
                        "\"1 November 2026\" is before from 25 November 2026; write 25 November 2026 or later, or"
                                + " change from",
                        "\"0\" is nothing; write what it costs or brings each time");
        Visitor.Reply saved = ilse.follow(ilse.form(more)
                .with("name", "Rent of the shed")
                .with("amount", "190")
                .with("to", "")
                .send());
        assertThat(saved.page().select("tbody tr").text())
                .isEqualTo("Rent of the shed −€190.00 every month more or less 10 % from Wed 25 Nov");
    }
}
