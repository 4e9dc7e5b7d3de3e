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
        assertThat(page.page().select("tr.sum .figure").eachText()).containsExactly("33", "72", "42½", "€0");
    }

    @Test
    void a_helper_is_sent_away() {
        Visitor.Reply page = SERVER.as("noor").get("/build");
        assertThat(page.status()).isEqualTo(403);
        assertThat(page.text()).contains("This sheet is for the crew. A helper logs hours and sees the week.");
    }
}
