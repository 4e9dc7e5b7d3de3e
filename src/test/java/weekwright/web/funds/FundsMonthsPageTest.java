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
    void a_closed_month_says_by_how_much_and_since_when_its_books_moved() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            ilse.form(ilse.get("/funds/months/2026-10"), "main form.act")
                    .with("anyway", "yes")
                    .press("close");
            assertThat(standing(ilse)).isEqualTo("closed Wed 25 Nov");
            Visitor.Reply late = ilse.follow(ilse.form(ilse.get("/funds/entries/new"))
                    .with("way", "out")
                    .with("amount", "40")
                    .with("date", "2026-10-15")
                    .with("kind", "other-cost")
                    .send());
            assertThat(standing(ilse))
                    .isEqualTo("closed Wed 25 Nov since 25 November 2026: costs €40.00 more, at its end €40.00 less");
            ilse.form(ilse.get("/funds/entries/new"))
                    .with("way", "in")
                    .with("amount", "15.50")
                    .with("date", "2026-10-16")
                    .with("kind", "other-income")
                    .send();
            ilse.form(ilse.get("/funds/entries/new"))
                    .with("way", "out")
                    .with("amount", "9")
                    .with("date", "2026-10-16")
                    .with("kind", "drawings")
                    .send();
            assertThat(standing(ilse))
                    .isEqualTo(
                            "closed Wed 25 Nov since 25 November 2026: income €15.50 more, costs €40.00 more, neither"
                                    + " of the two €9.00 less, at its end €33.50 less");
            assertThat(ilse.get("/funds/months/2026-10")
                            .page()
                            .select(".rule-head:has(#since-head)")
                            .text())
                    .endsWith("first changed on 25 November 2026");
            // taken back, it stands in the log; a change of a later month moves nothing
            ilse.form(late, ".flash form").send();
            assertThat(standing(ilse))
                    .isEqualTo("closed Wed 25 Nov since 25 November 2026: income €15.50 more, neither of the two €9.00"
                            + " less, at its end €6.50 more");
        }
    }

    private static String standing(Visitor ilse) {
        return ilse.get("/funds/months")
                .page()
                .select("tr:has(a[href$=2026-10]) td[data-label='How it stands']")
                .text();
    }

    @Test
    void a_helper_does_not_see_them() {
        assertThat(SERVER.as("noor").get("/funds/months").status()).isEqualTo(403);
    }
}
