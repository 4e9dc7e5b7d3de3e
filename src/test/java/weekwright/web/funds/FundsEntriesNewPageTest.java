package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsEntriesNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_row_is_refused_with_every_fault_then_entered() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/funds/entries/new"))
                .with("amount", "-12,50")
                .with("kind", "own-money")
                .with("gross", "1.234,567")
                .with("date", "2026-02-30")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"-12,50\" is under 0; write it without the sign, and choose whether it comes in or goes out",
                        "\"2026-02-30\" is not a day of the calendar; write a day that exists, such as 2026-02-28",
                        "\"1.234,567\" is not an amount of money; write 12.50");
        Visitor.Reply more = ilse.form(refused)
                .with("amount", "12,50")
                .with("way", "in")
                .with("gross", "")
                .with("date", "2026-12-24")
                .with("foreign_amount", "14")
                .send();
        assertThat(more.troubles())
                .containsExactly(
                        "\"24 December 2026\" is after today, 25 November 2026; enter it once it is so",
                        "is missing beside the foreign amount; write its three letters, such as USD");
        Visitor.Reply saved = ilse.follow(ilse.form(more)
                .with("date", "2026-11-24")
                .with("foreign_amount", "")
                .with("payee", "The tin on the shelf")
                .send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("It is in the books.");
        assertThat(saved.page().select("tbody tr:contains(tin)").text())
                .isEqualTo("Tue 24 Nov The tin on the shelf own money €12.50");
    }

    @Test
    void gross_less_fee_that_is_not_the_amount_is_told() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply saved = ilse.follow(ilse.form(ilse.get("/funds/entries/new"))
                .with("way", "in")
                .with("amount", "90")
                .with("kind", "payout")
                .with("gross", "100")
                .with("fee", "8")
                .send());
        assertThat(saved.page().select(".flash p").text())
                .isEqualTo(
                        "It is in the books. \"90.00\" is not gross less fee, which is 92.00; look at the three again.");
    }
}
