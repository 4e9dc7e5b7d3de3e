package weekwright.web.week;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class WeekShotPageTest {
    private static ServerFixture server;

    @BeforeAll
    static void start() {
        server = ServerFixture.small();
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Test
    void a_helper_ticks_a_shot_off_with_clip_minutes_and_takes_and_it_is_taken_back() {
        Visitor noor = server.as("noor");
        Visitor.Reply page = noor.get("/week/shots/2");
        assertThat(page.page().select(".lead").text()).isEqualTo("Once only Wide, while: Hang the gate, must have.");
        assertThat(page.page().select("a[href$=edit]")).isEmpty();
        Visitor.Reply refused = noor.form(page)
                .with("clip", "A03 C0112")
                .with("minutes", "0")
                .with("day", "2026-11-26")
                .with("takes", "Second one")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"26 November 2026\" is after today, 25 November 2026; mark it once it is captured",
                        "\"0\" is no footage; write more than 0, or leave it empty");
        assertThat(noor.form(refused).value("takes")).isEqualTo("Second one");
        Visitor.Reply saved = noor.follow(noor.form(refused)
                .with("minutes", "4,5")
                .with("day", "2026-11-25")
                .send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("Captured: The gate drops home.");
        Visitor.Form form = noor.form(noor.get("/week/shots/2"));
        assertThat(form.value("clip")).isEqualTo("A03 C0112");
        assertThat(form.value("minutes")).isEqualTo("4.5");
        assertThat(form.value("takes")).isEqualTo("Second one");
        noor.form(saved, ".flash form").send();
        assertThat(noor.form(noor.get("/week/shots/2")).value("clip")).isEmpty();
    }

    @Test
    void a_shot_is_called_off_for_safety_and_wanted_again() {
        Visitor noor = server.as("noor");
        Visitor.Reply off =
                noor.follow(noor.form(noor.get("/week/shots/1"), "form.act").press("off"));
        assertThat(off.page().select(".flash p").text())
                .isEqualTo("Not filmed, called off for safety: First shaving off the board.");
        Visitor.Reply again =
                noor.follow(noor.form(noor.get("/week/shots/1"), "form.act").press("uncapture"));
        assertThat(again.page().select(".flash p").text())
                .isEqualTo("Still to be captured: First shaving off the board.");
    }
}
