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

    /** By hand: the fee was set to 5 % where the books say 8 %; the button fills the form in and changes nothing. */
    @Test
    void the_fee_that_past_pay_outs_say_is_told_and_only_filled_in() {
        try (ServerFixture server = ServerFixture.sample()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply same = ilse.get("/funds/levels/peg/edit");
            assertThat(same.page().select(".learned p").eachText())
                    .containsExactly(
                            "The 11 pay-outs from 6 January to 6 November kept €973.45 of €6,636.87, on about 2,212"
                                    + " charges of €3.00. Beside the fixed €0.20 each that is 8 %, as the fee above"
                                    + " says.");
            ilse.follow(ilse.form(same, "form.form").with("fee_percent", "5").send());
            Visitor.Reply other = ilse.get("/funds/levels/peg/edit");
            assertThat(other.page().select(".learned p").eachText())
                    .containsExactly(
                            "The 11 pay-outs from 6 January to 6 November kept €973.45 of €6,636.87, on about 2,212"
                                    + " charges of €3.00. Beside the fixed €0.20 each that is 8 % of the amount.",
                            "Take it: 8 % It only fills in the fee above; Save the level keeps it.");
            Visitor.Reply taken =
                    ilse.form(other, "form.form").with("declined", "4").press("take");
            assertThat(taken.status()).isEqualTo(200);
            assertThat(taken.page().select(".flash p").text())
                    .isEqualTo("The fee of 8 % stands in the form now; nothing is saved yet.");
            assertThat(ilse.form(taken, "form.form").value("fee_percent")).isEqualTo("8");
            assertThat(ilse.form(taken, "form.form").value("declined")).isEqualTo("4");
            assertThat(ilse.form(ilse.get("/funds/levels/peg/edit"), "form.form")
                            .value("fee_percent"))
                    .isEqualTo("5");
            Visitor.Reply saved = ilse.follow(ilse.form(taken, "form.form").send());
            assertThat(saved.page().select("tbody tr:contains(Peg)").text())
                    .isEqualTo("Peg €3.00 a month 8 % and €0.20, 4 % declined 5 days later");
        }
    }

    @Test
    void without_gross_and_fees_of_pay_outs_nothing_is_said() {
        assertThat(SERVER.as("ilse").get("/funds/levels/plank/edit").page().select(".learned"))
                .isEmpty();
    }
}
