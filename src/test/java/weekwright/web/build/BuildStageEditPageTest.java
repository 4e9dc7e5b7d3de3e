package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildStageEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_stage_is_changed() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/build/stages/weir/edit");
        assertThat(ilse.form(page).value("name")).isEqualTo("Weir");
        Visitor.Reply refused = ilse.form(page).with("name", "").send();
        assertThat(refused.troubles()).containsExactly("is missing; write what the stage is called");
        Visitor.Reply saved =
                ilse.follow(ilse.form(refused).with("name", "The long weir").send());
        assertThat(saved.page().select("h1").text()).isEqualTo("The long weir");
        assertThat(saved.page().select(".flash p").text()).isEqualTo("The stage is saved.");
    }

    @Test
    void a_stage_is_made_once_more_with_links_and_materials_and_without_what_happened() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply page = ilse.get("/build/stages/gate/edit");
            Visitor.Reply refused = ilse.form(page, "form:has(button[value=duplicate])")
                    .with("copy", "weir")
                    .press("duplicate");
            assertThat(refused.troubles())
                    .containsExactly("\"weir\" is the name of another stage; choose another name");
            Visitor.Reply copy = ilse.follow(ilse.form(refused, "form:has(button[value=duplicate])")
                    .with("copy", "Upper gate")
                    .press("duplicate"));
            assertThat(copy.page().select(".flash p").text())
                    .isEqualTo(
                            "It is made anew with 3 tasks, their links and materials; hours, days and orders stay with"
                                    + " the first.");
            assertThat(copy.page().select(".tasks th[scope=row] a").eachText())
                    .containsExactly("Plane the gate boards", "Hang the gate", "Forge the straps");
            assertThat(copy.page().select("ul.materials li").size()).isEqualTo(2);
            assertThat(ilse.get("/build/tasks/gate-1.2")
                            .page()
                            .select("section[aria-labelledby=links-head] tbody a")
                            .eachAttr("href"))
                    .containsExactly("/build/tasks/gate-1.1", "/build/tasks/gate-1.3");
        }
    }
}
