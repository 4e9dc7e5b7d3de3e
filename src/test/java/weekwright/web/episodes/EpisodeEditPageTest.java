package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.base.Id;
import weekwright.build.TaskStore;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.TellStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class EpisodeEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void fields_and_what_it_tells_are_changed() {
        Visitor bram = SERVER.as("bram");
        Visitor.Reply page = bram.get("/episodes/ep.12/edit");
        assertThat(bram.form(page).value("task.0")).isEqualTo("gate.1");
        Visitor.Reply refused =
                bram.form(page).with("title", "").with("views", "-3").send();
        assertThat(refused.troubles())
                .containsExactly("\"-3\" is under 0; write 0 or more", "is missing; write what it is called");
        Visitor.Reply saved = bram.follow(bram.form(refused)
                .with("title", "Boards, planed")
                .with("views", "")
                .with("task.0", "gate.1")
                .with("share.0", "0.5")
                .send());
        assertThat(saved.page().select("h1").text()).isEqualTo("Boards, planed");
        assertThat(saved.page().select("section[aria-labelledby=tells-head] li").text())
                .contains("50 % of it");
    }

    @Test
    void a_dropped_task_is_not_told_and_one_dropped_since_stays_in_its_row_until_it_is_taken_out() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor bram = server.as("bram");
            server.db().write("bram", write -> {
                for (String id : List.of("gate.1", "gate.3")) {
                    var task = TaskStore.TABLE.find(write, new Id(id)).orElseThrow();
                    TaskStore.TABLE.update(
                            write,
                            task.row(),
                            task.version(),
                            TaskStore.TABLE
                                    .shape()
                                    .with(task.value(), "dropped", Optional.of(LocalDate.of(2026, 11, 24))));
                }
                return null;
            });
            Visitor.Reply page = bram.get("/episodes/ep.12/edit");
            assertThat(bram.form(page).value("task.0")).isEqualTo("gate.1");
            assertThat(page.page().select("#task\\.0 option").eachAttr("value")).doesNotContain("gate.3");
            Visitor.Reply refused = bram.form(page).with("views", "7").send();
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.troubles())
                    .containsExactly("\"Plane the gate boards\" is dropped, so there is nothing to tell of it; choose"
                            + " another task, empty the row, or take the task up again");
            assertThat(bram.form(refused).value("views")).isEqualTo("7");
            Visitor.Reply saved = bram.follow(
                    bram.form(refused).with("task.0", "").with("share.0", "").send());
            assertThat(saved.page().select(".flash p").text()).isEqualTo("The episode is saved.");
            int tells = server.db()
                    .read(read -> TellStore.ofEpisode(read, new Id("ep.12")).size());
            assertThat(tells).isZero();
        }
    }

    @Test
    void an_episode_that_missed_its_slot_is_still_changed_and_goes_to_no_other_past_one() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            server.db().write("bram", write -> {
                var episode = EpisodeStore.TABLE.find(write, new Id("ep.12")).orElseThrow();
                return EpisodeStore.TABLE.update(
                        write,
                        episode.row(),
                        episode.version(),
                        EpisodeStore.TABLE
                                .shape()
                                .with(episode.value(), "slot", Optional.of(LocalDate.of(2026, 11, 13))));
            });
            Visitor bram = server.as("bram");
            Visitor.Reply saved = bram.follow(bram.form(bram.get("/episodes/ep.12/edit"))
                    .with("title", "Boards, late")
                    .send());
            assertThat(saved.page().select(".flash p").text())
                    .isEqualTo("The episode is saved. \"13 November 2026\" is past and the episode is not published.");
            Visitor.Reply refused = bram.form(bram.get("/episodes/ep.12/edit"))
                    .with("slot", "2026-11-06")
                    .send();
            assertThat(refused.troubles())
                    .containsExactly("\"6 November 2026\" is past, and the episode is not published; choose a day from"
                            + " 25 November 2026 on; for a film that is out leave it empty, and mark then when it came"
                            + " out");
        }
    }

    @Test
    void somebody_elses_change_is_shown_beside_ones_own() {
        Visitor bram = SERVER.as("bram");
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply old = bram.get("/episodes/ep.11/edit");
        ilse.follow(ilse.form(ilse.get("/episodes/ep.11/edit"))
                .with("title", "Sill stones, dry")
                .send());
        Visitor.Reply stale = bram.form(old).with("title", "Sill stones, wet").send();
        assertThat(stale.status()).isEqualTo(409);
        assertThat(stale.text()).contains("Sill stones, dry").contains("Sill stones, wet");
    }
}
