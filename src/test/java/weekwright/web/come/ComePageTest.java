package weekwright.web.come;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import weekwright.account.WeekLinkStore;
import weekwright.base.Id;
import weekwright.build.DaysOffStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class ComePageTest {
    private static String address(ServerFixture server) {
        return "/come/" + server.db().write("ilse", write -> WeekLinkStore.renew(write, new Id("noor")));
    }

    @Test
    void a_helper_without_log_in_says_that_she_comes_or_cannot_and_the_week_shows_it() {
        try (ServerFixture server = ServerFixture.small().drawn()) {
            server.giveLogIn("ilse", "three wet felt hats");
            String address = address(server);
            Visitor noor = server.stranger();
            Visitor.Reply page = noor.get(address);
            assertThat(page.page().select("h1").text()).isEqualTo("Noor, your days");
            assertThat(page.page().select(".come-day")).hasSize(14);
            assertThat(page.text()).doesNotContain("Bram").doesNotContain("€");
            Visitor.Reply said =
                    noor.follow(noor.form(page, ".come-day:nth-child(3) form").press("cannot"));
            assertThat(said.page().select(".flash p").text())
                    .isEqualTo("Friday 27 November: you can't come. The crew sees it on the week.");
            assertThat(said.page().select(".come-day").get(2).select(".said").text())
                    .isEqualTo("You can't come.");
            noor.form(said, ".come-day:nth-child(4) form").press("come");
            noor.form(said, ".come-day:nth-child(3) form").press("come");
            assertThat(server.db().read(DaysOffStore.TABLE::values))
                    .extracting(
                            row -> row.from() + " " + row.hours().orElseThrow().text() + " " + row.reason())
                    .containsExactly("2026-11-28 6 Says: I come", "2026-11-27 4 Says: I come");
            Visitor ilse = server.loggedIn("ilse", "three wet felt hats");
            assertThat(ilse.get("/week").page().select(".said").eachText())
                    .containsExactly("Noor comes.", "Noor comes.");
        }
    }

    @Test
    void a_renewed_address_ends_the_old_one_and_a_day_too_far_is_refused() {
        try (ServerFixture server = ServerFixture.small()) {
            String old = address(server);
            Visitor noor = server.stranger();
            Visitor.Form form = noor.form(noor.get(old), ".come-day form");
            Visitor.Reply far =
                    form.with("date", LocalDate.of(2026, 12, 9).toString()).press("come");
            assertThat(far.status()).isEqualTo(422);
            assertThat(far.troubles())
                    .containsExactly("\"9 December 2026\" is no day to answer for; answer for one of the next 14 days");
            address(server);
            assertThat(noor.get(old).text())
                    .isEqualTo("Nothing stands here This address leads nowhere, or was replaced by a newer one. Ask the"
                            + " crew for yours.");
            assertThat(server.db().read(DaysOffStore.TABLE::values)).isEmpty();
        }
    }
}
