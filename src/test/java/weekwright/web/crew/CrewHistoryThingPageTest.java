package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.base.Id;
import weekwright.build.StageStore;
import weekwright.build.TaskStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewHistoryThingPageTest {
    private ServerFixture server;
    private Visitor ilse;

    @BeforeEach
    void open() {
        server = ServerFixture.small();
        ilse = server.as("ilse");
    }

    @AfterEach
    void close() {
        server.close();
    }

    private Visitor.Reply renamed(String title, String likely) {
        return ilse.follow(ilse.form(ilse.get("/build/tasks/gate.1/edit"), "main form.form")
                .with("title", title)
                .with("likely", likely)
                .send());
    }

    @Test
    void the_page_of_a_thing_leads_to_its_history_and_that_tells_before_and_after() {
        Visitor.Reply task = renamed("Plane the boards of the gate", "14");
        String address = task.page().select("footer dd a").attr("href");
        assertThat(address).isEqualTo("/crew/history/things/tasks/4");
        Visitor.Reply page = ilse.get(address);
        assertThat(page.page().select("h1").text()).isEqualTo("Task “Plane the boards of the gate”");
        assertThat(page.page().select(".lead a").attr("href")).isEqualTo("/build/tasks/gate.1");
        assertThat(page.page().select("section.part").get(0).select("tbody tr").eachText())
                .containsExactly(
                        "What is done Plane the gate boards Plane the boards of the gate",
                        "Hours, hours of the first piece, or days 12 14");
        assertThat(page.page()
                        .select("section.part")
                        .get(0)
                        .select(".rule-head")
                        .text())
                .isEqualTo("25 Nov 2026, 09:00 Changed by Ilse");
        assertThat(page.page()
                        .select("section.part")
                        .get(1)
                        .select(".rule-head")
                        .text())
                .isEqualTo("25 Nov 2026, 09:00 Added by test");
        assertThat(page.page().select("section.part").get(1).select("button")).isEmpty();
        assertThat(ilse.get("/crew/history")
                        .page()
                        .select("table.changes a")
                        .get(0)
                        .attr("href"))
                .isEqualTo(address);
    }

    @Test
    void an_earlier_state_is_brought_back_as_a_new_change() {
        renamed("First", "14");
        renamed("Second", "15");
        Visitor.Reply page = ilse.get("/crew/history/things/tasks/4");
        Visitor.Reply back =
                ilse.follow(ilse.form(page, "section.part:eq(2) form").press("back"));
        assertThat(back.page().select(".flash p").text()).isEqualTo("Task “Plane the gate boards” is back as it was.");
        assertThat(back.page().select("section.part")).hasSize(4);
        assertThat(back.page().select("section.part").get(0).select("tbody tr").eachText())
                .containsExactly(
                        "What is done Second Plane the gate boards", "Hours, hours of the first piece, or days 15 12");
        Visitor.Reply undone = ilse.follow(ilse.form(back, ".flash form").send());
        assertThat(undone.page().select("h1").text()).isEqualTo("Task “Second”");
    }

    @Test
    void a_state_that_the_rules_do_not_allow_any_more_is_refused() throws Exception {
        renamed("First", "14");
        server.db().write("bram", write -> {
            var stages = StageStore.TABLE;
            var gate = stages.find(write, new Id("gate")).orElseThrow();
            stages.insert(write, stages.shape().with(gate.value(), "id", new Id("sluice")));
            var tasks = TaskStore.TABLE;
            for (var task : tasks.where(write, "stage", "gate")) {
                tasks.update(
                        write, task.row(), task.version(), tasks.shape().with(task.value(), "stage", new Id("sluice")));
            }
            stages.delete(write, gate.row(), gate.version());
            return null;
        });
        Visitor.Reply page = ilse.get("/crew/history/things/tasks/4");
        Visitor.Reply refused = ilse.form(page, "section.part:eq(2) form").press("back");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("The task “Plane the gate boards” cannot be brought back: it needs the stage “gate”,"
                        + " which is not there any more; bring that back first");
    }

    @Test
    void settings_have_a_history_too_and_things_that_never_were_have_none() {
        Visitor.Reply settings = ilse.get("/crew/history/things/project/1");
        assertThat(settings.page().select("h1").text()).isEqualTo("The project's settings");
        assertThat(settings.text()).contains("Reserve €500.00").contains("To its page");
        assertThat(ilse.get("/crew/history/things/tasks/999").text())
                .isEqualTo("Nothing stands here There is no history of task 999.");
        assertThat(ilse.get("/crew/history/things/log_in/1").text())
                .isEqualTo("Nothing stands here Nothing is kept that is called log_in.");
    }

    @Test
    void another_things_change_is_not_brought_back_here() {
        renamed("First", "14");
        Visitor.Form form = ilse.form(ilse.get("/crew/history/things/tasks/4"), "section.part form");
        Visitor.Reply refused = form.with("change", "1").press("back");
        assertThat(refused.troubles())
                .containsExactly("There is no such earlier state; look in the history for the one that is meant");
    }

    @Test
    void a_helper_sees_no_history_and_no_way_to_it() {
        Visitor noor = server.as("noor");
        assertThat(noor.get("/crew/history/things/tasks/4").status()).isEqualTo(403);
        assertThat(noor.get("/build/tasks/gate.1").page().select("footer dd a")).isEmpty();
    }
}
