package weekwright.web.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import weekwright.forecast.Forecasts;
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
            // every page begins a forecast, which may be there before a button is pressed
            Forecasts forecasts = server.app().forecasts().orElseThrow();
            synchronized (forecasts) {
                forecasts.current(LocalDate.of(2026, 11, 18));
                forecasts.stop(LocalDate.of(2026, 11, 18));
            }
            Visitor ilse = server.as("ilse");
            Visitor.Reply early = ilse.form(ilse.get("/ahead/forecasts"))
                    .with("name", "Too soon")
                    .press("keep");
            assertThat(early.troubles())
                    .containsExactly("no forecast is finished yet; wait until the first is drawn and press it again");
            forecasts.draw(LocalDate.of(2026, 11, 18));
            forecasts.await();
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
            forecasts.await();
            page = ilse.get("/ahead/forecasts");
            assertThat(page.page().select("section:has(#self-head) time").eachAttr("datetime"))
                    .containsExactly("2026-11-19", "2026-11-18");
            page = ilse.follow(ilse.form(page, "section form").press("let-go"));
            assertThat(page.page().select("section:has(#hand-head) .quiet").text())
                    .isEqualTo("None yet.");
        }
    }
}
