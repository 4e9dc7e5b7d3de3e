package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildStagePageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_stage_shows_tasks_with_tallies_materials_and_what_it_cost() {
        Visitor.Reply page = SERVER.as("ilse").get("/build/stages/gate");
        assertThat(page.page().select("h1").text()).isEqualTo("Sluice gate");
        assertThat(page.page().select(".tasks tbody th a").eachText())
                .containsExactly("Plane the gate boards", "Hang the gate", "Forge the straps");
        assertThat(page.page().select(".tasks svg.tally")).hasSize(3);
        assertThat(page.page().select(".materials a").eachText()).containsExactlyInAnyOrder("Oak boards", "Flat iron");
        assertThat(page.page().select("#cost .ledger tr").eachText())
                .containsExactly(
                        "Estimate €355.00",
                        "Spent so far €0.00",
                        "Committed €0.00",
                        "Left to order €355.00",
                        "Comes to €355.00");
    }

    @Test
    void a_stage_that_is_not_there_is_said() {
        Visitor.Reply page = SERVER.as("ilse").get("/build/stages/roof");
        assertThat(page.status()).isEqualTo(404);
        assertThat(page.text()).contains("There is no stage roof.");
    }

    @Test
    void several_tasks_are_done_on_one_day_or_none_of_them() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply page = ilse.get("/build/stages/gate");
            Visitor.Reply none = ilse.form(page, "form#close").press("close");
            assertThat(none.troubles()).containsExactly("no task is ticked; tick those that are done");
            Visitor.Reply refused = ilse.form(none, "form#close")
                    .with("task", "gate.1", "gate.2")
                    .press("close");
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.troubles())
                    .containsExactly(
                            "\"Hang the gate\" cannot be done before what it follows: Lime cures and Forge the"
                                    + " straps are not done; mark that done first, or log the hours worked on this",
                            "\"The gate drops home\" is a must-have shot, happens once and is not captured; tick it off"
                                    + " first, or say so where \"Hang the gate\" is marked done");
            assertThat(refused.page().select("input[name=task][checked]").eachAttr("value"))
                    .containsExactly("gate.1", "gate.2");
            assertThat(OakMill.task(server.db(), "gate.1").done()).isEmpty();
            Visitor.Reply done = ilse.follow(ilse.form(refused, "form#close")
                    .with("task", "gate.3", "gate.1")
                    .with("day", "2026-11-24")
                    .press("close"));
            assertThat(done.page().select(".flash p").text())
                    .isEqualTo("Plane the gate boards and Forge the straps are done.");
        }
    }
}
