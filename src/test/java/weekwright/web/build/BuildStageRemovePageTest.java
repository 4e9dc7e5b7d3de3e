package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.build.TaskStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildStageRemovePageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_stage_in_which_something_happened_stays() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/build/stages/weir/remove");
        assertThat(page.page().select("main li").eachText())
                .containsExactly("Dig the footing: 19½ hours logged", "Set the sill stones: 13½ hours logged");
        assertThat(page.page().select("main form")).isEmpty();
    }

    @Test
    void a_stage_only_planned_goes_with_its_tasks_after_they_were_shown() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply page = ilse.get("/build/stages/gate/remove");
            assertThat(page.page().select("main li").eachText())
                    .containsExactly(
                            "Plane the gate boards with 1 link, 1 place in an episode, 1 shot and 1 material line",
                            "Hang the gate with 3 links and 1 shot",
                            "Forge the straps with 1 link and 1 material line");
            Visitor.Reply gone = ilse.follow(ilse.form(page).send());
            assertThat(gone.page().select(".flash p").text()).isEqualTo("“Sluice gate” is removed with 3 tasks.");
            assertThat(ilse.get("/build/stages/gate").status()).isEqualTo(404);
            assertThat(server.db().read(TaskStore.TABLE::count)).isEqualTo(3);
        }
    }
}
