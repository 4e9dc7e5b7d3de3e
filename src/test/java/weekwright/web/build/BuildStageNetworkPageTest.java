package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.base.Id;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Stored;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildStageNetworkPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void the_longest_way_is_said_drawn_heavy_and_marked_in_the_table() {
        Visitor.Reply page = SERVER.as("ilse").get("/build/stages/weir/network");
        // 16½ of the 30 hours are left of the stones, two days at eight hours; the lime takes seven
        assertThat(page.page().select(".lead").text())
                .isEqualTo(
                        "The longest way through what is left takes about 9 days, if every day had eight hours for it:"
                                + " Set the sill stones, then Lime cures.");
        assertThat(page.page().select(".network tbody th").eachText())
                .containsExactly("Dig the footing", "Set the sill stones", "Lime cures");
        assertThat(page.page()
                        .select(".network tbody td[data-label='Waits for']")
                        .eachText())
                .containsExactly("Dig the footing", "Set the sill stones");
        assertThat(page.page().select("svg.order-rod.wide .bow.longest").size()).isEqualTo(1);
        assertThat(page.page().select("svg.order-rod.wide text").eachText())
                .contains("Dig the footing", "Set the sill stones", "Lime cures");
    }

    @Test
    void what_is_waited_for_in_another_stage_stands_in_the_table() {
        Visitor.Reply page = SERVER.as("ilse").get("/build/stages/gate/network");
        assertThat(page.page().select(".network tbody tr").eachText())
                .anyMatch(
                        row -> row.startsWith("Hang the gate Lime cures, Plane the gate boards, Forge the straps yes"));
        assertThat(page.page().select("svg.order-rod.wide .bow").size()).isEqualTo(2);
    }

    @Test
    void the_days_that_a_wait_under_way_has_behind_it_do_not_count() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            server.db().write("test", write -> {
                Stored<Task> wait =
                        TaskStore.TABLE.find(write, new Id("weir.3")).orElseThrow();
                return TaskStore.TABLE.update(
                        write,
                        wait.row(),
                        wait.version(),
                        TaskStore.TABLE.shape().with(wait.value(), "started", Optional.of(LocalDate.of(2026, 11, 20))));
            });
            // two days of work as above, and two of the seven days of the lime
            assertThat(server.as("ilse")
                            .get("/build/stages/weir/network")
                            .page()
                            .select(".lead")
                            .text())
                    .startsWith("The longest way through what is left takes about 4 days,");
        }
    }

    @Test
    void a_stage_that_is_not_there_has_no_network() {
        assertThat(SERVER.as("ilse").get("/build/stages/none/network").status()).isEqualTo(404);
    }
}
