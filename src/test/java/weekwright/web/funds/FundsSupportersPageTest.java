package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsSupportersPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_month_is_counted() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/funds/supporters?month=2026-11");
        assertThat(page.page().select("h1").text()).isEqualTo("Supporters of November 2026");
        assertThat(ilse.form(page).value("start.plank")).isEqualTo("69");
        Visitor.Reply refused = ilse.form(page).with("left.plank", "99").send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("\"99\" is more than the 74 who were there or joined; write 74 or less");
        assertThat(ilse.form(refused).value("left.plank")).isEqualTo("99");
        Visitor.Reply saved = ilse.follow(ilse.form(refused)
                .with("start.plank", "70")
                .with("left.plank", "2")
                .send());
        assertThat(saved.page().select(".flash p").text())
                .isEqualTo("Supporters of November 2026 are counted. \"70\" is not the 69 with whom the month"
                        + " before ended.");
    }

    @Test
    void a_helper_counts_none() {
        assertThat(SERVER.as("noor").get("/funds/supporters").status()).isEqualTo(403);
    }
}
