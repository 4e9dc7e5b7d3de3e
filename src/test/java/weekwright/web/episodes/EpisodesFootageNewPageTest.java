package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class EpisodesFootageNewPageTest {
    private static final String HEAD = "clip,date,time,minutes,size,card\n";

    @Test
    void every_fault_of_a_listing_is_told_with_its_line_and_what_was_typed_stays() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor bram = server.as("bram");
            String listing = HEAD + "C1,2026-11-09,25:61,4,,A1\nC2,2026-11-09,10:00,0,,A1\nC3,2026-11-26,,1,,A1\n"
                    + "c3,2026-11-09,,1,,A1";
            Visitor.Reply refused = bram.form(bram.get("/episodes/footage/new"))
                    .with("listing", listing)
                    .press("read");
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.troubles().toString())
                    .contains("listing line 2, column time: \"25:61\" is not a time")
                    .contains("listing line 3, column minutes: \"0\" is no footage; write its length in minutes, or"
                            + " leave it empty");
            assertThat(bram.form(refused).value("listing")).isEqualTo(listing);
            Visitor.Reply twice = bram.form(refused)
                    .with("listing", HEAD + "C3,2026-11-26,,1,,A1\nC4,2026-11-09,,1,,A1\nc4,2026-11-09,,1,,A1")
                    .press("read");
            assertThat(twice.troubles().toString())
                    .contains("listing line 2, column date: \"2026-11-26\" is after today, 25 November 2026; set the"
                            + " camera's clock, and write the day it was taken")
                    .contains("listing line 4, column clip: \"c4\" stands in line 3 already; take one of the two out");
        }
    }

    @Test
    void clips_are_looked_over_kept_left_out_the_second_time_corrected_and_taken_out() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor bram = server.as("bram");
            Visitor.Reply read = bram.form(bram.get("/episodes/footage/new"))
                    .with("listing", HEAD + "C1,2026-11-09,10:00,4.5,1.2 GB,A1\nC2,2026-11-12,10:00,30,,A1")
                    .press("read");
            assertThat(read.status()).isEqualTo(200);
            Visitor.Form form = bram.form(read);
            assertThat(form.value("task.0")).isEqualTo("weir.2");
            assertThat(form.value("task.1")).isEmpty();
            Visitor.Reply kept = bram.follow(form.with("task.1", "weir.1").send());
            assertThat(kept.page().select(".flash p").text()).isEqualTo("2 clips in the footage log.");
            assertThat(kept.page().select("h1").text()).isEqualTo("1.7 minutes of footage for each finished one");
            assertThat(kept.page().select("a[href='/episodes/ep.12'] ~ .quiet").text())
                    .isEqualTo("0 minutes in hand of about 34 that 20 finished ones usually take");
            Visitor.Reply again = bram.form(bram.get("/episodes/footage/new"))
                    .with("listing", HEAD + "C1,2026-11-09,10:00,4.5,1.2 GB,A1\nC9,2026-11-09,11:00,,,A1")
                    .press("read");
            assertThat(bram.follow(bram.form(again).send())
                            .page()
                            .select(".flash p")
                            .text())
                    .isEqualTo("1 clip in the footage log. 1 was there already.");
            Visitor.Reply edit = bram.get("/episodes/footage/1/edit");
            Visitor.Reply refused = bram.form(edit).with("minutes", "0").send();
            assertThat(refused.troubles())
                    .containsExactly("\"0\" is no footage; write its length in minutes, or leave it empty");
            Visitor.Reply saved =
                    bram.follow(bram.form(refused).with("minutes", "5").send());
            assertThat(saved.page().select(".flash p").text()).isEqualTo("Clip C1 is saved.");
            Visitor.Reply off = bram.follow(
                    bram.form(bram.get("/episodes/footage/1/edit"), "form.act").press("remove"));
            assertThat(off.page().select(".flash p").text()).isEqualTo("Clip C1 is out of the log.");
            assertThat(bram.follow(bram.form(off, ".flash form").send()).status())
                    .isEqualTo(200);
            assertThat(bram.get("/episodes/footage/1/edit").status()).isEqualTo(200);
        }
    }
}
