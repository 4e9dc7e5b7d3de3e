package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsCostsNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_cost_is_entered_and_taken_back() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/funds/costs/new"))
                .with("amount", "0")
                .with("payee", "Saw doctor")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles()).containsExactly("\"0.00\" is no cost; write what was paid, more than nothing");
        assertThat(refused.page().select("#payee").val()).isEqualTo("Saw doctor");
        Visitor.Reply saved =
                ilse.follow(ilse.form(refused).with("amount", "34,50").send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("€34.50 paid on 25 November are in the books.");
        assertThat(saved.page()
                        .select("section[aria-labelledby=last-head] tr")
                        .get(0)
                        .text())
                .isEqualTo("Wed 25 Nov Saw doctor other cost −€34.50");
        Visitor.Reply back = ilse.follow(ilse.form(saved, ".flash form").send());
        assertThat(back.page().select(".flash p").text())
                .isEqualTo("Taken back: entry of the books “Saw doctor, 25 November 2026” added.");
        assertThat(back.text()).doesNotContain("Saw doctor");
    }

    @Test
    void a_helper_enters_none() {
        Visitor noor = SERVER.as("noor");
        assertThat(noor.get("/funds/costs/new").status()).isEqualTo(403);
    }
}
