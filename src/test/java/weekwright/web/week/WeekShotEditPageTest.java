package weekwright.web.week;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class WeekShotEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_shot_is_changed_and_taken_off_the_list() {
        Visitor bram = SERVER.as("bram");
        String address =
                bram.get("/episodes/ep.12").page().select(".shot-forms li a").attr("href") + "/edit";
        assertThat(address).isEqualTo("/week/shots/1/edit");
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
    void what_belongs_to_nothing_is_refused_and_stays_typed() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply refused = bram.form(bram.get("/week/shots/2/edit"))
                .with("what", "The gate falls")
                .with("task", "")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("is missing, and so is an episode; say what the picture belongs to");
        assertThat(bram.form(refused).value("what")).isEqualTo("The gate falls");
    }
}
