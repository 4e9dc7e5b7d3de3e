package weekwright.web.log;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class LogAgainPageTest {
    private final ServerFixture server = ServerFixture.small();

    @AfterEach
    void stop() {
        server.close();
    }

    @Test
    void the_lines_of_the_last_day_are_confirmed_for_today() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply page = ilse.get("/log/again");
        assertThat(page.page().select(".lead").text())
                .isEqualTo("What you logged on 10 November, for today. Change the hours; an empty line is left out.");
        assertThat(ilse.form(page).value("hours5")).isEqualTo("6.5");
        Visitor.Reply after = ilse.follow(ilse.form(page).with("hours5", "5:15").send());
        assertThat(after.page().select(".flash p").text()).isEqualTo("5¼ hours logged for today.");
        HoursEntry kept = server.db().read(HoursEntryStore.TABLE::values).get(5);
        assertThat(kept.crew() + " " + kept.date() + " " + kept.task().orElseThrow())
                .isEqualTo("ilse 2026-11-25 weir.2");
    }

    @Test
    void nothing_left_and_no_hours_are_told_at_the_line() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply page = ilse.get("/log/again");
        assertThat(ilse.form(page).with("hours5", "").send().troubles())
                .containsExactly("is empty, and so are all others; leave hours in one line at least");
        assertThat(ilse.form(page).with("hours5", "3x").send().troubles())
                .containsExactly("\"3x\" is not hours; write 3.5 or 3:30");
    }

    @Test
    void who_logged_nothing_is_told_what_will_stand_here() {
        Visitor bram = server.as("bram");
        assertThat(bram.get("/log/again").page().select(".empty-sheet h2").text())
                .isEqualTo("You logged nothing in the last three weeks.");
    }
}
