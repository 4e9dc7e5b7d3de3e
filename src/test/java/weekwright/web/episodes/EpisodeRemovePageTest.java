package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class EpisodeRemovePageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void one_that_is_only_planned_goes_with_its_shots() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply page = bram.get("/episodes/ep.12/remove");
        assertThat(page.page().select(".going li").eachText()).contains("1 task that it tells", "1 shot");
        Visitor.Reply gone = bram.follow(bram.form(page).send());
        assertThat(gone.page().select(".flash p").text()).isEqualTo("\"Boards for the gate\" is removed.");
        assertThat(bram.get("/episodes/ep.12").status()).isEqualTo(404);
    }

    @Test
    void one_that_is_published_stays() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply page = bram.get("/episodes/ep.10/remove");
        assertThat(page.page().select(".going > p").get(0).text()).isEqualTo("It cannot be removed, because it has:");
        assertThat(page.page().select(".going li").eachText()).contains("been published on 20 November 2026");
    }
}
