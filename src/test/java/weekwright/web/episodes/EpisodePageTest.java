package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class EpisodePageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_step_is_refused_then_marked_and_taken_back() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply page = bram.get("/episodes/ep.12");
        Visitor.Reply refused = bram.form(page, "form.mark").with("step", "cut").press("mark");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"Boards for the gate\" cannot be ready before its footage is complete; mark that first");
        assertThat(bram.form(refused, "form.mark").value("step")).isEqualTo("cut");
        Visitor.Reply marked = bram.follow(
                bram.form(refused, "form.mark").with("step", "footage-complete").press("mark"));
        assertThat(marked.page().select(".flash p").text())
                .isEqualTo("Footage complete on 25 November. \"First shaving off the board\" is a must-have shot"
                        + " that is not captured.");
        Visitor.Reply back = bram.follow(bram.form(marked, ".flash form").send());
        assertThat(back.page().select(".flash p").text())
                .isEqualTo("Taken back: episode “no. 12, Boards for the gate” changed, step of an episode “no. 12,"
                        + " Boards for the gate: footage complete” added.");
        assertThat(back.address()).endsWith("/episodes/ep.12");
    }

    @Test
    void a_step_says_who_did_it_and_the_editing_who_is_to_do_it() {
        try (ServerFixture sample = ServerFixture.sample()) {
            Visitor ilse = sample.as("ilse");
            Visitor.Reply page = ilse.get("/episodes/e48");
            assertThat(page.page().select(".steps tr").eachText())
                    .containsExactly(
                            "Footage complete not yet",
                            "Rough cut Tomas, not yet",
                            "Picture lock Tomas, not yet",
                            "Sound Tomas, not yet",
                            "Ready Tomas, not yet",
                            "Published not yet");
            assertThat(page.page().select("section:has(#order-head)").text())
                    .contains("Four parts, 15 of 16 minutes: 1 min still to fill.")
                    .contains("Why a shaft wants hoops 2 min");
            assertThat(page.page().select("section:has(#rights-head) li").eachText())
                    .containsExactly(
                            "“Air for two fiddles”, own recording, no fee, played by Wren and her sister",
                            "Jonas, seen at the anvil: consent got 14 November, on paper in the blue folder");
            assertThat(page.page().select(".facts").text())
                    .contains("Editing")
                    .contains("left of")
                    .contains(", Tomas");
            Visitor.Reply marked = ilse.follow(ilse.form(page, "form.mark")
                    .with("step", "footage-complete")
                    .with("by", "wren")
                    .press("mark"));
            assertThat(marked.page().select(".steps tr").get(0).text())
                    .isEqualTo("Footage complete 25 November, Wren Take it back");
            Visitor.Reply away = ilse.follow(ilse.form(marked, ".steps form").press("unmark"));
            assertThat(away.page().select(".steps tr").get(0).text()).isEqualTo("Footage complete not yet");
            assertThat(ilse.get("/episodes/sb1").page().select(".steps tr").eachText())
                    .contains("Sound 8 July, Ilse", "Ready 8 July, Tomas Take it back");
        }
    }

    @Test
    void a_ready_episode_is_published() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply published =
                bram.follow(bram.form(bram.get("/episodes/ep.11"), "form.mark").press("mark"));
        assertThat(published.page().select(".lead").text()).isEqualTo("Published on 25 November.");
    }

    @Test
    void an_episode_that_is_about_to_be_shown_says_which_rights_are_still_owed() {
        try (ServerFixture sample = ServerFixture.sample()) {
            Visitor ilse = sample.as("ilse");
            ilse.follow(ilse.form(ilse.get("/episodes/e49/rights"), "form.parts-form")
                    .with("releases.0.who", "The smith at the ford")
                    .send());
            ilse.follow(ilse.form(ilse.get("/episodes/e49"), "form.mark")
                    .with("step", "footage-complete")
                    .press("mark"));
            Visitor.Reply ready = ilse.follow(ilse.form(ilse.get("/episodes/e49"), "form.mark")
                    .with("step", "cut")
                    .press("mark"));
            assertThat(ready.page().select(".flash p").text())
                    .isEqualTo("Ready on 25 November. \"Water over stones\" is music whose licence ends on 15 December"
                            + " 2026. \"The smith at the ford\" is a consent that is not got yet.");
            assertThat(ilse.get("/episodes").page().select(".owed").eachText())
                    .containsExactly(
                            "Rack, pinion, gate: The licence of “Water over stones” ends on 15 December, in 3 weeks,"
                                    + " before the episode is out. The consent of The smith at the ford is still to"
                                    + " be got"
                                    + " before 18 December, in 3 weeks.");
        }
    }

    @Test
    void a_shot_is_captured_taken_back_and_called_off() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply captured = bram.follow(bram.form(bram.get("/episodes/ep.12"), "form:has(button[value=capture])")
                .with("clip", "A1 7")
                .press("capture"));
        assertThat(captured.page().select(".flash p").text()).isEqualTo("Captured: First shaving off the board.");
        assertThat(captured.page().select(".shot-forms li span .quiet").get(0).text())
                .isEqualTo("close, must have, captured Wed 25 Nov, clip A1 7");
        Visitor.Reply again = bram.follow(
                bram.form(captured, "form:has(button[value=uncapture])").press("uncapture"));
        Visitor.Reply off =
                bram.follow(bram.form(again, "form:has(button[value=off])").press("off"));
        assertThat(off.page().select(".flash p").text()).isEqualTo("Not filmed, called off for safety.");
        Visitor.Reply wanted =
                bram.follow(bram.form(off, "form:has(button[value=uncapture])").press("uncapture"));
        assertThat(wanted.page().select(".flash p").text())
                .isEqualTo("Still to be captured: First shaving off the board.");
    }

    @Test
    void an_episode_that_is_not_there_is_said() {
        Visitor.Reply page = SERVER.as("bram").get("/episodes/ep.99");
        assertThat(page.status()).isEqualTo(404);
        assertThat(page.text()).contains("There is no episode ep.99.");
    }
}
