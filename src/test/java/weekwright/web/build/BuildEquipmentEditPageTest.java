package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildEquipmentEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void equipment_is_changed_held_by_a_task_and_removed_with_what_refers() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/build/equipment/new"))
                .with("name", "Chain hoist")
                .with("hazards", "lift")
                .send());
        Visitor.Reply changed = ilse.follow(ilse.form(ilse.get("/build/equipment/hoist/edit"))
                .with("quantity", "2")
                .with("kept", "yes")
                .send());
        assertThat(changed.page().select(".flash p").text()).isEqualTo("Saved: Chain hoist.");
        Visitor.Reply bad = ilse.form(ilse.get("/build/tasks/gate.2/edit"))
                .with("equipment.hoist", "two")
                .send();
        assertThat(bad.troubles())
                .containsExactly("\"two\" is not how many of it are held; write a whole number up to 9999");
        Visitor.Reply held =
                ilse.follow(ilse.form(bad).with("equipment.hoist", "3").send());
        assertThat(held.page().select(".flash p").text())
                .isEqualTo("The task is saved. \"Chain hoist\" is there 2 times and wanted 3 times, so the task never"
                        + " starts.");
        assertThat(held.page().select(".task-caution").text()).startsWith("Hazards. Lifting and rigging.");
        Visitor.Reply page = ilse.get("/build/equipment/hoist/edit");
        assertThat(page.page()
                        .select("section[aria-labelledby=remove-head] p")
                        .first()
                        .text())
                .isEqualTo("These tasks hold it and would do without, and without its hazards: Hang the gate.");
        Visitor.Reply gone =
                ilse.follow(ilse.form(page, "form:has(button[value=remove])").press("remove"));
        assertThat(gone.page().select(".flash p").text())
                .isEqualTo("Chain hoist is removed, and 1 task does without it.");
        assertThat(ilse.get("/build/tasks/gate.2")
                        .page()
                        .select(".task-caution")
                        .size())
                .isZero();
    }

    @Test
    void two_machines_of_one_name_are_refused() {
        Visitor ilse = SERVER.as("ilse");
        ilse.follow(ilse.form(ilse.get("/build/equipment/new"))
                .with("name", "Forge")
                .send());
        ilse.follow(ilse.form(ilse.get("/build/equipment/new"))
                .with("name", "Anvil")
                .send());
        Visitor.Reply refused = ilse.form(ilse.get("/build/equipment/anvil/edit"))
                .with("name", "forge")
                .send();
        assertThat(refused.troubles()).containsExactly("\"forge\" is the name of other equipment; choose another name");
    }
}
