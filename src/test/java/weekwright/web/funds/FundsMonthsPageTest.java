package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsMonthsPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void every_month_of_the_books_says_how_it_stands() {
        Visitor ilse = SERVER.as("ilse");
        assertThat(ilse.get("/funds/months").text()).contains("Two months are to be closed.");
        ilse.form(ilse.get("/funds/months/2026-09"), "main form.act")
                .with("anyway", "yes")
                .press("close");
        Visitor.Reply page = ilse.get("/funds/months");
        assertThat(page.page().select("tbody tr").eachText())
                .containsExactly(
                        "November 2026 so far €317.40 −€86.20 €4,534.80",
                        "October 2026 to be closed €303.60 €0.00 €4,303.60",
                        "September 2026 closed Wed 25 Nov €0.00 €0.00 €4,000.00");
        assertThat(page.text()).contains("One month is to be closed.");
        assertThat(ilse.get("/funds").page().select("a[href=/funds/months]")).isNotEmpty();
    }

    @Test
    void a_helper_does_not_see_them() {
        assertThat(SERVER.as("noor").get("/funds/months").status()).isEqualTo(403);
    }
}
