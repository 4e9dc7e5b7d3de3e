package weekwright.web.week;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class WeekShotsPageTest {
    @Test
    void what_is_wanted_is_listed_by_task_and_ticked_off_in_one_tap() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor noor = server.as("noor");
            Visitor.Reply list = noor.get("/week/shots");
            assertThat(list.page().select("h1").text()).isEqualTo("2 shots wanted");
            assertThat(list.page().select(".lead").text()).isEqualTo("Two are must-have and one happens once only.");
            assertThat(list.page().select(".shot-list .shot > span").eachText())
                    .containsExactlyInAnyOrder(
                            "Once only The gate drops home wide, must have",
                            "First shaving off the board close, for no. 12, Boards for the gate, must have");
            Visitor.Reply ticked = noor.follow(
                    noor.form(list, "li:contains(First shaving) form").press("capture"));
            assertThat(ticked.page().select(".flash p").text()).isEqualTo("Captured: First shaving off the board.");
            assertThat(ticked.page().select("h1").text()).isEqualTo("1 shot wanted");
            assertThat(ticked.page()
                            .select("section[aria-labelledby=captured-head] .shot")
                            .text())
                    .isEqualTo("First shaving off the board close, while: Plane the gate boards, for no. 12, Boards for"
                            + " the gate, must have, captured Wed 25 Nov");
            noor.form(ticked, ".flash form").send();
            assertThat(noor.get("/week/shots").page().select("h1").text()).isEqualTo("2 shots wanted");
        }
    }

    @Test
    void work_that_an_episode_tells_without_a_shot_is_named_to_the_crew() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply off = ilse.follow(
                    ilse.form(ilse.get("/week/shots/1/edit"), "form.act").press("remove"));
            assertThat(off.page().select(".flash p").text()).isEqualTo("Off the list: First shaving off the board.");
            assertThat(ilse.get("/week/shots")
                            .page()
                            .select("section[aria-labelledby=needs-head] li")
                            .eachText())
                    .containsExactly(
                            "Plane the gate boards, told by no. 12, Boards for the gate Add a shot of Plane the gate boards");
            assertThat(server.as("noor").get("/week/shots").page().select("section[aria-labelledby=needs-head]"))
                    .isEmpty();
        }
    }
}
