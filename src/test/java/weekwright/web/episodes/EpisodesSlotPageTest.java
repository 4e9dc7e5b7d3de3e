package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weekwright.build.SettingsStore;
import weekwright.episodes.SkippedSlotStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class EpisodesSlotPageTest {
    private static final LocalDate CHRISTMAS = LocalDate.of(2026, 12, 25);

    private static Optional<String> reason(ServerFixture server) {
        return server.db()
                .read(read -> SkippedSlotStore.of(read, CHRISTMAS)
                        .map(row -> row.value().reason()));
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
                            .select(".rung:has(time[datetime=2026-12-25])")
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
                    .endsWith("is longer than 300 letters; write it shorter");
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
    void an_empty_slot_says_what_could_fill_it_and_dangerous_work_never() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor.Reply page = server.as("bram").get("/episodes/slots/2026-12-11");
            assertThat(page.page().select("h1").text()).isEqualTo("Friday 11 December");
            assertThat(page.page()
                            .select("section[aria-labelledby=fill-head] li")
                            .eachText())
                    .containsExactly(
                            "A standby: Why a weir, not begun. See what it does here",
                            "A side story: Set the sill stones can begin, about 10 min of story.",
                            "A side story: Plane the gate boards can begin, about 8 min of story.",
                            "A side story: Forge the straps can begin, about 7 min of story.");
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
}
