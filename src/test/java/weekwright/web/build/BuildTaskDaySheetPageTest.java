package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildTaskDaySheetPageTest {
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
    void what_must_stand_who_is_there_and_the_once_only_shots_with_five_boxes_stand_on_it() {
        Visitor ilse = server.as("ilse");
        ilse.form(ilse.get("/week/lines/new"))
                .with("date", "2026-12-18")
                .with("crew", "bram")
                .with("kind", "film")
                .with("task", "gate.2")
                .with("from", "08:30")
                .with("to", "12:00")
                .send();
        Visitor.Reply page = ilse.follow(ilse.form(ilse.get("/build/tasks/gate.2/day-sheet"), ".day-words form")
                .with("begins", "09:00")
                .with("stop_word", "Halt")
                .with("fallback", "Monday")
                .with("running", "09:40 Wedges out on the call\nTea when it hangs")
                .with("places", "Noor: at the foot of the ladder\nA neighbour: at the lane, keeping people out")
                .with("cameras", "Wide from the loft, nobody beside it")
                .send());
        assertThat(page.page().select(".flash p").text()).isEqualTo("The words of the day sheet are kept.");
        assertThat(page.page().select(".page-head .lead").text())
                .isEqualTo("Sluice gate. Friday 18 December. Begins at 09:00.");
        assertThat(page.page().select("section[aria-labelledby=go-head] li").eachText())
                .containsExactly(
                        "Done before it: Lime cures not yet",
                        "Done before it: Plane the gate boards not yet",
                        "Done before it: Forge the straps not yet",
                        "One person for it: Ilse, Bram and Noor stands",
                        "Somebody for the camera: Bram",
                        "Permits and notices, and who gave them:");
        assertThat(page.page()
                        .select("section[aria-labelledby=order-head] tbody tr")
                        .eachText())
                .startsWith(
                        "09:00 all Walk through it cold; agree the stop word; Hang the gate begins",
                        "09:40 Wedges out on the call",
                        "Tea when it hangs",
                        "08:30 to 12:00 Bram film Hang the gate");
        assertThat(page.page().select("section[aria-labelledby=order-head] tbody tr"))
                .hasSize(8);
        assertThat(page.page()
                        .select("section[aria-labelledby=places-head] tbody tr")
                        .eachText())
                .containsExactly(
                        "Ilse",
                        "Bram camera",
                        "Noor at the foot of the ladder",
                        "A neighbour at the lane, keeping people out");
        assertThat(page.page()
                        .select("section[aria-labelledby=cameras-head] .checks li")
                        .get(0)
                        .text())
                .isEqualTo("Wide from the loft, nobody beside it");
        assertThat(page.page().select(".once-shot").text())
                .isEqualTo("Once only The gate drops home, wide; minded by Bram card empty battery focus locked second"
                        + " camera sound");
        assertThat(page.page().select(".words-of-day").text())
                .isEqualTo("Stop word Halt: anybody says it, everybody stops Falls back on Monday");
        assertThat(page.page().select(".emergency").text()).startsWith("If something happens Call 112");
    }

    @Test
    void materials_and_cautions_stand_on_it_with_what_is_still_to_come() {
        Visitor.Reply page = server.as("ilse").get("/build/tasks/gate.3/day-sheet?date=2026-12-04");
        assertThat(page.page().select("section[aria-labelledby=go-head] li").eachText())
                .contains(
                        "Everything that it follows is done stands",
                        "Somebody beside, who does not hold the camera stands",
                        "Everybody has read the cautions below and knows the stop word")
                .anyMatch(line -> line.matches("Flat iron, 6 m: not ordered yet.* not yet"));
        assertThat(page.page().select(".day-care .caution").eachText()).hasSize(2);
        assertThat(page.page().select(".caution-foot").text()).contains("Local codes");
    }

    @Test
    void a_day_that_is_none_and_a_task_that_is_none_are_told_and_a_helper_is_sent_away() {
        Visitor ilse = server.as("ilse");
        assertThat(ilse.get("/build/tasks/gate.2/day-sheet?date=2026-02-30").text())
                .isEqualTo("Nothing stands here \"2026-02-30\" is not a day of the calendar.");
        assertThat(ilse.get("/build/tasks/gate.9/day-sheet").text())
                .isEqualTo("Nothing stands here There is no task \"gate.9\".");
        assertThat(server.as("noor").get("/build/tasks/gate.2/day-sheet").status())
                .isEqualTo(403);
    }

    @Test
    void faults_in_its_words_are_said_at_once_and_a_later_writer_is_told() {
        try (ServerFixture own = ServerFixture.small()) {
            Visitor ilse = own.as("ilse");
            Visitor.Reply refused = ilse.form(ilse.get("/build/tasks/gate.2/day-sheet"), ".day-words form")
                    .with("begins", "nine")
                    .with("stop_word", "x".repeat(41))
                    .send();
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.troubles()).hasSize(2);
            assertThat(refused.troubles().get(0))
                    .isEqualTo("\"nine\" is not a time of day; write hours and minutes, such as 08:30");
            ilse.follow(ilse.form(refused, ".day-words form")
                    .with("begins", "9:00")
                    .with("stop_word", "Halt")
                    .send());
            Visitor.Reply mine = ilse.get("/build/tasks/gate.2/day-sheet");
            Visitor bram = own.as("bram");
            bram.follow(bram.form(bram.get("/build/tasks/gate.2/day-sheet"), ".day-words form")
                    .with("stop_word", "Hold")
                    .send());
            assertThat(ilse.form(mine, ".day-words form")
                            .with("fallback", "Tuesday")
                            .send()
                            .status())
                    .isEqualTo(409);
        }
    }
}
