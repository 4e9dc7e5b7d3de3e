package weekwright.web.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SettableClock;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/** On Wednesday 18 November one thing was said, a week later another: Ahead says why. */
@Timeout(120)
class AheadMovedTest {
    private static Visitor.Reply drawn(ServerFixture server, Visitor visitor) throws Exception {
        visitor.get("/ahead");
        server.app().forecasts().orElseThrow().await();
        return visitor.get("/ahead");
    }

    @Test
    void a_week_later_the_page_says_by_how_much_each_stage_moved_and_by_what() throws Exception {
        SettableClock clock = new SettableClock(Clock.fixed(Instant.parse("2026-11-18T08:00:00Z"), ZoneOffset.UTC));
        try (ServerFixture server = ServerFixture.under(clock, SmallProject::fill)) {
            Visitor ilse = server.as("ilse");
            assertThat(drawn(server, ilse).page().select(".moved")).isEmpty();
            clock.step(Duration.ofDays(7));
            ilse.form(ilse.get("/build/tasks/weir.3/edit"))
                    .with("low", "")
                    .with("likely", "120")
                    .with("high", "")
                    .send();
            ilse.form(ilse.get("/log"), "form[data-log]").with("hours", "3").send();
            Visitor.Reply page = drawn(server, ilse);
            assertThat(page.page().select(".moved h2").text()).startsWith("What was said on 18 November");
            List<String> heads = page.page().select(".moved thead th").eachText();
            assertThat(heads).containsExactly("Stage", "Then", "Now", "Moved", "By");
            String weir = page.page().select(".moved tbody tr").get(0).text();
            assertThat(weir).containsIgnoringCase("estimates +");
            assertThat(page.page().select(".changed").text())
                    .contains("Days passed and work logged seven days have passed 3 hours logged")
                    .contains("Estimates estimated otherwise: ");
            // and in the picture, where that is asked for
            assertThat(page.page().select(".ghost, .ghost-peg")).isEmpty();
            assertThat(page.page().select(".weeks-ways li").last().text())
                    .isEqualTo("With what was said on 18 November");
            Visitor.Reply both =
                    ilse.get(page.page().select(".weeks-ways li a").last().attr("href"));
            assertThat(both.page().select("svg.ahead-wide .ghost-peg")).isNotEmpty();
            assertThat(both.page().select("svg.ahead-upright .ghost-peg")).isNotEmpty();
            assertThat(both.page().select(".key li").last().text()).isEqualTo("As it was said on 18 November");
            assertThat(both.page().select("svg.ahead-wide a.thing").eachAttr("aria-label"))
                    .anyMatch(said -> said.matches("Weir is done about .*\\. Before: .*\\."));
            assertThat(both.page().select(".weeks-ways li").last().text())
                    .isEqualTo("Without what was said on 18 November");
            // the same on the stage's own page, once it is kept
            assertThat(ilse.get("/build/stages/weir").page().select(".moved-by").text())
                    .startsWith("Since the forecast of 18 November it moved +")
                    .contains("estimates +")
                    .endsWith(" days. All stages");
        }
    }
}
