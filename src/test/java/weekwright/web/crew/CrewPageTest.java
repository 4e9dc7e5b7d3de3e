package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void people_stand_with_their_hours_and_the_emergency_block() {
        Visitor.Reply page = SERVER.as("ilse").get("/crew");
        assertThat(page.page()
                        .select(".people tbody tr")
                        .get(0)
                        .select("td.figure")
                        .eachText())
                .containsExactly("8", "8", "8", "8", "4", "–", "–", "36");
        assertThat(page.page().select(".people tbody tr").get(2).select("small").text())
                .isEqualTo("helper; kept off everything with a hazard");
        assertThat(page.page()
                        .select("section[aria-labelledby=emergency-head] dd")
                        .eachText())
                .containsExactly(
                        "112", "Mill lane 3", "Gate by the pond", "Ilse", "By the door", "Mains behind the saw");
    }

    @Test
    void a_helper_is_sent_away() {
        assertThat(SERVER.as("noor").get("/crew").status()).isEqualTo(403);
    }
}
