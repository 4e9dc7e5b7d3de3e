package weekwright.web.week;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class WeekShotsNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_shot_is_refused_then_wanted() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply refused = bram.form(bram.get("/week/shots/new?episode=ep.11"))
                .with("once", "yes")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles()).containsExactly("is missing; write what the picture shows");
        Visitor.Reply saved = bram.follow(bram.form(refused)
                .with("what", "The last sill stone drops")
                .with("size", "time-lapse")
                .send());
        assertThat(saved.page().select(".flash p").text()).isEqualTo("Wanted: The last sill stone drops.");
        assertThat(saved.page().select(".shot-forms li.once").text()).contains("The last sill stone drops time-lapse");
    }
}
