package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
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

    @Test
    void what_is_on_order_is_still_to_be_paid_on_both_sheets_of_money() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            for (String line : List.of("mat.1", "mat.2")) {
                ilse.form(ilse.get("/build/materials/" + line), "form:has(button[value=order])")
                        .press("order");
            }
            server.drawn();
            Visitor.Reply funds = ilse.get("/funds");
            assertThat(funds.page().select("h1").text()).isEqualTo("Nothing more has to be bought");
            assertThat(funds.page().select(".page-head .lead, .lead").eachText())
                    .contains("€355 is still to be paid for what is on order.");
            Visitor.Reply ahead = ilse.get("/ahead");
            assertThat(ahead.page().select(".answer h2").eachText())
                    .contains("€355 is still to be paid for what is on order.", "Nothing is left to order.");
        }
    }

    @Test
    void an_account_under_zero_is_said_to_be_so_and_not_to_last_until_yesterday() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            ilse.form(ilse.get("/funds/costs/new"))
                    .with("amount", "90000")
                    .with("date", "2026-11-25")
                    .with("payee", "The quarry")
                    .send();
            server.drawn();
            assertThat(ilse.get("/funds").page().select(".said").text())
                    .contains("As things go, the account stands under zero today; if pledges stopped today and nothing"
                            + " more were ordered, it stands under the reserve today.");
            assertThat(ilse.get("/funds/ladder").text())
                    .contains("As things go, orders on their day, the account stands under zero today.")
                    .contains("If pledges stopped today and nothing more were ordered, it stands under the reserve"
                            + " today.");
        }
    }

    @Test
    void what_was_entered_last_stands_first_however_much_was_booked_on_its_day() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            for (int i = 1; i <= 9; i++) {
                ilse.form(ilse.get("/funds/costs/new"))
                        .with("amount", String.valueOf(i))
                        .with("date", "2026-11-25")
                        .with("payee", "Nails " + i)
                        .send();
            }
            assertThat(ilse.get("/funds")
                            .page()
                            .select("section[aria-labelledby=last-head] th")
                            .eachText())
                    .startsWith("Nails 9 other cost", "Nails 8 other cost", "Nails 7 other cost");
        }
    }

    @Test
    void supporters_of_a_month_that_nobody_counted_are_not_said_to_be_none() {
        Clock clock = Clock.fixed(Instant.parse("2027-01-03T09:00:00Z"), ZoneOffset.UTC);
        try (ServerFixture server = ServerFixture.under(clock, SmallProject::fill)) {
            Visitor.Reply page = server.as("ilse").get("/funds");
            assertThat(page.page()
                            .select("tr:has(th:containsOwn(Supporters at the end)) td")
                            .eachText())
                    .containsExactly("73", "–", "–");
            assertThat(page.page()
                            .select("tr:has(th:containsOwn(Supporters joined, left)) td")
                            .eachText())
                    .endsWith("–", "–");
        }
    }
}
