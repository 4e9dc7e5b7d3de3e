package weekwright.web.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.build.HoursEntryStore;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class WeekSheetPageTest {
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
    void the_lines_stand_in_the_order_of_the_print_up_to_today_with_room_for_pencil() {
        Visitor.Reply page = server.as("ilse").get("/week/sheet");
        assertThat(page.page().select(".wall-day legend").eachText())
                .containsExactly("Monday 23 Nov", "Tuesday 24 Nov", "Wednesday 25 Nov");
        assertThat(page.page()
                        .select(".wall-day")
                        .get(0)
                        .select(".wall-line .wall-what:not(:has(select))")
                        .eachText())
                .isNotEmpty()
                .allMatch(line -> line.endsWith("planned"));
        assertThat(page.page().select(".wall-day").get(0).select("details:not([open]) .wall-line:has(select)"))
                .hasSize(2);
    }

    @Test
    void all_faults_are_said_at_once_at_their_boxes_and_nothing_is_kept() {
        Visitor ilse = server.as("ilse");
        int before = server.db().read(HoursEntryStore.TABLE::count);
        Visitor.Reply page = ilse.get("/week/sheet");
        String pencil = page.page()
                .select(".wall-day")
                .get(0)
                .select("select[name^=crew]")
                .first()
                .attr("name");
        String number = pencil.substring("crew.".length());
        Visitor.Reply refused = ilse.form(page, "form.from-wall")
                .with("hours.0", "vier")
                .with("hours." + number, "2")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.page().select("[aria-invalid=true]").eachAttr("id")).containsExactly("hours.0", pencil);
        assertThat(refused.page().select("details[open] [name^=crew]").eachAttr("name"))
                .as("what is written by pencil is not folded away, of other days it is")
                .hasSize(2)
                .startsWith(pencil);
        assertThat(ilse.form(refused, "form.from-wall").value("hours.0")).isEqualTo("vier");
        Visitor.Reply over = ilse.form(refused, "form.from-wall")
                .with("hours.0", "20")
                .with(pencil, "bram")
                .with("hours." + number, "5")
                .send();
        assertThat(over.status()).isEqualTo(422);
        assertThat(over.troubles()).hasSize(1);
        assertThat(server.db().read(HoursEntryStore.TABLE::count)).isEqualTo(before);
    }

    @Test
    void hours_and_done_boxes_are_kept_in_one_go() {
        Visitor ilse = server.as("ilse");
        int before = server.db().read(HoursEntryStore.TABLE::count);
        Visitor.Reply page = ilse.get("/week/sheet?of=2026-11-23");
        Visitor.Reply saved = ilse.follow(ilse.form(page, "form.from-wall")
                .with("hours.0", "3,5")
                .with("crew.1", "ilse")
                .with("what.1", "task:weir.2")
                .with("hours.1", "2:15")
                .with("done.1", "yes")
                .send());
        assertThat(saved.page().select(".flash p").text()).startsWith("5\u00be hours logged, 1 task done.");
        assertThat(server.db().read(HoursEntryStore.TABLE::count)).isEqualTo(before + 2);
    }

    @Test
    void nothing_in_any_box_and_a_week_too_far_are_said() {
        Visitor ilse = server.as("ilse");
        assertThat(ilse.form(ilse.get("/week/sheet"), "form.from-wall").send().troubles())
                .containsExactly("Nothing stands in any box; write the hours as they stand on the wall");
        assertThat(ilse.get("/week/sheet?of=2026-12-07").text())
                .contains("The sheets of this week and the four before it can be typed in.");
    }

    @Test
    void a_refused_sheet_keeps_its_own_lines_though_the_plan_has_others_by_then() {
        try (ServerFixture own = ServerFixture.small().drawn()) {
            Visitor ilse = own.as("ilse");
            Visitor.Reply page = ilse.get("/week/sheet");
            assertThat(lines(page).get(0)).matches("Bram edit no\\.\\h11 6\\hh planned");
            Visitor.Form typed =
                    ilse.form(page, "form.from-wall").with("hours.0", "vier").with("hours.1", "2");
            // meanwhile Ilse's Monday gets a line of its own, which stands before the one of Bram
            Visitor bram = own.as("bram");
            bram.follow(bram.form(bram.get("/week/lines/new"))
                    .with("date", "2026-11-23")
                    .with("crew", "ilse")
                    .with("kind", "errand")
                    .with("hours", "8")
                    .with("text", "Fetch the flat iron")
                    .send());
            Visitor.Reply fresh = ilse.get("/week/sheet");
            assertThat(lines(fresh)).isNotEqualTo(lines(page));
            Visitor.Reply refused = typed.send();
            assertThat(refused.troubles())
                    .containsExactly("\"vier\" is not hours; write 3.5 or 3:30", "is missing; say whose line it is");
            assertThat(lines(refused)).isEqualTo(lines(page));
            Visitor.Form again = ilse.form(refused, "form.from-wall");
            assertThat(again.value("hours.0") + " " + again.value("hours.1")).isEqualTo("vier 2");
            Visitor.Reply saved =
                    ilse.follow(again.with("hours.0", "4").with("hours.1", "").send());
            assertThat(saved.page().select(".flash p").text()).isEqualTo("4 hours logged.");
            var entries = own.db().read(HoursEntryStore.TABLE::values);
            var last = entries.get(entries.size() - 1);
            assertThat(last.crew() + " " + last.date() + " " + last.as().orElseThrow() + " "
                            + last.episode().orElseThrow() + " " + last.hours())
                    .isEqualTo("bram 2026-11-23 EDIT ep.11 4");
        }
    }

    private static List<String> lines(Visitor.Reply page) {
        return page.page().select(".wall-line .wall-what:not(:has(select))").eachText();
    }

    @Test
    void a_task_is_not_ticked_done_in_silence_while_its_once_only_shot_is_not_captured() {
        try (ServerFixture own = ServerFixture.of(db -> {
                    SmallProject.fill(db);
                    db.write("test", write -> {
                        WeekLineStore.TABLE.insert(
                                write,
                                SmallProject.of(
                                        WeekLine.class,
                                        "id",
                                        "week.1",
                                        "date",
                                        "2026-11-24",
                                        "crew",
                                        "ilse",
                                        "task",
                                        "gate.2",
                                        "kind",
                                        "work",
                                        "hours",
                                        "3"));
                        return null;
                    });
                })
                .drawn()) {
            Visitor ilse = own.as("ilse");
            Visitor.Reply page = ilse.get("/week/sheet");
            String box = page.page()
                    .select(".wall-line:not(:has(select)):contains(Hang the gate) input[name^=done]")
                    .attr("name");
            String hours = box.replace("done", "hours");
            Visitor.Reply refused = ilse.form(page, "form.from-wall")
                    .with(hours, "3")
                    .with(box, "yes")
                    .send();
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.troubles())
                    .containsExactly(
                            "\"The gate drops home\" is a must-have shot, happens once and is not captured; tick"
                                    + " it off first, or say so where \"Hang the gate\" is marked done");
            assertThat(own.db().read(HoursEntryStore.TABLE::count)).isEqualTo(5);
        }
    }

    @Test
    void days_before_the_build_began_which_take_no_hours_are_not_asked_for() {
        Clock clock = Clock.fixed(Instant.parse("2026-09-02T08:00:00Z"), ZoneOffset.UTC);
        try (ServerFixture own = ServerFixture.under(clock, SmallProject::fillWithOnePerson)) {
            assertThat(own.as("ilse")
                            .get("/week/sheet")
                            .page()
                            .select(".wall-day legend")
                            .eachText())
                    .containsExactly("Tuesday 1 Sep", "Wednesday 2 Sep");
        }
    }
}
