package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsRegularPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void an_empty_list_says_what_belongs_there_and_why() {
        Visitor.Reply page = SERVER.as("ilse").get("/funds/regular");
        assertThat(page.page().select(".empty-sheet p").get(0).text())
                .isEqualTo("What is paid every month, week, year or episode is drawn in each future, so that the money"
                        + " lasts as long as it is said to.");
    }

    @Test
    void the_caution_on_tax_stands_where_income_is_listed() {
        assertThat(SERVER.as("ilse").get("/funds/regular").page().select(".tax").text())
                .isEqualTo(
                        "Tax. A grant or another regular gift may be taxable income: ask a licensed accountant or your"
                                + " tax office.");
    }
}
