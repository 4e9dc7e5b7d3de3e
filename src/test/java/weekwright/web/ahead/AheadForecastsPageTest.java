package weekwright.web.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SettableClock;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

@Timeout(120)
class AheadForecastsPageTest {
    @Test
    void one_is_kept_by_hand_under_a_name_and_let_go_again() throws Exception {
        SettableClock clock = new SettableClock(Clock.fixed(Instant.parse("2026-11-18T08:00:00Z"), ZoneOffset.UTC));
        try (ServerFixture server = ServerFixture.under(clock, SmallProject::fill)) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply early = ilse.form(ilse.get("/ahead/forecasts"))
                    .with("name", "Too soon")
                    .press("keep");
            assertThat(early.troubles())
                    .containsExactly("no forecast is finished yet; wait until the first is drawn and press it again");
            ilse.get("/ahead");
            server.app().forecasts().orElseThrow().await();
            Visitor.Reply page = ilse.get("/ahead/forecasts");
            assertThat(page.page().select("section:has(#hand-head) .quiet").text())
                    .isEqualTo("None yet.");
            assertThat(page.page().select("section:has(#self-head) time").eachAttr("datetime"))
                    .containsExactly("2026-11-18");
            page = ilse.follow(ilse.form(page).with("name", "Before the frost").press("keep"));
            assertThat(page.page().select("section:has(#hand-head) li b").text())
                    .isEqualTo("Before the frost");
            assertThat(page.page().select("section:has(#hand-head) li .quiet").text())
                    .startsWith("Weir ");
            // a day later it still stands, and the day has one of its own
            clock.step(Duration.ofDays(1));
            ilse.get("/ahead");
            server.app().forecasts().orElseThrow().await();
            page = ilse.get("/ahead/forecasts");
            assertThat(page.page().select("section:has(#self-head) time").eachAttr("datetime"))
                    .containsExactly("2026-11-19", "2026-11-18");
            page = ilse.follow(ilse.form(page, "section form").press("let-go"));
            assertThat(page.page().select("section:has(#hand-head) .quiet").text())
                    .isEqualTo("None yet.");
        }
    }
}
