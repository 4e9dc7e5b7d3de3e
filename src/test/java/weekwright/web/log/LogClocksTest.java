package weekwright.web.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.build.HoursEntryStore;
import weekwright.build.RunningClock;
import weekwright.build.RunningClockStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SettableClock;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/** The clock of Log. It is Wednesday 25 November 2026, 9:00 in the project's zone. */
class LogClocksTest {
    private final SettableClock clock = new SettableClock(ServerFixture.CLOCK);
    private ServerFixture server;
    private Visitor ilse;

    @BeforeEach
    void start() {
        server = ServerFixture.under(clock, SmallProject::fill);
        ilse = server.as("ilse");
    }

    @AfterEach
    void close() {
        server.close();
    }

    private Visitor.Reply startOn(Visitor who, String task) {
        var form = who.form(who.get("/log"), "form[data-log]");
        return who.follow(form.with("task", "other")
                .with("other", task)
                .with("do", "start-clock")
                .send());
    }

    private int entries() {
        return server.db().read(read -> HoursEntryStore.TABLE.values(read).size());
    }

    private static String clocks(Visitor.Reply page) {
        return page.page().select(".clocks li .what").text();
    }

    private Visitor.Reply press(Visitor.Reply page, String act) {
        var form = ilse.form(page, ".clocks form.acts");
        return ilse.follow(form.with("do", act).send());
    }

    @Test
    void a_clock_runs_on_while_the_page_is_closed_and_is_seen_from_another_browser() {
        long version = server.db().version();
        Visitor.Reply begun = startOn(ilse, "weir.2");
        assertThat(begun.page().select(".flash p").text()).isEqualTo("The clock runs on Set the sill stones.");
        assertThat(clocks(begun)).isEqualTo("Ilse, Set the sill stones since 9:00, 0 min so far");
        clock.step(Duration.ofMinutes(158));
        assertThat(clocks(server.as("bram").get("/log")))
                .isEqualTo("Ilse, Set the sill stones since 9:00, 2 h 38 min so far");
        assertThat(server.db().version()).isEqualTo(version);
    }

    @Test
    void stopping_opens_the_filled_form_and_logs_nothing_before_it_is_saved() {
        int before = entries();
        Visitor.Reply begun = startOn(ilse, "weir.2");
        clock.step(Duration.ofMinutes(158));
        Visitor.Reply form = press(begun, "stop-clock");
        assertThat(form.address()).endsWith("/log?clock=ilse~weir.2");
        assertThat(form.page().select("#hours").val()).isEqualTo("2¾");
        assertThat(form.page().select(".hours-field .hint").text())
                .isEqualTo("The clock ran 9:00 to 11:38: 2 h 38 min; to the nearest quarter of an hour, at least one.");
        assertThat(form.page().select("input[name=task][checked]").val()).isEqualTo("weir.2");
        assertThat(clocks(form)).isEqualTo("Ilse, Set the sill stones 9:00 to 11:38, not saved yet");
        assertThat(entries()).isEqualTo(before);

        Visitor.Reply refused =
                ilse.form(form, "form[data-log]").with("hours", "x").send();
        assertThat(refused.troubles()).containsExactly("\"x\" is not hours; write 3.5 or 3:30");
        Visitor.Reply saved = ilse.follow(
                ilse.form(refused, "form[data-log]").with("hours", "2¾").send());
        assertThat(saved.page().select(".flash p").text())
                .isEqualTo("2¾ hours logged for Ilse on Set the sill stones.");
        assertThat(clocks(saved)).isEmpty();
        List<RunningClock> left = server.db().read(RunningClockStore::all);
        assertThat(left).isEmpty();
    }

    @Test
    void starting_on_another_task_stops_the_first_and_opens_its_form() {
        startOn(ilse, "weir.2");
        clock.step(Duration.ofMinutes(60));
        Visitor.Reply next = startOn(ilse, "gate.1");
        assertThat(next.address()).endsWith("/log?clock=ilse~weir.2");
        assertThat(next.page().select(".flash p").text())
                .isEqualTo(
                        "The clock runs on Plane the gate boards. The one on Set the sill stones is stopped; its hours"
                                + " are below.");
        assertThat(next.page().select("#hours").val()).isEqualTo("1");
        assertThat(next.page().select(".hours-field .hint").text())
                .isEqualTo("The clock ran 9:00 to 10:00: 1 h 0 min.");
        assertThat(clocks(next))
                .isEqualTo("Ilse, Set the sill stones 9:00 to 10:00, not saved yet"
                        + " Ilse, Plane the gate boards since 10:00, 0 min so far");
    }

