package weekwright.web.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.base.Id;
import weekwright.build.TaskStore;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class WeekLinesNewPageTest {
    private static ServerFixture server;

    @BeforeAll
    static void start() {
        server = ServerFixture.small().drawn();
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Test
    void a_line_is_put_on_the_sheet_and_can_be_taken_off_again() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply saved = ilse.form(ilse.get("/week/lines/new?date=2026-11-26&crew=bram"))
                .with("kind", "errand")
                .with("hours", "1:30")
                .with("from", "09:00")
                .with("to", "10:30")
                .with("text", "Fetch the flat iron")
                .send();
        assertThat(saved.status()).isEqualTo(303);
        assertThat(saved.to()).isEqualTo("/week?of=2026-11-26");
        Visitor.Reply week = ilse.follow(saved);
        assertThat(week.page().select(".flash p").text()).isEqualTo("A line is on the sheet for Thursday 26 November.");
        assertThat(week.page().select(".work-line.own").eachText())
                .containsExactly("Bram 09:00 to 10:30 errand: Fetch the flat iron 1½ h");
        Visitor.Reply off = ilse.form(week, ".flash form").send();
        assertThat(ilse.follow(off).page().select(".work-line.own")).isEmpty();
    }

    @Test
    void a_proposal_is_taken_over_filled_in() {
        Visitor ilse = server.as("ilse");
        String proposal = ilse.get("/week")
                .page()
                .select(".day.today a.line-edit")
                .first()
                .attr("href");
        Visitor.Form form = ilse.form(ilse.get(proposal));
        assertThat(form.value("date")).isEqualTo("2026-11-25");
        assertThat(form.value("crew")).isEqualTo("ilse");
        assertThat(form.value("task")).isEqualTo("weir.2");
        assertThat(form.value("kind")).isEqualTo("work");
        assertThat(form.value("hours")).isEqualTo("6");
    }

    @Test
    void everything_wrong_is_told_at_once_and_what_was_typed_is_kept() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/week/lines/new"))
                .with("date", "2026-02-30")
                .with("hours", "25")
                .with("from", "25:00")
                .with("text", "Rest")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles()).hasSize(3);
        assertThat(refused.page().select("#date-error").text())
                .isEqualTo("\"2026-02-30\" is not a day of the calendar; write a day that exists, such as 2026-02-28");
        assertThat(refused.page().select("#hours-error").text()).isEqualTo("\"25\" is over 24; write 0 to 24");
        assertThat(refused.page().select("#text").val()).isEqualTo("Rest");
        assertThat(server.db().read(WeekLineStore.TABLE::values))
                .extracting(WeekLine::text)
                .doesNotContain("Rest");
    }

    @Test
    void danger_that_asks_for_another_person_is_refused_when_nobody_is_there_rule_125() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/week/lines/new"))
                .with("date", "2026-11-29")
                .with("crew", "ilse")
                .with("kind", "work")
                .with("task", "weir.2")
                .with("hours", "4")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("\"Set the sill stones\" needs another person beside, and on 29 November 2026 there is"
                        + " nobody free for it; choose a day on which there is, or another task");
    }

    @Test
    void not_this_week_is_tried_with_the_same_luck_then_kept_and_taken_back() {
        try (ServerFixture own = ServerFixture.small().drawn()) {
            Visitor ilse = own.as("ilse");
            String proposal = "/week/lines/new?date=2026-11-25&crew=ilse&kind=work&task=weir.2&hours=6";
            long before = own.db().version();
            Visitor.Reply tried = ilse.form(ilse.get(proposal)).press("try-aside");
            assertThat(tried.status()).isEqualTo(200);
            List<String> said = tried.page().select(".tried li").eachText();
            assertThat(said.get(0)).startsWith("Tried in 200 futures as it stands and 200 with the change");
            assertThat(said.get(1)).matches("Weir is done about .* instead of .*, .* later\\.");
            assertThat(said.get(said.size() - 1)).startsWith("\"Sill stones\" ready for Friday 27 November: ");
            assertThat(own.db().version()).isEqualTo(before);
            assertThat(ilse.form(tried).value("hours")).isEqualTo("6");
            Visitor.Reply laid = ilse.follow(ilse.form(tried).press("aside"));
            assertThat(laid.page().select(".flash p").text())
                    .isEqualTo("\"Set the sill stones\" is laid aside until Monday 30 November.");
            ilse.form(laid, ".flash form").send();
            assertThat(own.db()
                            .read(read -> TaskStore.TABLE.find(read, new Id("weir.2")))
                            .orElseThrow()
                            .value()
                            .asideUntil())
                    .isEmpty();
        }
    }

    @Test
    void what_is_refused_is_refused_when_it_is_only_tried() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get("/week/lines/new"))
                .with("date", "2026-11-29")
                .with("crew", "ilse")
                .with("task", "weir.2")
                .with("hours", "4")
                .press("try");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles()).hasSize(1);
        assertThat(ilse.form(ilse.get("/week/lines/new")).press("aside").troubles())
                .containsExactly("is missing; choose the task that is not for this week");
    }
}
