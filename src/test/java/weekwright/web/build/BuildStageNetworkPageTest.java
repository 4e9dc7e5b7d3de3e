package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
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
    void a_stage_that_is_not_there_has_no_network() {
        assertThat(SERVER.as("ilse").get("/build/stages/none/network").status()).isEqualTo(404);
    }
}
