package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsLedgerPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void the_books_are_shown_newest_first_with_sums() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/funds/ledger");
        assertThat(page.page().select(".lead").text()).isEqualTo("3 entries: €621.00 came in, −€86.20 went out.");
        assertThat(page.page().select("tbody tr td.figure").eachText())
                .containsExactly("−€86.20", "€317.40", "€303.60");
    }

    @Test
    void kind_and_month_choose_among_them() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/funds/ledger?kind=payout&month=2026-10");
        assertThat(page.page().select("tbody tr td.figure").eachText()).containsExactly("€303.60");
        assertThat(page.page().select("#kind option[selected]").text()).isEqualTo("pay-out of pledges");
        assertThat(ilse.get("/funds/ledger?kind=nonsense&page=99").text()).contains("No entry is like that.");
    }

    @Test
    void a_helper_does_not_see_them() {
        assertThat(SERVER.as("noor").get("/funds/ledger").status()).isEqualTo(403);
    }
}
