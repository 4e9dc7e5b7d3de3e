package weekwright.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.TaskStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class StartBuildPageTest {
    private final ServerFixture server = ServerFixture.small();

    @AfterEach
    void stop() {
        server.close();
    }

    @Test
    void stages_with_rough_hours_and_tasks_of_the_first_stage_are_kept_in_one_go() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply saved = ilse.form(ilse.get("/start/build"))
                .with("stage1", "Roof truss")
                .with("stage1_hours", "80")
                .with("task1", "Point the weir")
                .send();
        assertThat(saved.to()).isEqualTo("/start/money");
        assertThat(ilse.follow(saved).page().select(".flash p").text()).isEqualTo("Kept: two lines.");
        Stage stage = server.db().read(StageStore.TABLE::values).get(2);
        assertThat(stage.id() + " " + stage.roughLikely().orElseThrow().text()).isEqualTo("truss 80");
        assertThat(server.db().read(TaskStore.TABLE::values))
                .extracting(task -> task.stage() + " " + task.title())
                .contains("weir Point the weir");
        assertThat(ilse.get("/start/build").page().select("main ul.ruled li").eachText())
                .contains("Roof truss roughly 80 hours", "Weir: Point the weir no hours, guessed");
    }

    @Test
    void everything_wrong_is_told_at_once_at_its_field_and_nothing_is_kept() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/start/build"))
                .with("stage1", "Mill race")
                .with("stage2_hours", "3x")
                .with("task1_hours", "4")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"3x\" is not hours; write 3.5 or 3:30",
                        "Stage 2 has hours but no name; write what it is called",
                        "Task 1 has hours but no name; write what it is called");
        assertThat(refused.page().select("#stage1").val()).isEqualTo("Mill race");
        Visitor.Reply named = ilse.form(ilse.get("/start/build"))
                .with("stage1", "Mill race")
                .with("stage2", "weir")
                .send();
        assertThat(named.troubles()).containsExactly("\"weir\" is the name of another stage; choose another name");
        assertThat(named.page().select("#stage2").attr("aria-invalid")).isEqualTo("true");
        assertThat(server.db().read(StageStore.TABLE::values)).hasSize(2);
    }
}
