package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class EpisodesNewPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void the_next_number_and_the_first_free_slot_are_proposed() {
        Visitor bram = SERVER.as("bram");
        Visitor.Form form = bram.form(bram.get("/episodes/new"));
        assertThat(form.value("number")).isEqualTo("13");
        assertThat(form.value("slot")).isEqualTo("2026-12-11");
    }

    @Test
    void a_slot_and_a_number_that_are_taken_are_refused_and_the_other_named() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply refused = bram.form(bram.get("/episodes/new"))
                .with("title", "Hinges")
                .with("slot", "2026-12-04")
                .with("number", "11")
                .with("minutes", "0,25")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"0.25\" has more than one decimal place; write at most one, such as 12.5",
                        "\"4 December 2026\" is the slot of \"Boards for the gate\" already; choose another date",
                        "\"11\" is the number of \"Sill stones\" already; choose another number");
        assertThat(bram.form(refused).value("title")).isEqualTo("Hinges");
    }

    @Test
    void what_it_tells_is_chosen_row_by_row_and_each_fault_stands_at_its_row() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply more = bram.form(bram.get("/episodes/new"))
                .with("title", "Two at once")
                .with("task.0", "weir.2")
                .with("share.0", "0.5")
                .press("tell");
        assertThat(more.status()).isEqualTo(200);
        Visitor.Reply refused =
                bram.form(more).with("task.1", "weir.2").with("share.1", "1.5").send();
        assertThat(refused.troubles())
                .containsExactly(
                        "\"1.5\" is not a share; write 0 to 1, such as 0.5",
                        "names the same task as a row above; name each task once");
        Visitor.Reply saved = bram.follow(bram.form(refused)
                .with("task.1", "gate.2")
                .with("share.1", "")
                .with("slot", "2026-12-12")
                .send());
        assertThat(saved.page().select(".flash p").text())
                .isEqualTo("\"Two at once\" is added. \"12 December 2026\" is no day on which episodes come out.");
        assertThat(saved.page()
                        .select("section[aria-labelledby=tells-head] li a")
                        .eachText())
                .hasSize(2);
    }

    @Test
    void one_like_another_takes_its_fields_and_its_shots_over() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply page = bram.get("/episodes/new?like=ep.12");
        assertThat(bram.form(page).value("title")).isEqualTo("Boards for the gate");
        Visitor.Reply saved =
                bram.follow(bram.form(page).with("title", "More boards").send());
        assertThat(saved.page().select(".shot-forms li > span").eachText())
                .containsExactly("First shaving off the board close, must have");
    }

    @Test
    void a_standby_with_a_slot_is_refused() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply refused = bram.form(bram.get("/episodes/new"))
                .with("title", "Spare")
                .with("kind", "standby")
                .send();
        assertThat(refused.troubles())
                .contains("\"11 December 2026\" is given to a standby, which has no slot; leave it empty, or make it"
                        + " build or side");
    }
}
