package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildTasksNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_task_is_added_to_a_stage_with_what_it_follows() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/build/tasks/new?stage=gate");
        assertThat(ilse.form(page).value("stage")).isEqualTo("gate");
        Visitor.Reply refused = ilse.form(page)
                .with("title", "")
                .with("low", "5")
                .with("likely", "x")
                .with("after.0", "gate.2")
                .with("hazards", "lift")
                .with("company", "alone")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles()).containsExactly("\"x\" is not a number; write 12 or 2.5");
        assertThat(refused.page()
                        .select("#hazards ~ *, input[name=hazards][checked]")
                        .eachAttr("value"))
                .contains("lift");
        Visitor.Reply more = ilse.form(refused).with("likely", "6").send();
        assertThat(more.troubles())
                .containsExactly(
                        "is missing; write what is done, such as Raise the wheel shaft",
                        "is missing: alone is less company than by, which lift asks for; write why less is enough, or"
                                + " set company to by");
        Visitor.Reply saved = ilse.form(more)
                .with("title", "Hang the winch")
                .with("company", "")
                .send();
        assertThat(saved.to()).isEqualTo("/build/tasks/gate.4");
        Visitor.Reply task = ilse.follow(saved);
        assertThat(task.page().select(".flash p").text()).isEqualTo("The task is added.");
        assertThat(task.page().select("table tbody th").eachText()).containsExactly("after Hang the gate");
    }
}
