package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class EpisodeShotEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_shot_is_changed_and_taken_off_the_list() {
        Visitor bram = SERVER.as("bram");
        String address =
                bram.get("/episodes/ep.12").page().select(".shot-forms li a").attr("href");
        Visitor.Reply saved = bram.follow(bram.form(bram.get(address))
                .with("what", "First shaving, from below")
                .without("must")
                .send());
        assertThat(saved.page().select(".shot-forms li > span").text()).isEqualTo("First shaving, from below close");
        Visitor.Reply off = bram.follow(bram.form(bram.get(address), "form.act").press("remove"));
        assertThat(off.page().select(".flash p").text()).isEqualTo("Off the list: First shaving, from below.");
        assertThat(bram.get(address).status()).isEqualTo(404);
    }

    @Test
    void a_shot_of_another_episode_is_not_found_here() {
        Visitor bram = SERVER.as("bram");
        assertThat(bram.get("/episodes/ep.10/shots/1/edit").status()).isEqualTo(404);
    }
}
