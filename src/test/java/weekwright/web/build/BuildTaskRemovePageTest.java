package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.build.LinkStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildTaskRemovePageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void what_happened_on_a_task_stays_and_it_is_dropped_instead() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/build/tasks/weir.2/remove");
        assertThat(page.page().select("h1").text()).isEqualTo("Remove Set the sill stones?");
        assertThat(page.page().select("main li").eachText()).containsExactly("13½ hours logged");
        Visitor.Reply refused = ilse.form(page).without("do").send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("\"Set the sill stones\" has 13½ hours logged; drop it instead, so that these stay on"
                        + " record");
        Visitor.Reply dropped = ilse.follow(ilse.form(page).press("dropped"));
        assertThat(dropped.page().select(".flash p").text())
                .isEqualTo("It is dropped: it holds nothing up any more, and its record stays.");
    }

    @Test
    void a_task_only_planned_goes_with_all_that_hangs_on_it() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply page = ilse.get("/build/tasks/gate.1/remove");
            assertThat(page.page().select("main li").eachText())
                    .containsExactly("1 link", "1 place in an episode", "1 shot", "1 material line");
            Visitor.Reply gone = ilse.follow(ilse.form(page).send());
            assertThat(gone.page().select(".flash p").text())
                    .isEqualTo("“Plane the gate boards” is removed with 1 link, 1 place in an episode, 1 shot and 1"
                            + " material line.");
            assertThat(ilse.get("/build/tasks/gate.1").status()).isEqualTo(404);
            assertThat(ilse.get("/build/materials/mat.1").status()).isEqualTo(404);
            assertThat(server.db().read(LinkStore.TABLE::count)).isEqualTo(4);
            assertThat(ilse.get("/build/tasks/gate.2")
                            .page()
                            .select("section[aria-labelledby=links-head] tbody th")
                            .eachText())
                    .containsExactly("Lime cures", "Forge the straps");
        }
    }

    @Test
    void a_row_that_somebody_else_changed_meanwhile_is_not_removed() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/build/tasks/gate.3/remove");
        ilse.follow(ilse.form(ilse.get("/build/tasks/gate.3/edit"))
                .with("title", "Forge the two straps")
                .send());
        assertThat(ilse.form(page).send().status()).isEqualTo(409);
        assertThat(ilse.get("/build/tasks/gate.3").status()).isEqualTo(200);
    }
}
