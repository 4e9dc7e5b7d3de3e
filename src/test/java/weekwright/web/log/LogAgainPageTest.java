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

    @Test
    void the_lines_stay_those_that_were_typed_into_though_another_day_became_the_last_or_an_entry_was_taken_away() {
        Visitor ilse = server.as("ilse");
        Visitor.Form typed = ilse.form(ilse.get("/log/again")).with("hours5", "0");
        Visitor.Reply log = ilse.get("/log");
        ilse.follow(ilse.form(log, "form[data-log]")
                .with("date", "2026-11-24")
                .with("hours", "2")
                .send());
        Visitor.Reply refused = typed.send();
        assertThat(refused.troubles()).containsExactly("\"0\" is under 0.01; write 0.01 to 24");
        assertThat(refused.page().select(".lead").text())
                .isEqualTo("What you logged on 10 November, for today. Change the hours; an empty line is left out.");
        assertThat(ilse.form(refused).value("hours5")).isEqualTo("0");
        Visitor.Form again = ilse.form(refused).with("hours5", "3");
        Visitor.Reply edit = ilse.get("/log/entries/5/edit");
        ilse.follow(ilse.form(edit, ".apart-form").press("delete"));
        Visitor.Reply gone = again.send();
        assertThat(gone.troubles())
                .containsExactly("\"3\" stands beside an entry that was taken away meanwhile; leave the line empty, and"
                        + " enter the hours on Log");
        assertThat(ilse.form(gone).value("hours5")).isEqualTo("3");
        assertThat(gone.page().select("label[for=hours5]").text()).isEqualTo("An entry taken away meanwhile");
    }
}
