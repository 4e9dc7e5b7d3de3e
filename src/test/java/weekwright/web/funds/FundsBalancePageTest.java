package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsBalancePageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_balance_is_counted_and_the_difference_is_said() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/funds/balance");
        Visitor.Reply refused = ilse.form(page).with("amount", "1.234,5x").send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles()).containsExactly("\"1.234,5x\" is not an amount of money; write 12.50");
        assertThat(refused.page().select("#amount").val()).isEqualTo("1.234,5x");
        String said = page.page().select(".ledger td").get(0).text();
        Visitor.Reply saved = ilse.follow(ilse.form(refused)
                .with("amount", said.replaceAll("[^0-9.]", ""))
                .send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("Counted: the books agree to the last digit.");
        Visitor.Reply twice =
                ilse.form(ilse.get("/funds/balance")).with("amount", "5").send();
        assertThat(twice.troubles())
                .containsExactly("\"25 November 2026\" has a counted balance already; write another day");
    }

    @Test
    void every_count_says_by_how_much_the_books_are_off_now() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            ilse.form(ilse.get("/funds/balance"))
                    .with("amount", "4310.60")
                    .with("date", "2026-10-31")
                    .send();
            Visitor.Reply page = ilse.get("/funds/balance");
            assertThat(page.page()
                            .select("section[aria-labelledby=counts-head] tbody tr")
                            .eachText())
                    .containsExactly("31 Oct the account €4,310.60 €4,303.60 €7.00 more");
            ilse.form(ilse.get("/funds/entries/new"))
                    .with("way", "in")
                    .with("amount", "7")
                    .with("date", "2026-10-30")
                    .with("kind", "other-income")
                    .send();
            assertThat(ilse.get("/funds/balance")
                            .page()
                            .select("section[aria-labelledby=counts-head] tbody tr")
                            .eachText())
                    .containsExactly("31 Oct the account €4,310.60 €4,310.60 none");
        }
    }

    @Test
    void a_helper_counts_none() {
        assertThat(SERVER.as("noor").get("/funds/balance").status()).isEqualTo(403);
    }
}
