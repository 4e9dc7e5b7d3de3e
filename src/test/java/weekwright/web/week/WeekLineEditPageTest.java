package weekwright.web.week;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.build.WeekLineStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class WeekLineEditPageTest {
    private static ServerFixture server;

    @BeforeAll
    static void start() {
        server = ServerFixture.of(SmallProject::fillWithWeekLine);
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Test
    void a_line_is_changed_and_two_who_change_it_see_both_versions() {
        Visitor ilse = server.as("ilse");
        Visitor bram = server.as("bram");
        Visitor.Form hers = ilse.form(ilse.get("/week/lines/1/edit"));
        Visitor.Form his = bram.form(bram.get("/week/lines/1/edit"));
        assertThat(hers.value("text")).isEqualTo("Post the parcel");
        Visitor.Reply saved = hers.with("text", "Post both parcels").send();
        assertThat(ilse.follow(saved).page().select(".flash p").text()).isEqualTo("The line is saved.");
        Visitor.Reply conflict = his.with("hours", "1:30").send();
        assertThat(conflict.status()).isEqualTo(409);
        assertThat(conflict.page().select("main tbody tr").eachText())
                .containsExactlyInAnyOrder(
                        "Hours 1 h 1½ h 1 h", "In your words Post the parcel Post the parcel Post both parcels");
        assertThat(bram.form(conflict).send().status()).isEqualTo(303);
    }

    @Test
    void a_line_is_taken_off_and_put_back() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply off = ilse.form(ilse.get("/week/lines/1/edit")).press("delete");
        Visitor.Reply week = ilse.follow(off);
        assertThat(week.page().select(".flash p").text()).isEqualTo("The line of Friday 27 November is off the sheet.");
        assertThat(ilse.get("/week/lines/1/edit").text())
                .isEqualTo("Nothing stands here There is no line 1 on a week's sheet.");
        Visitor.Reply back = ilse.form(week, ".flash form").send();
        assertThat(ilse.follow(back).page().select(".flash p").text())
                .isEqualTo("Taken back: week line “Bram, 27 November 2026” removed.");
        assertThat(ilse.get("/week/lines/1/edit").status()).isEqualTo(200);
    }

    @Test
    void a_day_that_does_not_exist_is_refused() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/week/lines/1/edit"))
                .with("date", "2026-11-31")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"2026-11-31\" is not a day of the calendar; write a day that exists, such as 2026-02-28");
    }

    @Test
    void a_helper_may_not_change_a_line() {
        assertThat(server.as("noor").get("/week/lines/1/edit").status()).isEqualTo(403);
    }

    @Test
    void two_lines_change_places_and_what_that_does_can_be_seen_before() {
        try (ServerFixture own = ServerFixture.small()) {
            Visitor ilse = own.as("ilse");
            for (String[] one :
                    new String[][] {{"2026-11-26", "ilse", "Fetch lime"}, {"2026-11-27", "bram", "Post it"}}) {
                ilse.form(ilse.get("/week/lines/new"))
                        .with("date", one[0])
                        .with("crew", one[1])
                        .with("kind", "errand")
                        .with("hours", "1")
                        .with("text", one[2])
                        .send();
            }
            Visitor.Reply tried = ilse.form(ilse.get("/week/lines/1/edit"))
                    .with("swap", "week.2")
                    .press("try-swap");
            assertThat(tried.status()).isEqualTo(200);
            assertThat(tried.page().select(".tried li").first().text())
                    .isEqualTo(
                            "Tried in 200 futures as it stands and 200 with the change, with the same luck. Nothing is"
                                    + " kept yet.");
            assertThat(own.db().read(WeekLineStore.TABLE::values))
                    .extracting(line -> line.date() + " " + line.text())
                    .containsExactly("2026-11-26 Fetch lime", "2026-11-27 Post it");
            Visitor.Reply swapped = ilse.follow(ilse.form(tried).press("swap"));
            assertThat(swapped.page().select(".flash p").text()).isEqualTo("The two lines have changed places.");
            assertThat(own.db().read(WeekLineStore.TABLE::values))
                    .extracting(line -> line.date() + " " + line.crew().orElseThrow() + " " + line.text())
                    .containsExactly("2026-11-27 bram Fetch lime", "2026-11-26 ilse Post it");
            assertThat(ilse.form(ilse.get("/week/lines/1/edit")).press("swap").troubles())
                    .containsExactly("is missing; it has to be given");
        }
    }
}
