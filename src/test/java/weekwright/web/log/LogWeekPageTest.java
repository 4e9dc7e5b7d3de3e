package weekwright.web.log;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class LogWeekPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void each_person_has_a_line_of_the_week_with_sums() {
        Visitor.Reply page = SERVER.as("ilse").get("/log/week?of=2026-11-12");
        assertThat(page.page().select("h1").text()).isEqualTo("Logged from 9 November to 15 November");
        assertThat(page.page().select(".week-hours tr").eachText())
                .containsExactly(
                        "Who Mon Tue Wed Thu Fri Sat Sun Together",
                        "Ilse 7 h 6½ h – – – – – 13½ h",
                        "Bram – – – – – – – 0 h",
                        "Noor – – – – – – – 0 h",
                        "Together 7 h 6½ h – – – – – 13½ h");
        assertThat(page.page().select("main ul.ruled li").eachText())
                .containsExactly("9 Nov, Ilse: Set the sill stones 7 h", "10 Nov, Ilse: Set the sill stones 6½ h");
    }

    @Test
    void eight_weeks_are_drawn_by_person_against_the_hours_that_were_stated() {
        Visitor.Reply page = SERVER.as("ilse").get("/log/week?of=2026-11-12");
        assertThat(page.page().select(".weeks-hours tr").eachText())
                .hasSize(9)
                .startsWith("Week from Ilse Bram Noor", "9 Nov 13½ h of 36 h 0 h of 30 h 0 h of 4 h")
                .endsWith("21 Sep 0 h of 36 h 0 h of 30 h 0 h of 4 h");
        assertThat(page.page().select(".weeks-hours svg.tally")).hasSize(24);
        assertThat(page.page().select(".weeks-hours tr:nth-child(1) .tally-logged"))
                .hasSize(1);
    }

    @Test
    void an_empty_week_says_what_belongs_there_and_why() {
        Visitor.Reply page = SERVER.as("ilse").get("/log/week?of=nonsense");
        assertThat(page.page().select(".empty-sheet .words").text())
                .isEqualTo("Nothing is logged for this week. Logged hours are what every estimate and every date"
                        + " learns from.");
        assertThat(page.page().select("main .buttons a[href*=of=]").eachText()).containsExactly("The week before");
    }

    @Test
    void a_helper_sees_their_own_line_alone() {
        Visitor.Reply page = SERVER.as("noor").get("/log/week?of=2026-11-12");
        assertThat(page.text()).doesNotContain("Set the sill stones");
    }

    /** The small project began on Tuesday 1 September 2026. */
    @Test
    void nothing_is_stated_before_the_first_day_of_the_build() {
        Visitor.Reply page = SERVER.as("ilse").get("/log/week?of=2026-09-03");
        assertThat(page.page().select(".weeks-hours tr").eachText())
                .startsWith(
                        "Week from Ilse Bram Noor", "31 Aug 0 h of 28 h 0 h of 24 h 0 h of 4 h", "24 Aug 0 h 0 h 0 h");
    }
}
