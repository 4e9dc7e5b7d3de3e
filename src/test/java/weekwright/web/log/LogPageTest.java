package weekwright.web.log;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.base.Id;
import weekwright.build.LayAside;
import weekwright.build.LinkStore;
import weekwright.build.TaskStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class LogPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void the_person_of_this_browser_and_a_task_are_pressed_already() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/log");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.page().select("h1").text()).isEqualTo("Log, Wed 25 Nov");
        assertThat(page.page().select("input[name=who][checked]").eachAttr("value"))
                .containsExactly("ilse");
        assertThat(page.page().select("input[name=task][checked]").eachAttr("value"))
                .containsExactly("weir.2");
        assertThat(ilse.form(page, "form[data-log]").value("date")).isEqualTo("2026-11-25");
    }

    @Test
    void done_asks_what_became_of_a_once_only_shot_and_keeps_what_was_typed() {
        try (ServerFixture own = ServerFixture.small()) {
            Visitor ilse = own.as("ilse");
            Visitor.Reply asked = ilse.form(ilse.get("/log"), "form[data-log]")
                    .with("task", "other")
                    .with("other", "gate.2")
                    .with("hours", "4")
                    .with("state", "done")
                    .send();
            assertThat(asked.status()).isEqualTo(422);
            assertThat(asked.troubles())
                    .containsExactly(
                            "\"The gate drops home\" is a must-have shot, happens once and is not captured; tick"
                                    + " it off first, or say what became of it to go on");
            Visitor.Form form = ilse.form(asked, "form[data-log]");
            assertThat(form.value("hours")).isEqualTo("4");
            Visitor.Reply saved =
                    ilse.follow(form.with("missed", "The rain came").send());
            assertThat(saved.page().select(".flash p").text())
                    .isEqualTo("4 hours logged for Ilse on Hang the gate. It is done.");
            assertThat(ilse.get("/week/shots/2").page().select(".lead").text()).endsWith("Not captured: The rain came");
        }
    }

    @Test
    void hours_are_logged_said_and_can_be_taken_back_and_brought_back() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply saved = ilse.form(ilse.get("/log"), "form[data-log]")
                .with("hours", "3:15")
                .with("note", "Two stones bedded")
                .send();
        assertThat(saved.to()).isEqualTo("/log");
        Visitor.Reply after = ilse.follow(saved);
        assertThat(after.page().select(".flash p").text())
                .isEqualTo("3¼ hours logged for Ilse on Set the sill stones.");
        assertThat(after.page().select("#today li").eachText())
                .anyMatch(line -> line.startsWith("Ilse, Set the sill stones Two stones bedded 3¼ h"));
        Visitor.Reply back = ilse.follow(ilse.form(after, ".flash form").send());
        assertThat(back.page().select(".flash p").text())
                .isEqualTo("Taken back: hours entry “Ilse, 25 November 2026, Set the sill stones” added.");
        assertThat(back.page().select("#today li").eachText()).noneMatch(line -> line.contains("Two stones bedded"));
        Visitor.Reply again = ilse.follow(ilse.form(back, ".flash form").send());
        assertThat(again.page().select(".flash p").text())
                .isEqualTo("Taken back: hours entry “Ilse, 25 November 2026, Set the sill stones” removed.");
        assertThat(again.page().select("#today li").eachText()).anyMatch(line -> line.contains("Two stones bedded"));
    }

    @Test
    void what_is_wrong_is_told_at_its_field_and_what_was_typed_stays() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply refused = bram.form(bram.get("/log"), "form[data-log]")
                .with("hours", "3x")
                .with("note", "Rain at noon")
                .with("date", "2026-11-26")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"3x\" is not hours; write 3.5 or 3:30",
                        "\"26 November 2026\" is still to come; write 25 November 2026 or an earlier day");
        assertThat(refused.page().select("#hours").val()).isEqualTo("3x");
        assertThat(refused.page().select("#note").val()).isEqualTo("Rain at noon");
        assertThat(refused.page().select("#date").val()).isEqualTo("2026-11-26");
    }

    @Test
    void nobody_pressed_no_hours_and_no_episode_are_all_told_at_once() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply refused = bram.form(bram.get("/log"), "form[data-log]")
                .without("who")
                .with("as", "edit")
                .with("hours", "")
                .send();
        assertThat(refused.troubles())
                .containsExactly(
                        "nobody is pressed; press who worked",
                        "no episode is chosen; choose the episode that was edited",
                        "is missing; it has to be given");
    }

    @Test
    void several_people_get_an_entry_each_and_done_marks_the_task() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply after = bram.follow(bram.form(bram.get("/log"), "form[data-log]")
                .with("who", "ilse", "bram")
                .with("task", "other")
                .with("other", "gate.1")
                .with("hours", "2")
                .with("state", "done")
                .with("cost", "12.40")
                .with("payee", "Ironmonger")
                .send());
        assertThat(after.page().select(".flash p").text())
                .isEqualTo("2 hours each logged for Ilse and Bram on Plane the gate boards. It is done. The cost is"
                        + " in the books.");
        assertThat(SERVER.db()
                        .read(read -> TaskStore.TABLE.find(read, new Id("gate.1")))
                        .orElseThrow()
                        .value()
                        .done())
                .isPresent();
        bram.follow(bram.form(after, ".flash form").send());
        assertThat(SERVER.db()
                        .read(read -> TaskStore.TABLE.find(read, new Id("gate.1")))
                        .orElseThrow()
                        .value()
                        .done())
                .isEmpty();
    }

    @Test
    void nearly_asks_for_the_hours_left_and_keeps_them() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/log"), "form[data-log]")
                .with("hours", "1")
                .with("state", "nearly")
                .send();
        assertThat(refused.troubles()).containsExactly("is missing; say about how many hours are left");
        Visitor.Reply after = ilse.follow(
                ilse.form(refused, "form[data-log]").with("left", "4½").send());
        assertThat(after.page().select(".flash p").text())
                .isEqualTo("1 hour logged for Ilse on Set the sill stones. About 4½ hours left.");
    }

    @Test
    void nothing_done_is_kept_with_its_reason() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/log");
        Visitor.Reply refused = ilse.form(page, ".nothing form").press("nothing");
        assertThat(refused.troubles()).containsExactly("is missing; it has to be given");
        Visitor.Reply after = ilse.follow(
                ilse.form(refused, ".nothing form").with("reason", "weather").press("nothing"));
        assertThat(after.page().select(".flash p").text()).isEqualTo("Ilse: nothing done on 25 November, weather.");
        Visitor.Reply back = ilse.follow(ilse.form(after, ".flash form").send());
        assertThat(back.page().select(".flash p").text())
                .isEqualTo("Taken back: stopped day “Ilse, 25 November 2026” added.");
    }

    @Test
    void a_helper_logs_own_hours_and_no_money() {
        Visitor noor = SERVER.as("noor");
        Visitor.Reply page = noor.get("/log");
        assertThat(page.page().select("input[name=who]").eachAttr("value")).containsExactly("noor");
        assertThat(page.page().select("#cost")).isEmpty();
        Visitor.Reply money = noor.form(page, "form[data-log]")
                .with("hours", "2")
                .with("cost", "5")
                .send();
        assertThat(money.status()).isEqualTo(403);
        assertThat(money.text())
                .contains("Costs are entered by the crew. Nothing was saved; take the cost out and send it again.");
        Visitor.Reply other = noor.form(page, "form[data-log]")
                .with("hours", "2")
                .with("who", "ilse")
                .send();
        assertThat(other.troubles()).containsExactly("\"ilse\" is not one of those here; choose one of the list");
    }

    @Test
    void how_it_is_is_asked_from_70_percent_of_the_estimate_on_and_others_found_work_and_laying_aside_are_kept() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply page = ilse.get("/log");
            assertThat(page.page().select("input[value=weir.2]").hasClass("early"))
                    .isTrue();
            Visitor.Reply after = ilse.follow(ilse.form(page, "form[data-log]")
                    .with("hours", "8")
                    .with("others", "2")
                    .with("found", "Shore the bank")
                    .with("found_hours", "6")
                    .with("found_first", "yes")
                    .with("after", "aside")
                    .send());
            assertThat(after.page().select(".flash p").text())
                    .isEqualTo("8 hours each logged for Ilse and two others on Set the sill stones. Found: Shore the"
                            + " bank. It is laid aside.");
            assertThat(server.db().read(LinkStore.TABLE::values))
                    .extracting(link -> link.task() + " after " + link.after())
                    .contains("weir.2 after weir.4");
            var sill = server.db()
                    .read(read -> TaskStore.TABLE.find(read, new Id("weir.2")))
                    .orElseThrow()
                    .value();
            assertThat(LayAside.isAside(sill, LocalDate.of(2026, 11, 25))).isTrue();
            Visitor.Reply refused = ilse.form(ilse.get("/log"), "form[data-log]")
                    .with("hours", "1")
                    .with("others", "-1")
                    .with("found_hours", "2")
                    .send();
            assertThat(refused.troubles())
                    .containsExactlyInAnyOrder(
                            "is missing; write what was found", "\"-1\" is not 0 to 99; write how many there were");
        }
    }

    @Test
    void from_70_percent_on_it_is_asked_and_work_that_has_to_be_done_again_is_listed_once_more() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            // 13.5 of 30 hours stand there; 7.5 more are 70 %
            ilse.form(ilse.get("/log"), "form[data-log]").with("hours", "7.5").send();
            Visitor.Reply page = ilse.get("/log");
            assertThat(page.page().select("input[value=weir.2]").hasClass("early"))
                    .isFalse();
            Visitor.Reply after = ilse.follow(ilse.form(page, "form[data-log]")
                    .with("hours", "1")
                    .with("after", "again")
                    .send());
            assertThat(after.page().select(".flash p").text())
                    .startsWith("1 hour logged for Ilse on Set the sill stones. It is done. Listed once more: Set the"
                            + " sill stones, again.");
            var again = server.db()
                    .read(read -> TaskStore.TABLE.find(read, new Id("weir.4")))
                    .orElseThrow()
                    .value();
            assertThat(again.redoOf()).contains(new Id("weir.2"));
            assertThat(again.isOpen()).isTrue();
            assertThat(server.db().read(LinkStore.TABLE::values))
                    .extracting(link -> link.task() + " after " + link.after())
                    .contains("weir.3 after weir.4", "weir.3 after weir.2");
        }
    }
}
