package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsLevelEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void one_that_was_counted_is_not_removed() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused =
                ilse.form(ilse.get("/funds/levels/plank/edit"), "form.act").press("remove");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"Plank\" has supporters counted in 3 months; to end it, count this month with everybody"
                                + " left; the next starts with nobody");
        Visitor.Reply saved = ilse.follow(ilse.form(ilse.get("/funds/levels/plank/edit"), "form.form")
                .with("payout_days", "7")
                .send());
        assertThat(saved.page().select("tbody tr:contains(Plank)").text())
                .isEqualTo("Plank €5.00 a month 8 % 7 days later");
    }

    @Test
    void one_that_was_paid_out_is_not_removed() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply added = ilse.follow(ilse.form(ilse.get("/funds/levels/new"))
                .with("name", "Peg")
                .with("amount", "1")
                .with("fee_percent", "0.15")
                .send());
        assertThat(added.page().select(".flash p").text())
                .isEqualTo("Peg can be pledged. Now count its supporters. \"0.15\" is read as 0.15 %; if a share was"
                        + " meant, write 15.");
        ilse.follow(ilse.form(ilse.get("/funds/entries/new"))
                .with("way", "in")
                .with("amount", "90")
                .with("kind", "payout")
                .with("payee", "PEG")
                .send());
        Visitor.Reply refused =
                ilse.form(ilse.get("/funds/levels/peg/edit"), "form.act").press("remove");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("\"Peg\" has 1 pay-out in the books; to end it, count this month with everybody"
                        + " left; the next starts with nobody");
    }

    @Test
    void one_that_nobody_chose_is_removed() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/funds/levels/new"))
                .with("name", "Nail")
                .with("amount", "1")
                .send());
        Visitor.Reply gone = ilse.follow(
                ilse.form(ilse.get("/funds/levels/nail/edit"), "form.act").press("remove"));
        assertThat(gone.page().select(".flash p").text()).isEqualTo("Nail is removed.");
    }
}
