package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.base.Id;
import weekwright.build.TaskStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class CrewHistoryPageTest {
    private ServerFixture server;

    @BeforeEach
    void open() {
        server = ServerFixture.small();
    }

    @AfterEach
    void close() {
        server.close();
    }

    private Visitor.Reply logged(Visitor person, String hours) {
        return person.follow(person.form(person.get("/log"), "form[data-log]")
                .with("hours", hours)
                .send());
    }

    @Test
    void every_change_stands_there_with_when_who_and_what() {
        Visitor ilse = server.as("ilse");
        logged(ilse, "2");
        Visitor.Reply page = ilse.get("/crew/history");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.page().select("table.changes tbody tr").get(0).text())
                .isEqualTo(
                        "25 Nov 2026, 09:00 Ilse Hours entry “Ilse, 25 November 2026, Set the sill stones” added Take it"
                                + " back: Hours entry “Ilse, 25 November 2026, Set the sill stones” added");
        assertThat(page.page().select("table.changes tbody tr").get(1).text())
                .isEqualTo("25 Nov 2026, 09:00 Test The project's settings, the settings of publishing, the settings"
                        + " of weather, the settings of orders, the settings of tax, what to do in an"
                        + " emergency, the settings of the forecast, the settings of the build log, 3 people, 2"
                        + " stages, 6 tasks, 5 links, 5 hours entries, 4 episodes, 3 tellings, 2 shots, 2"
                        + " material lines, 1 pledge level, 3 supporters and 3 entries of the books added");
        assertThat(page.page().select("#kind option").eachText())
                .containsExactly(
                        "everything",
                        "Build",
                        "Hours and days",
                        "Week",
                        "Materials and yard",
                        "Episodes",
                        "Money",
                        "Notes",
                        "Crew and equipment",
                        "Kept levers",
                        "Settings");
    }

    @Test
    void the_change_with_which_the_project_began_has_no_button_and_is_refused_when_it_is_asked_for_all_the_same() {
        Visitor ilse = server.as("ilse");
        logged(ilse, "2");
        Visitor.Reply page = ilse.get("/crew/history");
        assertThat(page.page().select("table.changes tbody tr:eq(0) button")).hasSize(1);
        assertThat(page.page().select("table.changes tbody tr:eq(1) button")).isEmpty();
        String first =
                page.page().select("table.changes tbody tr:eq(1)").attr("id").replace("change-", "");
        Visitor.Reply refused =
                ilse.form(page, "table.changes form").with("change", first).press("undo");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("With this change the project began, so it cannot be taken back; start another project"
                        + " in an empty folder");
    }

    @Test
    void changes_are_looked_through_by_kind_and_person() {
        logged(server.as("ilse"), "2");
        logged(server.as("bram"), "1");
        Visitor ilse = server.as("ilse");
        assertThat(ilse.get("/crew/history?kind=hours&who=bram")
                        .page()
                        .select("table.changes tbody tr th, table.changes tbody tr td:nth-child(2)")
                        .eachText())
                .containsExactly("25 Nov 2026, 09:00", "Bram");
        assertThat(ilse.get("/crew/history?kind=notes").text()).contains("Nothing was changed yet.");
        assertThat(ilse.get("/crew/history?kind=%22&who=%27x&before=zz").status())
                .isEqualTo(200);
    }

    @Test
    void more_than_fifty_changes_are_turned_over_page_by_page() throws Exception {
        Visitor ilse = server.as("ilse");
        for (int i = 0; i < 41; i++) {
            server.db().write("ilse", write -> {
                var line = TaskStore.TABLE.find(write, new Id("gate.1")).orElseThrow();
                TaskStore.TABLE.update(write, line.row(), line.version(), line.value());
                return null;
            });
        }
        Visitor.Reply first = ilse.get("/crew/history?kind=build&who=ilse");
        assertThat(first.page().select("table.changes tbody tr")).hasSize(40);
        String earlier = first.page().select("main a:contains(Earlier ones)").attr("href");
        assertThat(ilse.get(earlier).page().select("table.changes tbody tr")).hasSize(1);
    }

    @Test
    void a_change_that_was_changed_again_has_no_button_and_is_refused_with_the_reason() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply first = ilse.follow(ilse.form(ilse.get("/build/tasks/weir.2"), "form:has(button[value=done])")
                .press("done"));
        Visitor bram = server.as("bram");
        bram.form(bram.get("/build/tasks/weir.2"), "form:has(button[value=open])")
                .press("open");
        Visitor.Reply refused = ilse.form(first, ".flash form").send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select(".trouble .head").text()).isEqualTo("Not taken back. Nothing was changed.");
        assertThat(refused.troubles())
                .containsExactly("The task “Set the sill stones” was changed again since, by Bram, so this cannot be"
                        + " taken back; take that back first");
        assertThat(refused.page().select("table.changes tbody tr:eq(0) button")).hasSize(1);
        assertThat(refused.page().select("table.changes tbody tr:eq(1) button")).isEmpty();
    }

    @Test
    void taking_back_what_was_added_goes_on_to_a_page_that_is_there() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply added = ilse.follow(ilse.form(ilse.get("/build/stages/new"))
                .with("name", "Fish pass")
                .send());
        assertThat(added.page().select("h1").text()).contains("Fish pass");
        Visitor.Reply back = ilse.form(added, ".flash form").send();
        assertThat(back.to()).isEqualTo("/build");
        assertThat(ilse.follow(back).page().select(".flash p").text())
                .isEqualTo("Taken back: stage “Fish pass” added.");
    }

    @Test
    void the_same_press_twice_is_done_once() {
        Visitor ilse = server.as("ilse");
        Visitor.Form undo = ilse.form(logged(ilse, "2"), ".flash form");
        assertThat(undo.send().status()).isEqualTo(303);
        long version = server.db().version();
        assertThat(undo.send().status()).isEqualTo(303);
        assertThat(server.db().version()).isEqualTo(version);
    }

    @Test
    void a_helper_takes_back_what_they_did_just_now_and_nothing_else_and_sees_no_history() {
        Visitor noor = server.as("noor");
        assertThat(noor.get("/crew/history").status()).isEqualTo(403);
        Visitor.Reply saved = logged(noor, "2");
        Visitor.Reply back = noor.follow(noor.form(saved, ".flash form").send());
        assertThat(back.page().select(".flash p").text())
                .isEqualTo("Taken back: hours entry “Noor, 25 November 2026, Set the sill stones” added.");
        Visitor.Reply mine = logged(noor, "1");
        logged(server.as("ilse"), "1");
        long others = server.db().version();
        Visitor.Reply refused = noor.form(mine, ".flash form")
                .with("change", Long.toString(others))
                .send();
        assertThat(refused.to()).isEqualTo("/log");
        assertThat(noor.follow(refused).page().select(".flash p").text())
                .isEqualTo("Only what you did yourself just now can be taken back; ask the crew for anything else.");
        assertThat(server.db().version()).isEqualTo(others);
    }

    @Test
    void ten_minutes_later_a_helper_asks_the_crew() {
        Moved clock = new Moved();
        try (ServerFixture later = ServerFixture.under(clock, SmallProject::fill)) {
            Visitor noor = later.as("noor");
            Visitor.Reply saved = logged(noor, "2");
            clock.past = Duration.ofMinutes(11);
            Visitor.Reply refused = noor.form(saved, ".flash form").send();
            assertThat(noor.follow(refused).page().select(".flash p").text())
                    .isEqualTo(
                            "Only what you did yourself just now can be taken back; ask the crew for anything else.");
        }
    }

    @Test
    void another_sites_address_is_not_gone_on_to() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply back = ilse.form(logged(ilse, "2"), ".flash form")
                .with("to", "//elsewhere.example/")
                .send();
        assertThat(back.to()).isEqualTo("/crew/history");
    }

    /** A clock that is put forward by hand. */
    private static final class Moved extends Clock {
        private volatile Duration past = Duration.ZERO;

        @Override
        public ZoneId getZone() {
            return ServerFixture.CLOCK.getZone();
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return Clock.fixed(instant(), zone);
        }

        @Override
        public Instant instant() {
            return ServerFixture.CLOCK.instant().plus(past);
        }
    }

    @Test
    void a_task_that_one_press_changed_twice_is_named_once() {
        Visitor ilse = server.as("ilse");
        ilse.form(ilse.get("/log"), "form[data-log]")
                .with("hours", "2")
                .with("task", "gate.1")
                .with("state", "nearly")
                .with("left", "3")
                .send();
        assertThat(ilse.get("/crew/history")
                        .page()
                        .select("table.changes tbody tr")
                        .get(0)
                        .select("li")
                        .eachText())
                .containsExactly(
                        "Hours entry “Ilse, 25 November 2026, Plane the gate boards” added",
                        "Task “Plane the gate boards” changed");
    }
}
