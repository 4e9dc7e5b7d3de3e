package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.build.StageStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class BuildTaskPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_task_shows_its_facts_its_links_and_its_hours() {
        Visitor.Reply page = SERVER.as("ilse").get("/build/tasks/weir.1");
        assertThat(page.page().select("h1").text()).isEqualTo("Dig the footing");
        assertThat(page.page().select(".lead").text()).isEqualTo("Done on 16 October.");
        assertThat(page.page().select("section[aria-labelledby=hours-head] tbody tr"))
                .hasSize(3);
        assertThat(page.page()
                        .select("section[aria-labelledby=links-head] caption, section[aria-labelledby=links-head]"
                                + " tbody th")
                        .eachText())
                .containsExactly("Is waited for by", "Set the sill stones");
    }

    @Test
    void a_season_and_a_first_day_are_said_with_how_far_off_they_are() {
        try (ServerFixture own = ServerFixture.small()) {
            Visitor ilse = own.as("ilse");
            assertThat(facts(ilse, "season_from", "04-01", "season_to", "12-10", "not_before", "2026-11-30"))
                    .contains(
                            "Season 1 April to 10 December; it closes in 2 weeks", "Not before 30 November, in 5 days");
            assertThat(facts(ilse, "season_from", "12-04", "season_to", "02-29", "not_before", ""))
                    .contains("Season 4 December to 29 February; it opens in 9 days");
            assertThat(facts(ilse, "season_from", "03-01", "season_to", "10-31", "not_before", ""))
                    .contains("Season 1 March to 31 October");
        }
    }

    private static List<String> facts(Visitor ilse, String... typed) {
        Visitor.Form form = ilse.form(ilse.get("/build/tasks/gate.2/edit"), "form.form");
        for (int i = 0; i < typed.length; i += 2) {
            form = form.with(typed[i], typed[i + 1]);
        }
        return ilse.follow(form.send()).page().select(".facts div").eachText();
    }

    @Test
    void a_task_that_nobody_can_do_says_why() {
        try (ServerFixture own = ServerFixture.small()) {
            Visitor ilse = own.as("ilse");
            assertThat(ilse.get("/build/tasks/gate.2").page().select(".remark-box"))
                    .isEmpty();
            ilse.follow(ilse.form(ilse.get("/build/tasks/gate.2/edit"), "form.form")
                    .with("trades", "glazier")
                    .send());
            assertThat(ilse.get("/build/tasks/gate.2")
                            .page()
                            .select(".remark-box")
                            .text())
                    .isEqualTo(
                            "Nobody can do it as things stand. \"glazier\" is no trade of anybody in the crew; add it"
                                    + " to somebody's trades.");
        }
    }

    /** As in the engine: a crew of two may lift together, one of them alone may not. */
    @Test
    void rule_125_two_hands_are_each_others_company_on_the_page_too() {
        try (ServerFixture own = ServerFixture.of(SmallProject::fillWithOnePerson)) {
            Visitor ilse = own.as("ilse");
            ilse.follow(ilse.form(ilse.get("/build/stages/new"))
                    .with("name", "Roof")
                    .send());
            Visitor.Reply alone = ilse.follow(ilse.form(ilse.get("/build/tasks/new"), "form.form")
                    .with("title", "Set the beam")
                    .with(
                            "stage",
                            own.db().read(StageStore.TABLE::values).get(0).id().value())
                    .with("likely", "6")
                    .with("hazards", "lift")
                    .send());
            assertThat(alone.page().select(".remark-box").text())
                    .isEqualTo("Nobody can do it as things stand. \"by\" asks for another person, and no day of the"
                            + " next 12 months has one; ask somebody in for a day.");
            ilse.follow(ilse.form(ilse.get("/crew/members/new"), "form.form")
                    .with("name", "Bram")
                    .with("mon", "6")
                    .send());
            ilse.follow(ilse.form(ilse.get("/build/tasks/roof.1/edit"), "form.form")
                    .with("hands", "2")
                    .send());
            assertThat(ilse.get("/build/tasks/roof.1").page().select(".remark-box"))
                    .isEmpty();
        }
    }

    @Test
    void done_is_refused_with_the_reason_then_taken_and_taken_back() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/build/tasks/gate.2"), "form:has(button[value=done])")
                .press("done");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"Hang the gate\" cannot be done before what it follows: Lime cures, Plane the gate"
                                + " boards and Forge the straps are not done; mark that done first, or log the hours"
                                + " worked on this",
                        "\"The gate drops home\" is a must-have shot, happens once and is not captured; tick it off"
                                + " first, or say what became of it to go on");
        Visitor.Reply done = ilse.follow(ilse.form(ilse.get("/build/tasks/weir.2"), "form:has(button[value=done])")
                .press("done"));
        assertThat(done.page().select(".flash p").text()).isEqualTo("It is done.");
        Visitor.Reply back = ilse.follow(ilse.form(done, ".flash form").send());
        assertThat(back.page().select(".flash p").text()).isEqualTo("Taken back: task “Set the sill stones” changed.");
        assertThat(ilse.form(back, "form:has(button[value=done])").value("day")).isEqualTo("2026-11-25");
    }

    @Test
    void a_task_that_happens_once_is_not_done_without_a_word_about_its_missing_shot() {
        try (ServerFixture own = ServerFixture.small()) {
            Visitor ilse = own.as("ilse");
            Visitor.Reply log = ilse.follow(ilse.form(ilse.get("/log"), "form[data-log]")
                    .with("task", "other")
                    .with("other", "gate.2")
                    .with("hours", "4")
                    .send());
            assertThat(log.status()).isEqualTo(200);
            Visitor.Reply asked = ilse.form(ilse.get("/build/tasks/gate.2"), "form:has(button[value=done])")
                    .with("day", "2026-11-30")
                    .press("done");
            assertThat(asked.status()).isEqualTo(422);
            assertThat(asked.troubles())
                    .containsExactly(
                            "\"30 November 2026\" is after today, 25 November 2026; write the day it happened",
                            "\"The gate drops home\" is a must-have shot, happens once and is not captured; tick it off"
                                    + " first, or say what became of it to go on");
            Visitor.Reply done = ilse.follow(ilse.form(asked, "form:has(button[value=done])")
                    .with("day", "2026-11-25")
                    .with("missed", "The card was full")
                    .press("done"));
            assertThat(done.page().select(".flash p").text()).isEqualTo("It is done.");
            assertThat(done.page().select(".shots .shot").text())
                    .isEqualTo("Once only The gate drops home must have not captured: The card was full");
        }
    }

    @Test
    void hours_left_and_laying_aside_are_said() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply left = ilse.follow(ilse.form(ilse.get("/build/tasks/gate.3"), "form:has(button[value=left])")
                .with("left", "5")
                .press("left"));
        assertThat(left.page().select(".flash p").text()).isEqualTo("About 5 hours left, as you see it today.");
        Visitor.Reply aside =
                ilse.follow(ilse.form(left, "form:has(button[value=aside])").press("aside"));
        assertThat(aside.page().select(".lead").text()).startsWith("Laid aside until it is taken up.");
        Visitor.Reply dropped =
                ilse.follow(ilse.form(aside, "form:has(button[value=dropped])").press("dropped"));
        assertThat(dropped.page().select(".lead").text()).startsWith("Dropped on 25 November.");
        Visitor.Reply open =
                ilse.follow(ilse.form(dropped, "form:has(button[value=open])").press("open"));
        assertThat(open.page().select(".flash p").text()).isEqualTo("It is open again.");
    }

    @Test
    void a_wait_begins_when_somebody_says_so() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/build/tasks/weir.3"), "form:has(button[value=started])")
                .press("started");
        assertThat(refused.troubles())
                .containsExactly("\"Lime cures\" cannot begin before what it follows: Set the sill stones is not done;"
                        + " mark that done first");
    }

    @Test
    void a_helper_sees_it_and_changes_nothing_on_it() {
        Visitor.Reply page = SERVER.as("noor").get("/build/tasks/weir.1");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.page().select("main form")).isEmpty();
    }

    @Test
    void a_task_opened_again_is_not_said_to_be_done_by_a_forecast_that_knew_it_as_done() {
        try (ServerFixture own = ServerFixture.small()) {
            own.drawn();
            Visitor ilse = own.as("ilse");
            Visitor.Reply open = ilse.follow(ilse.form(ilse.get("/build/tasks/weir.1"), "form:has(button[value=open])")
                    .press("open"));
            assertThat(open.page().select(".lead").text()).doesNotContain("October, ");
        }
    }
}
