package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class EpisodeSlotPageTest {
    private static Optional<LocalDate> slot(ServerFixture server, String id) {
        return OakMill.find(server.db(), EpisodeStore.TABLE, id).value().slot();
    }

    @Test
    void what_a_move_does_is_shown_before_it_is_accepted() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor bram = server.as("bram");
            Visitor.Reply page = bram.get("/episodes/ep.12/slot");
            assertThat(page.page().select("h1").text()).isEqualTo("Move “Boards for the gate”");
            assertThat(page.page().select("button[value=move]")).isEmpty();
            Visitor.Reply look = bram.form(page).with("slot", "2027-02-05").send();
            assertThat(look.status()).isEqualTo(200);
            assertThat(look.page().select("tbody th").eachText())
                    .containsExactly(
                            "“Boards for the gate” is ready in time",
                            "Nothing comes out on 4 December",
                            "Nothing comes out on 5 February 2027",
                            "Of the next twelve slots stay empty");
            assertThat(look.page().select("tbody tr").get(0).select("td").eachText())
                    .containsExactly("for 4 December: almost no chance", "for 5 February 2027: almost certain");
            assertThat(look.page().select(".futures").text())
                    .isEqualTo(
                            "From 200 futures, each drawn twice with the same luck: once as planned, once as changed. Few,"
                                    + " so that you need not wait; the whole forecast is drawn once it is accepted.");
            assertThat(slot(server, "ep.12")).contains(LocalDate.of(2026, 12, 4));
            Visitor.Reply done = bram.follow(bram.form(look).press("move"));
            assertThat(done.page().select(".flash p").text())
                    .isEqualTo("“Boards for the gate” is on 5 February 2027 now.");
            assertThat(slot(server, "ep.12")).contains(LocalDate.of(2027, 2, 5));
            bram.follow(bram.form(done, ".flash form").send());
            assertThat(slot(server, "ep.12")).contains(LocalDate.of(2026, 12, 4));
        }
    }

    @Test
    void two_episodes_change_their_slots() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor bram = server.as("bram");
            Visitor.Reply look = bram.get("/episodes/ep.12/slot?to=2026-11-27");
            assertThat(look.page().select("tbody th").eachText())
                    .startsWith("“Boards for the gate” is ready in time", "“Sill stones” is ready in time");
            Visitor.Reply done = bram.follow(bram.form(look).press("swap"));
            assertThat(done.page().select(".flash p").text())
                    .isEqualTo("“Boards for the gate” is on 27 November now, “Sill stones” on 4 December.");
            assertThat(slot(server, "ep.11")).contains(LocalDate.of(2026, 12, 4));
            assertThat(slot(server, "ep.12")).contains(LocalDate.of(2026, 11, 27));
        }
    }

    @Test
    void a_taken_slot_names_the_other_and_past_and_skipped_ones_and_no_slots_are_refused() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor bram = server.as("bram");
            Visitor.Reply page = bram.get("/episodes/ep.12/slot");
            Visitor.Reply taken = bram.form(page).with("slot", "2026-11-27").press("move");
            assertThat(taken.status()).isEqualTo(422);
            assertThat(taken.troubles())
                    .containsExactly(
                            "\"27 November 2026\" is the slot of \"Sill stones\" already; swap the two, or move"
                                    + " that one first");
            assertThat(bram.form(page).with("slot", "2026-11-13").press("move").troubles())
                    .containsExactly("\"13 November 2026\" is past; choose a slot from today on");
            assertThat(bram.form(page).with("slot", "2026-11-20").press("move").troubles())
                    .containsExactly(
                            "\"20 November 2026\" is past; choose a slot from today on. \"20 November 2026\" is the slot"
                                    + " of \"The footing\" already; choose another");
            assertThat(bram.form(page).with("slot", "2026-12-05").press("").troubles())
                    .containsExactly("\"5 December 2026\" is no day on which episodes come out; choose a slot");
            bram.follow(bram.form(bram.get("/episodes/slots/2026-12-25"))
                    .with("reason", "Christmas")
                    .press("skip"));
            assertThat(bram.form(page).with("slot", "2026-12-25").press("move").troubles())
                    .containsExactly(
                            "\"25 December 2026\" is skipped: Christmas; take the skipping back first, or choose"
                                    + " another");
            assertThat(bram.form(page).with("slot", "2026-12-11").press("swap").troubles())
                    .containsExactly("\"11 December 2026\" has no episode to swap with; move this one there");
            assertThat(bram.form(page).without("slot").send().troubles()).hasSize(1);
            assertThat(slot(server, "ep.12")).contains(LocalDate.of(2026, 12, 4));
        }
    }

    @Test
    void a_standby_that_is_given_a_slot_is_a_side_story() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor bram = server.as("bram");
            Visitor.Reply look = bram.get("/episodes/ep.s1/slot?to=2026-12-11");
            assertThat(look.page().select("tbody tr").get(0).text())
                    .startsWith("“Why a weir” is ready in time no slot for 11 December: ");
            bram.follow(bram.form(look).press("move"));
            Episode kept =
                    OakMill.find(server.db(), EpisodeStore.TABLE, "ep.s1").value();
            assertThat(kept.kindOrDefault()).isEqualTo(Episode.Kind.SIDE);
            assertThat(kept.slot()).contains(LocalDate.of(2026, 12, 11));
        }
    }

    @Test
    void with_a_slot_every_second_week_only_those_are_offered() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            EpisodesSlotsPageTest.everyWeeks(server, 2);
            assertThat(server.as("bram")
                            .get("/episodes/ep.12/slot")
                            .page()
                            .select("#slot option")
                            .eachAttr("value"))
                    .startsWith("", "2026-11-27", "2026-12-11", "2026-12-25");
        }
    }

    @Test
    void a_slot_earlier_and_a_slot_later_are_a_key_away_and_do_nothing_before_they_are_accepted() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor bram = server.as("bram");
            Visitor.Reply page = bram.get("/episodes/ep.12/slot");
            assertThat(page.page().select(".page-head .buttons a").eachText())
                    .containsExactly("a Friday earlier", "a Friday later");
            Visitor.Reply later =
                    bram.get(page.page().select(".page-head .buttons a").get(1).attr("href"));
            assertThat(later.page().select("#slot option[selected]").attr("value"))
                    .isEqualTo("2026-12-11");
            Visitor.Reply again =
                    bram.get(later.page().select(".page-head .buttons a").get(1).attr("href"));
            assertThat(again.page().select("#slot option[selected]").attr("value"))
                    .isEqualTo("2026-12-18");
            assertThat(slot(server, "ep.12")).contains(LocalDate.of(2026, 12, 4));
            EpisodesSlotsPageTest.everyWeeks(server, 2);
            assertThat(bram.get("/episodes/ep.12/slot")
                            .page()
                            .select(".page-head .buttons a")
                            .eachText())
                    .containsExactly("a slot earlier", "a slot later");
        }
    }
}
