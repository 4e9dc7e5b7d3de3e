package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
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
        assertThat(page.page().select(".spent").text()).isEqualTo("Spent so far €0");
    }

    @Test
    void a_stage_that_is_not_there_is_said() {
        Visitor.Reply page = SERVER.as("ilse").get("/build/stages/roof");
        assertThat(page.status()).isEqualTo(404);
        assertThat(page.text()).contains("There is no stage roof.");
    }
}
