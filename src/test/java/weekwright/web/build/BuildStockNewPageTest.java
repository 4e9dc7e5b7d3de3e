package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildStockNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void what_lies_in_the_yard_is_added() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/build/stock/new"))
                .with("quantity", "1.234")
                .with("since", "2026-02-30")
                .with("ready_likely", "30")
                .with("ready_high", "20")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select("[aria-invalid=true]").eachAttr("id")).containsExactly("quantity", "since");
        Visitor.Reply more = ilse.form(refused)
                .with("quantity", "1.2")
                .with("since", "2026-02-20")
                .send();
        assertThat(more.troubles())
                .containsExactly(
                        "is missing; write what lies there", "\"20\" is under the likely 30; write 30 or more");
        Visitor.Reply saved = ilse.follow(ilse.form(more)
                .with("item", "Cleft oak")
                .with("unit", "m3")
                .with("ready_high", "40")
                .send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("Cleft oak is on the yard's list.");
        assertThat(saved.page().select("tbody th").eachText()).containsExactly("Cleft oak");
    }
}