    @Test
    void a_clock_left_over_midnight_is_asked_about_and_proposes_nothing() {
        startOn(ilse, "weir.2");
        clock.step(Duration.ofHours(23));
        Visitor.Reply page = ilse.get("/log");
        assertThat(clocks(page)).isEqualTo("Ilse, Set the sill stones since Wed 25 Nov, 9:00: it was left running");
        assertThat(page.page().select(".clocks .until label").text()).isEqualTo("Until when did Ilse work?");
        assertThat(page.page().select(".clocks button[value=stop-clock]")).isEmpty();
        Visitor.Reply refused = ilse.form(page, ".clocks form.until")
                .with("until", "half four")
                .with("do", "until-clock")
                .send();
        assertThat(refused.page().select(".until .error").text())
                .isEqualTo("\"half four\" is not a time of day; write hours and minutes, such as 08:30");
        assertThat(refused.page().select("#until").val()).isEqualTo("half four");
        Visitor.Reply form = ilse.follow(ilse.form(refused, ".clocks form.until")
                .with("until", "16:30")
                .with("do", "until-clock")
                .send());
        assertThat(form.page().select("#hours").val()).isEqualTo("7½");
        assertThat(form.page().select("#date").val()).isEqualTo("2026-11-25");
        press(form, "drop-clock");
    }

    @Test
    void a_clock_left_for_more_than_twelve_hours_of_one_day_is_asked_about() {
        startOn(ilse, "weir.2");
        clock.step(Duration.ofMinutes(12 * 60 + 1));
        Visitor.Reply page = ilse.get("/log");
        assertThat(clocks(page)).isEqualTo("Ilse, Set the sill stones since 9:00: it was left running");
        Visitor.Reply refused = ilse.form(page, ".clocks form.until")
                .with("until", "22:00")
                .with("do", "until-clock")
                .send();
        assertThat(refused.page().select(".until .error").text())
                .isEqualTo("is still to come; write when the work ended");
    }

    @Test
    void a_clock_can_be_thrown_away() {
        Visitor.Reply begun = startOn(ilse, "weir.2");
        Visitor.Reply page = press(begun, "drop-clock");
        assertThat(page.page().select(".flash p").text())
                .isEqualTo("The clock on Set the sill stones is thrown away; nothing is logged.");
        assertThat(page.page().select(".clocks")).isEmpty();
        Visitor.Reply gone =
                ilse.form(begun, ".clocks form.acts").with("do", "stop-clock").send();
        assertThat(gone.status()).isEqualTo(403);
        assertThat(gone.text())
                .contains("This clock is not there any more, or it is somebody else's. Look at Log for what runs.");
    }

    @Test
    void nobody_or_two_pressed_no_task_a_running_one_and_a_finished_one_are_refused() {
        Visitor.Reply none = ilse.form(ilse.get("/log"), "form[data-log]")
                .without("who")
                .with("task", "other")
                .with("other", "")
                .with("note", "Frost")
                .with("do", "start-clock")
                .send();
        assertThat(none.status()).isEqualTo(422);
        assertThat(none.troubles())
                .containsExactly(
                        "nobody is pressed; press whose clock is to run",
                        "no task is chosen; choose the task that is worked on");
        assertThat(none.page().select("#note").val()).isEqualTo("Frost");
        Visitor.Reply two = ilse.form(ilse.get("/log"), "form[data-log]")
                .with("who", "ilse", "bram")
                .with("do", "start-clock")
                .send();
        assertThat(two.troubles())
                .containsExactly("the clock counts for one person; press one, and name the others when it is stopped");
        startOn(ilse, "weir.2");
        Visitor.Reply twice = ilse.form(ilse.get("/log"), "form[data-log]")
                .with("task", "other")
                .with("other", "weir.2")
                .with("do", "start-clock")
                .send();
        assertThat(twice.troubles())
                .containsExactly(
                        "\"Set the sill stones\" has its clock running already; stop it when the work is over");
    }

    @Test
    void a_clock_can_be_started_from_the_page_of_the_task() {
        Visitor.Reply page = ilse.get("/build/tasks/weir.2");
        Visitor.Reply begun = ilse.follow(
                ilse.form(page, "form[action=/log]").with("do", "start-clock").send());
        assertThat(clocks(begun)).isEqualTo("Ilse, Set the sill stones since 9:00, 0 min so far");
    }

    @Test
    void minutes_are_rounded_to_the_nearest_quarter_and_never_to_nothing() {
        assertThat(RunningClock.rounded(0)).isEqualTo(15);
        assertThat(RunningClock.rounded(7)).isEqualTo(15);
        assertThat(RunningClock.rounded(22)).isEqualTo(15);
        assertThat(RunningClock.rounded(23)).isEqualTo(30);
        assertThat(RunningClock.rounded(158)).isEqualTo(165);
    }
}
