package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

/** The running order of "Six hoops on an anvil", which is to be 16 minutes long. */
class EpisodeOrderPageTest {
    private static final String PAGE = "/episodes/e48/order";
    private ServerFixture server;
    private Visitor ilse;

    @BeforeEach
    void open() {
        server = ServerFixture.sample();
        ilse = server.as("ilse");
    }

    @AfterEach
    void close() {
        server.close();
    }

    private Visitor.Form form(Visitor.Reply page) {
        return ilse.form(page, "form.parts-form");
    }

    @Test
    void parts_move_up_and_down_and_are_kept_only_when_saved() {
        Visitor.Reply page = ilse.get(PAGE);
        assertThat(page.page().select(".lead").text()).isEqualTo("Four parts, 15 of 16 minutes.");
        Visitor.Reply moved = form(page).press("parts-down.0");
        assertThat(moved.page().select(".flash p").text()).isEqualTo("Moved; not saved yet.");
        assertThat(form(moved).value("parts.0.title")).isEqualTo("The first heat, and the second");
        assertThat(form(moved).value("parts.0.minutes")).isEqualTo("5.5");
        assertThat(form(moved).value("parts.1.title")).isEqualTo("Why a shaft wants hoops");
        assertThat(form(ilse.get(PAGE)).value("parts.0.title")).isEqualTo("Why a shaft wants hoops");
        Visitor.Reply up = form(moved).press("parts-up.3");
        Visitor.Reply kept = ilse.follow(form(up).send());
        assertThat(kept.page().select(".flash p").text())
                .isEqualTo("The running order is kept. Four parts, 15 of 16 minutes.");
        assertThat(kept.page().select(".running li span:first-child").eachText())
                .containsExactly(
                        "The first heat, and the second", "Why a shaft wants hoops", "Six in a row", "Weld and quench");
        Visitor.Reply back = ilse.follow(ilse.form(kept, ".flash form").send());
        assertThat(back.page().select(".running li span:first-child").get(0).text())
                .isEqualTo("Why a shaft wants hoops");
    }

    @Test
    void a_part_is_added_and_an_emptied_one_is_out() {
        Visitor.Reply more = form(ilse.get(PAGE)).press("parts-more");
        Visitor.Reply kept = ilse.follow(form(more)
                .with("parts.0.title", "")
                .with("parts.0.minutes", "")
                .with("parts.5.title", "A word at the gate")
                .with("parts.5.minutes", "4,5")
                .send());
        assertThat(kept.page().select(".flash p").text())
                .isEqualTo("The running order is kept. Four parts, 17.5 of 16 minutes: 1.5 too long.");
    }

    @Test
    void all_faults_stand_on_their_fields_and_nothing_typed_is_lost() {
        Visitor.Reply refused = form(ilse.get(PAGE))
                .with("parts.0.title", "")
                .with("parts.1.minutes", "0")
                .with("parts.2.minutes", "1.25")
                .with("parts.3.minutes", "soon")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "is missing; write what it shows",
                        "\"0\" is no length; write its length in minutes, or leave it empty",
                        "\"1.25\" has more than one decimal place; write at most one, such as 12.5",
                        "\"soon\" is not a number; write 12 or 2.5");
        assertThat(form(refused).value("parts.3.minutes")).isEqualTo("soon");
    }

    @Test
    void of_two_who_write_at_once_the_later_is_told_and_keeps_what_was_typed() {
        Visitor.Reply first = ilse.get(PAGE);
        Visitor tomas = server.as("tomas");
        tomas.follow(tomas.form(tomas.get(PAGE), "form.parts-form")
                .with("parts.0.title", "Why hoops")
                .send());
        Visitor.Reply refused = form(first).with("parts.1.title", "One heat").send();
        assertThat(refused.troubles())
                .containsExactly(
                        "Somebody else has changed this list since you opened it; what you typed stands here; look"
                                + " at theirs in another window, then save this once more");
        assertThat(form(refused).value("parts.1.title")).isEqualTo("One heat");
        Visitor.Reply kept = ilse.follow(form(refused).send());
        assertThat(kept.page().select(".running li span:first-child").eachText())
                .startsWith("Why a shaft wants hoops", "One heat");
    }
}
