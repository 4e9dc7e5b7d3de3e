package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void the_money_is_told_as_a_sentence_with_months_and_pledges() {
        Visitor.Reply page = SERVER.as("ilse").get("/funds");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.page().select(".said").text())
                .contains("of it reserve. 73 supporters pledge €365 a month before fees.");
        assertThat(page.page()
                        .select("section[aria-labelledby=levels-head] tbody tr")
                        .eachText())
                .containsExactly("Plank €5 a month 73 €365", "All 73 €365");
        assertThat(page.page().select(".tax").text())
                .isEqualTo("Tax. Pledges are usually taxable income, and a gift in return may change that. These pages"
                        + " keep no accounts for an office: ask a licensed accountant or your tax office.");
    }

    @Test
    void a_helper_sees_no_money() {
        Visitor.Reply page = SERVER.as("noor").get("/funds");
        assertThat(page.status()).isEqualTo(403);
        assertThat(page.text())
                .contains("This sheet is for the crew. A helper logs hours and sees the week and the build.");
    }
}
