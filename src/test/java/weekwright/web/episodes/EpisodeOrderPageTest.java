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
        assertThat(page.page().select(".lead").text()).isEqualTo("Four parts, 15 of 16 minutes: 1 min still to fill.");
        Visitor.Reply moved = form(page).press("parts-down.0");
        assertThat(moved.page().select(".flash p").text()).isEqualTo("Moved; not saved yet.");
        assertThat(form(moved).value("parts.0.title")).isEqualTo("The first heat, and the second");
        assertThat(form(moved).value("parts.0.minutes")).isEqualTo("5:30");
        assertThat(form(moved).value("parts.1.title")).isEqualTo("Why a shaft wants hoops");
        assertThat(form(ilse.get(PAGE)).value("parts.0.title")).isEqualTo("Why a shaft wants hoops");
        Visitor.Reply up = form(moved).press("parts-up.3");
        Visitor.Reply kept = ilse.follow(form(up).send());
        assertThat(kept.page().select(".flash p").text())
                .isEqualTo("The running order is saved. Four parts, 15 of 16 minutes: 1 min still to fill.");
        assertThat(kept.page().select(".running li span:first-child").eachText())
                .containsExactly(
                        "The first heat, and the second", "Why a shaft wants hoops", "Six in a row", "Weld and quench");
        Visitor.Reply back = ilse.follow(ilse.form(kept, ".flash form").send());
        assertThat(back.page().select(".running li span:first-child").get(0).text())
                .isEqualTo("Why a shaft wants hoops");
    }

    @Test
    void seconds_are_kept_and_read_back_as_they_were_typed() {
        ilse.follow(form(ilse.get(PAGE))
                .with("parts.0.minutes", "2:20")
                .with("parts.1.minutes", "5")
                .with("parts.2.minutes", "4:05")
                .with("parts.3.minutes", "")
                .send());
        Visitor.Reply page = ilse.get(PAGE);
        assertThat(form(page).value("parts.0.minutes")).isEqualTo("2:20");
        assertThat(form(page).value("parts.1.minutes")).isEqualTo("5");
        assertThat(page.page().select(".lead").text())
                .isEqualTo("Four parts, 11:25 of 16 minutes, one without a length.");
    }

    /** The address leads back to the button that was pressed, which went along with its part. */
    @Test
    void the_buttons_of_a_moved_part_keep_the_focus() {
        Visitor.Reply page = ilse.get(PAGE);
        assertThat(page.page().select(".part-move button").eachAttr("id"))
                .containsExactly("down-0", "up-1", "down-1", "up-2", "down-2", "up-3", "down-3", "up-4");
        assertThat(page.page().select(".part-move button").eachAttr("formaction"))
                .containsExactly("#down-1", "#down-0", "#down-2", "#up-1", "#down-3", "#up-2", "#up-4", "#up-3");
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
                .isEqualTo("The running order is saved. Four parts, 17:30 of 16 minutes: 1:30 min too long.");
    }

    @Test
    void all_faults_stand_on_their_fields_and_nothing_typed_is_lost() {
        Visitor.Reply refused = form(ilse.get(PAGE))
                .with("parts.0.title", "")
                .with("parts.1.minutes", "0")
                .with("parts.2.minutes", "4:75")
                .with("parts.3.minutes", "soon")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "is missing; write what it shows",
                        "\"0\" is no length; write minutes, or minutes and seconds as 4:30, or leave it empty",
                        "\"4:75\" has more than 59 seconds after the colon; write 4.5 or 4:30",
                        "\"soon\" is not a length in minutes; write 4.5 or 4:30");
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
