package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void all_stages_are_shown_with_hours_against_estimate() {
        Visitor.Reply page = SERVER.as("ilse").get("/build");
        assertThat(page.page().select("h1").text()).isEqualTo("No stages done, one in hand, one to come");
        assertThat(page.page().select("tbody tr").get(0).select("th, .figure").eachText())
                .containsExactly("1 Weir", "1 of 3", "33", "46", "16½", "€0");
        assertThat(page.page().select("[data-figures=stage-progress] svg.tally"))
                .hasSize(2);
        assertThat(page.page().select("tr.sum .figure").eachText()).containsExactly("33", "72", "42½", "€0");
    }

    @Test
    void a_stage_is_moved_by_its_buttons_and_the_focus_goes_with_it() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply moved = ilse.form(ilse.get("/build"), "form:has(button[id=earlier-gate])")
                    .press("earlier");
            assertThat(moved.to()).isEqualTo("/build#later-gate");
            Visitor.Reply page = ilse.get("/build");
            assertThat(page.page().select(".flash p").text()).isEqualTo("Sluice gate is stage 1 now.");
            assertThat(page.page().select(".reorder li span").eachText()).containsExactly("Sluice gate", "Weir");
            Visitor.Reply back =
                    ilse.form(page, "form:has(button[id=later-gate])").press("later");
            assertThat(back.to()).isEqualTo("/build#earlier-gate");
        }
    }

    @Test
    void a_helper_sees_it_without_money() {
        Visitor.Reply page = SERVER.as("noor").get("/build");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.page().select("th").eachText()).contains("Left, h").doesNotContain("Spent");
    }
}
