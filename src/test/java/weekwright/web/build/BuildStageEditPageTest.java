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
        assertThat(saved.page().select(".flash p").text()).isEqualTo("The stage is changed.");
    }
}
