package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.SettingsStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.MoveEpisode;
import weekwright.episodes.SkippedSlotStore;
import weekwright.episodes.Tell;
import weekwright.episodes.TellStore;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class EpisodesSlotPageTest {
    private static final LocalDate CHRISTMAS = LocalDate.of(2026, 12, 25);

    private static Optional<String> reason(ServerFixture server) {
        return server.db()
                .read(read -> SkippedSlotStore.of(read, CHRISTMAS)
                        .map(row -> row.value().reason()));
    }

    private static List<Tell> tells(ServerFixture server, Id episode) {
        return server.db()
                .read(read -> TellStore.ofEpisode(read, episode).stream()
                        .map(Stored::value)
                        .toList());
    }

    private static boolean skipped(ServerFixture server) {
        return server.db().read(SettingsStore::get).skip().contains(CHRISTMAS);
    }

    @Test
    void a_slot_is_skipped_with_its_reason_and_taken_back() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor bram = server.as("bram");
            Visitor.Reply done = bram.follow(bram.form(bram.get("/episodes/slots/2026-12-25"))
                    .with("reason", "Christmas")
                    .press("skip"));
            assertThat(done.page().select(".flash p").text()).isEqualTo("25 December is skipped.");
            assertThat(done.page()
                            .select(".slots-row:has(time[datetime=2026-12-25])")
                            .text())
                    .isEqualTo("25 Dec week 52 Skipped Christmas Take back the skipping of 25 Dec");
            assertThat(skipped(server)).isTrue();
            Visitor.Reply slot = bram.get("/episodes/slots/2026-12-25");
            assertThat(slot.page().select(".lead").text()).isEqualTo("It is skipped: Christmas.");
            Visitor.Reply back = bram.follow(bram.form(slot).press("back"));
            assertThat(back.page().select(".flash p").text()).isEqualTo("25 December is a slot again.");
            assertThat(skipped(server)).isFalse();
            assertThat(reason(server)).isEmpty();
            bram.follow(bram.form(back, ".flash form").send());
            assertThat(skipped(server)).isTrue();
            assertThat(reason(server)).contains("Christmas");
        }
    }

    @Test
    void a_slot_with_its_episode_and_one_skipped_already_are_refused_and_what_was_typed_stays() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor bram = server.as("bram");
            Visitor.Reply open = bram.get("/episodes/slots/2026-12-11");
            bram.follow(bram.form(bram.get("/episodes/ep.12/slot"))
                    .with("slot", "2026-12-11")
                    .press("move"));
            Visitor.Reply refused =
                    bram.form(open).with("reason", "We are away").press("skip");
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.troubles())
                    .containsExactly(
                            "\"11 December 2026\" is the slot of \"Boards for the gate\"; move that one to another"
                                    + " slot first");
            Visitor.Reply long300 = bram.form(bram.get("/episodes/slots/2026-12-18"))
                    .with("reason", "x".repeat(301))
                    .press("skip");
            assertThat(long300.troubles())
                    .hasSize(1)
                    .first()
                    .asString()
                    .endsWith("is longer than 300 characters; write it shorter");
            assertThat(long300.page().select("#reason").val()).isEqualTo("x".repeat(301));
            Visitor.Reply twice = bram.get("/episodes/slots/2026-12-18");
            bram.follow(bram.form(twice).press("skip"));
            assertThat(bram.form(twice)
                            .with("answer", "another-key-of-20-letters")
                            .press("skip")
                            .troubles())
                    .containsExactly("\"18 December 2026\" is skipped already");
        }
    }

    @Test
    void rule_126_an_empty_slot_says_what_could_fill_it_and_dangerous_work_never() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor.Reply page = server.as("bram").get("/episodes/slots/2026-12-11");
            assertThat(page.page().select("h1").text()).isEqualTo("Friday 11 December, in 2 weeks");
            assertThat(page.page()
                            .select("section[aria-labelledby=fill-head] li")
                            .eachText())
                    .containsExactly(
                            "A standby: Why a weir, not begun. See what it does here",
                            // lifting stones and forging ask for somebody beside by their hazards
                            "A side story: Plane the gate boards can begin, about 8 min of story.");
        }
    }

    @Test
    void a_day_that_is_no_slot_or_past_is_not_found() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor bram = server.as("bram");
            assertThat(bram.get("/episodes/slots/2026-12-12").status()).isEqualTo(404);
            assertThat(bram.get("/episodes/slots/2026-11-13").status()).isEqualTo(404);
            assertThat(bram.get("/episodes/slots/yesterday").status()).isEqualTo(404);
        }
    }

    @Test
    void a_slot_in_trouble_is_helped_by_a_shorter_cut_a_standby_or_a_plain_sentence() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor bram = server.as("bram");
            bram.get("/episodes");
            server.app().forecasts().orElseThrow().await();
            Visitor.Reply look = bram.get("/episodes/slots/2026-12-04?look=1");
            assertThat(look.page().select(".remedies tbody th").eachText())
                    .containsExactly(
                            "As planned",
                            "A shorter cut of “Boards for the gate”",
                            "The standby “Why a weir”",
                            "Say it beforehand, and leave the slot out");
            assertThat(look.page().select(".remedies tbody td:nth-child(2)").eachText())
                    .containsExactly(
                            "13 minutes instead of 20; 8 hours less editing",
                            "15 minutes; 24 hours of editing in all; “Boards for the gate” goes to 11 December",
                            "No film; “Boards for the gate” goes to 11 December");
            assertThat(look.page().select("#sentence").val())
                    .isEqualTo("There is no new film on Friday 4 December: the work needs a little longer than we"
                            + " thought, and we would rather show it to you finished. The next one comes on Friday"
                            + " 11 December. Thank you for staying with us.");
            assertThat(look.page().select(".remedies + .futures").text())
                    .isEqualTo("From 200 futures, each drawn once as planned and once for each remedy, with the same"
                            + " luck. No pledge is charged by the episode. An empty slot is taken to make nobody"
                            + " leave; that is a setting, for nobody has figures for you. What three empty slots on end"
                            + " would cost");
            Visitor.Reply done = bram.follow(
                    bram.form(look, "form:has(input[value=shorter])").press("remedy"));
            assertThat(done.page().select(".flash p").text())
                    .isEqualTo("A shorter cut of “Boards for the gate”: done.");
            Episode cut = OakMill.find(server.db(), EpisodeStore.TABLE, "ep.12").value();
            assertThat(cut.minutes().orElseThrow().text()).isEqualTo("13");
            assertThat(cut.editLikely()).contains(new Hours(16 * 60));
            assertThat(cut.editLow()).contains(new Hours(10 * 60 + 45));
            assertThat(cut.slot()).contains(LocalDate.of(2026, 12, 4));
            bram.follow(bram.form(bram.get("/episodes/slots/2026-12-04?look=1"), "form:has(input[value=standby])")
                    .press("remedy"));
            assertThat(OakMill.find(server.db(), EpisodeStore.TABLE, "ep.s1")
                            .value()
                            .slot())
                    .contains(LocalDate.of(2026, 12, 4));
            assertThat(OakMill.find(server.db(), EpisodeStore.TABLE, "ep.12")
                            .value()
                            .slot())
                    .contains(LocalDate.of(2026, 12, 11));
        }
    }

    @Test
    void said_beforehand_the_slot_is_left_out_and_its_episode_moved() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor bram = server.as("bram");
            Visitor.Reply look = bram.get("/episodes/slots/2026-12-04?look=1");
            bram.follow(bram.form(look, "form:has(input[value=say])").press("remedy"));
            assertThat(server.db().read(SettingsStore::get).skip()).containsExactly(LocalDate.of(2026, 12, 4));
            assertThat(OakMill.find(server.db(), EpisodeStore.TABLE, "ep.12")
                            .value()
                            .slot())
                    .contains(LocalDate.of(2026, 12, 11));
            assertThat(bram.form(look, "form:has(input[value=standby])")
                            .press("remedy")
                            .troubles())
                    .containsExactly(
                            "slot: \"4 December 2026\" is skipped: No film; said beforehand; take the skipping back"
                                    + " first, or choose another");
        }
    }

    @Test
    void the_task_that_makes_an_episode_late_can_be_left_out_of_it() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            server.db().write("test", write -> {
                TellStore.TABLE.insert(write, SmallProject.of(Tell.class, "episode", "ep.12", "task", "weir.1"));
                return null;
            });
            Visitor bram = server.as("bram");
            bram.get("/episodes");
            server.app().forecasts().orElseThrow().await();
            Visitor.Reply look = bram.get("/episodes/slots/2026-12-04?look=1");
            assertThat(look.page()
                            .select(".remedies tr:has(input[value=without])")
                            .text())
                    .startsWith(
                            "“Boards for the gate” without “Plane the gate boards” 13 minutes instead of 20; 8 hours"
                                    + " less editing; that work is told later ");
            bram.follow(bram.form(look, "form:has(input[value=without])").press("remedy"));
            assertThat(tells(server, new Id("ep.12")))
                    .extracting(tell -> tell.task().value())
                    .containsExactly("weir.1");
        }
    }

    @Test
    void an_empty_slot_gets_a_short_piece_from_the_bank() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            server.db().write("test", write -> {
                TaskStore.TABLE.insert(
                        write,
                        SmallProject.of(
                                Task.class,
                                "id",
                                "gate.0",
                                "stage",
                                "gate",
                                "title",
                                "Saw the boards",
                                "kind",
                                "work",
                                "likely",
                                "8",
                                "trades",
                                "joiner",
                                "camera",
                                "fixed",
                                "story_minutes",
                                "25",
                                "started",
                                "2026-11-02",
                                "done",
                                "2026-11-03"));
                HoursEntryStore.TABLE.insert(
                        write,
                        SmallProject.of(
                                HoursEntry.class,
                                "id",
                                "hours.9",
                                "date",
                                "2026-11-02",
                                "crew",
                                "ilse",
                                "task",
                                "gate.0",
                                "as",
                                "hands",
                                "hours",
                                "8",
                                "filmed",
                                "yes"));
                return null;
            });
            Visitor bram = server.as("bram");
            Visitor.Reply look = bram.get("/episodes/slots/2026-12-11?look=1");
            assertThat(look.page().select(".remedies tr:has(input[value=bank])").text())
                    .startsWith("A short piece from the story bank 13 minutes instead of 20 from the bank; 16 hours of"
                            + " editing ");
            bram.follow(bram.form(look, "form:has(input[value=bank])").press("remedy"));
            Episode piece = server.db()
                    .read(read -> MoveEpisode.on(read, LocalDate.of(2026, 12, 11))
                            .orElseThrow()
                            .value());
            assertThat(piece.title()).isEqualTo("A short piece for 11 December 2026");
            assertThat(piece.number()).contains(13);
            assertThat(piece.footageComplete()).contains(LocalDate.of(2026, 11, 25));
            assertThat(tells(server, piece.id()))
                    .containsExactly(SmallProject.of(
                            Tell.class, "episode", piece.id().value(), "task", "gate.0", "share", "0.52"));
        }
    }
}
