package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class EpisodesPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void coming_fridays_standbys_and_published_ones_are_listed() {
        Visitor.Reply page = SERVER.as("bram").get("/episodes");
        assertThat(page.page().select(".slots .slot-what b").eachText())
                .startsWith("Sill stones", "Boards for the gate", "Nothing planned")
                .hasSize(12);
        assertThat(page.page().select(".slots .slot-far").get(1).text()).isEqualTo("0 of 1 shot");
        assertThat(page.page()
                        .select("section[aria-labelledby=standby-head] li a")
                        .eachText())
                .containsExactly("Why a weir");
        assertThat(page.page()
                        .select("section[aria-labelledby=published-head] li")
                        .eachText())
                .containsExactly("20 Nov no. 10, The footing");
    }

    @Test
    void a_helper_is_sent_away() {
        assertThat(SERVER.as("noor").get("/episodes").status()).isEqualTo(403);
    }
}
