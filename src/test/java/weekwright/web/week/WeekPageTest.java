package weekwright.web.week;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.Equipment;
import weekwright.build.EquipmentStore;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.db.Stored;
import weekwright.db.Write;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class WeekPageTest {
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
    void seven_days_stand_one_below_the_other_with_what_was_logged_and_what_is_proposed() {
        Visitor.Reply page = server.as("ilse").get("/week");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.page().select("h1").text()).isEqualTo("Week 48");
        assertThat(page.page().select(".page-head .lead").text())
                .isEqualTo("No. 11, Sill stones is due Friday 27 November, in 2 days.");
        assertThat(page.page().select(".day h2").eachText())
                .containsExactly("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday");
        assertThat(page.page().select(".day.today .date").text()).isEqualTo("Wednesday 25 Nov, today");
        assertThat(page.page().select(".day.past .day-lines").eachText())
                .containsExactly("Nothing logged.", "Nothing logged.");
        assertThat(page.page().select(".day.today .work-line").eachText())
                .containsExactly("Ilse Set the sill stones 6 h", "Bram Set the sill stones 6 h");
    }

    @Test
    void hazards_are_told_in_full_once_with_who_decides_and_local_codes_come_first() {
        Visitor.Reply page = server.as("ilse").get("/week");
        assertThat(page.page().select(".day.today .caution").first().text())
                .isEqualTo("Lifting and rigging. Know the weight; inspected slings; one gives signs; nobody under the"
                        + " load. A qualified rigger decides.");
        assertThat(page.page().select(".caution-foot").text())
                .isEqualTo("Cautions are reminders between you, not instructions. Local codes and licensed or qualified"
                        + " people come first; where they differ from this sheet, they are right.");
    }

    @Test
    void the_emergency_block_stands_on_the_sheet() {
        assertThat(server.as("ilse").get("/week").page().select(".emergency").text())
                .isEqualTo("If something happens Call 112 We are at Mill lane 3 Way in Gate by the pond First aider"
                        + " Ilse"
                        + " Kit By the door Shut-offs Mains behind the saw");
    }

    @Test
    void a_helper_sees_the_week_and_changes_nothing_on_it() {
        Visitor noor = server.as("noor");
        Visitor.Reply page = noor.get("/week");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.page().select("main a[href^=/week/lines]")).isEmpty();
        Visitor.Reply refused = noor.get("/week/lines/new");
        assertThat(refused.status()).isEqualTo(403);
        assertThat(refused.text())
                .isEqualTo("Not for you here This sheet is for the crew. A helper logs hours and sees the week and the"
                        + " build.");
    }

    @Test
    void coming_weeks_can_be_looked_at_and_others_cannot() {
        Visitor ilse = server.as("ilse");
        Visitor.Reply next = ilse.get("/week?of=2026-12-01");
        assertThat(next.page().select("h1").text()).isEqualTo("Week 49");
        assertThat(next.page().select(".page-head .lead").text())
                .isEqualTo(
                        "No. 12, Boards for the gate is due Friday 4 December, in 9 days. Proposed as the order of work"
                                + " has it today.");
        assertThat(ilse.get("/week?of=2026-08-30").text())
                .isEqualTo(
                        "Nothing stands here There is a sheet for each week from the start of the build to the eighth"
                                + " after this one.");
        assertThat(ilse.get("/week?week=2026-W54").text())
                .isEqualTo("Nothing stands here \"2026-W54\" is no week; write one such as 2026-W48.");
        assertThat(ilse.get("/week?of=2026-02-30").text())
                .isEqualTo("Nothing stands here \"2026-02-30\" is not a day of the calendar.");
    }

    @Test
    void the_page_is_there_at_once_with_what_is_known_and_says_that_the_proposals_are_being_made() {
        try (ServerFixture fresh = ServerFixture.small()) {
            Visitor.Reply first = fresh.as("ilse").get("/week");
            // on a quick machine the first order of work can be there before the page is; then it says nothing of it
            boolean moving =
                    first.page().select("[data-moving]").attr("data-moving").equals("true");
            boolean proposed = !first.page().select(".day.today .work-line").isEmpty();
            assertThat(first.page().select("[data-moving] > p.quiet.unprinted").eachText())
                    .isEqualTo(
                            !moving
                                    ? List.of()
                                    : List.of(
                                            proposed
                                                    ? "Something was changed since; the proposals are being made anew."
                                                            + " Look again"
                                                    : "The first order of work is being made; until then the crew's own"
                                                            + " lines stand here alone. Look again"));
            assertThat(first.page().select(".day.today .day-lines").text().equals("Nothing planned."))
                    .isEqualTo(!proposed);
            fresh.drawn();
            Visitor.Reply later = fresh.as("ilse").get("/week");
            assertThat(later.page().select("[data-moving]").attr("data-moving")).isEqualTo("false");
            assertThat(later.page().select(".day.today .work-line")).isNotEmpty();
        }
    }

    @Test
    void a_week_that_is_over_stands_against_what_its_monday_proposed() {
        Visitor.Reply page = server.as("ilse").get("/week?week=2026-W46");
        assertThat(page.page().select("h1").text()).isEqualTo("Week 46");
        assertThat(page.page().select(".day.past .day-lines").eachText())
                .startsWith("Ilse Set the sill stones 7 h", "Ilse Set the sill stones 6½ h", "Nothing logged.");
        assertThat(page.page().select(".against p").text())
                .isEqualTo("28¾ hours planned, 13½ hours logged, nothing done; not touched: edit no. 10.");
        assertThat(page.page().select(".against tbody tr").eachText())
                .containsExactly("edit no. 10 24¾ h none", "Set the sill stones 4 h 13½ h");
        assertThat(server.as("ilse").get("/week").page().select(".last-week").text())
                .startsWith("Last week: ");
    }

    @Test
    void what_does_not_go_together_what_tires_and_what_was_not_got_to_is_said() {
        try (ServerFixture own = ServerFixture.of(db -> {
                    SmallProject.fill(db);
                    db.write("test", write -> {
                        EquipmentStore.TABLE.insert(
                                write, OakMill.row(Equipment.class, "id", "saw", "name", "the bandsaw"));
                        write.handle().execute("UPDATE tasks SET equipment = 'saw' WHERE id IN ('gate.1', 'gate.3')");
                        line(write, "week.1", "2026-11-24", "ilse", "gate.1", "work", "3", "", "");
                        line(write, "week.2", "2026-11-26", "ilse", "gate.1", "work", "6", "", "");
                        line(write, "week.3", "2026-11-26", "bram", "gate.3", "work", "3", "", "");
                        line(write, "week.4", "2026-11-26", "bram", "gate.3", "film", "3", "19:00", "22:00");
                        line(write, "week.5", "2026-11-28", "bram", "gate.2", "work", "11", "", "");
                        return null;
                    });
                })
                .drawn()) {
            Visitor ilse = own.as("ilse");
            Visitor.Reply page = ilse.get("/week");
            assertThat(page.page().select(".conflict").eachText())
                    .containsExactly(
                            "Does not go together. Plane the gate boards (Ilse) and Forge the straps (Bram) both want"
                                    + " the bandsaw, and there is one: agree who is first.",
                            "Does not go together. Bram cannot hold the camera and be one of the hands of Forge the"
                                    + " straps.",
                            "Does not go together. Hang the gate happens once, and nobody who can hold the camera is"
                                    + " there besides the hands.");
            assertThat(page.page().select(".day").get(5).select(".caution").eachText())
                    .containsExactly("Tiredness. Bram has 11 hours planned. Shorter days after heavy ones; nobody"
                            + " drives tired. A health adviser decides.");
            assertThat(page.page().select(".left-over li").eachText())
                    .containsExactly("Ilse, Plane the gate boards, Tue 24 Nov Move it to Wednesday 25 Nov");
            Visitor.Reply moved = ilse.follow(
                    ilse.form(ilse.get(page.page().select(".left-over a").attr("href")))
                            .send());
            assertThat(moved.page().select(".left-over")).isEmpty();
        }
    }

    @Test
    void ten_hours_are_a_day_a_quarter_more_and_heavy_work_after_a_late_edit_tire() {
        // common practice, no source
        try (ServerFixture own = ServerFixture.of(db -> {
                    SmallProject.fill(db);
                    db.write("test", write -> {
                        line(write, "week.1", "2026-11-26", "bram", "", "errand", "10", "", "");
                        line(write, "week.2", "2026-11-27", "bram", "", "errand", "10.25", "", "");
                        line(write, "week.3", "2026-11-27", "ilse", "", "edit", "1", "20:00", "21:00");
                        line(write, "week.4", "2026-11-28", "ilse", "weir.2", "work", "4", "", "");
                        line(write, "week.5", "2026-11-28", "bram", "", "edit", "1", "20:15", "21:15");
                        line(write, "week.6", "2026-11-29", "bram", "weir.2", "work", "4", "", "");
                        line(write, "week.7", "2026-11-29", "ilse", "", "edit", "2", "20:00", "22:00");
                        line(write, "week.8", "2026-11-30", "ilse", "weir.2", "work", "4", "", "");
                        line(write, "week.9", "2026-11-30", "bram", "gate.1", "work", "4", "", "");
                        return null;
                    });
                })
                .drawn()) {
            Visitor ilse = own.as("ilse");
            var days = ilse.get("/week").page().select(".day");
            String care = " Shorter days after heavy ones; nobody drives tired. A health adviser decides.";
            assertThat(days.get(3).select(".caution:contains(Tiredness)")).isEmpty();
            assertThat(days.get(4).select(".caution:contains(Tiredness)").eachText())
                    .containsExactly("Tiredness. Bram has 10¼ hours planned." + care);
            assertThat(days.get(5).select(".caution:contains(Tiredness)")).isEmpty();
            assertThat(days.get(6).select(".caution:contains(Tiredness)").text())
                    .isEqualTo(
                            "Tiredness. Bram edits late the evening before: Set the sill stones is heavy work." + care);
            assertThat(ilse.get("/week?of=2026-11-30")
                            .page()
                            .select(".day")
                            .get(0)
                            .select(".caution:contains(Tiredness)")
                            .text())
                    .isEqualTo(
                            "Tiredness. Ilse edits late the evening before: Set the sill stones is heavy work." + care);
        }
    }

    private static void line(
            Write write,
            String id,
            String date,
            String crew,
            String task,
            String kind,
            String hours,
            String from,
            String to) {
        WeekLineStore.TABLE.insert(
                write,
                OakMill.row(
                        WeekLine.class,
                        "id",
                        id,
                        "date",
                        date,
                        "crew",
                        crew,
                        "task",
                        task,
                        "kind",
                        kind,
                        "hours",
                        hours,
                        "from",
                        from,
                        "to",
                        to));
    }

    @Test
    void iso_weeks_count_as_in_the_standard() {
        // ISO 8601: 2026 has 53 weeks, its week 53 begins on 28 December; 2025 has 52
        assertThat(Weeks.named("2026-W53")).contains(LocalDate.of(2026, 12, 28));
        assertThat(Weeks.named("2026-W01")).contains(LocalDate.of(2025, 12, 29));
        assertThat(Weeks.named("2025-W53")).isEmpty();
        assertThat(Weeks.named("2026-W00")).isEmpty();
        assertThat(Weeks.name(LocalDate.of(2027, 1, 1).minusDays(4))).isEqualTo("2026-W53");
    }

    @Test
    void a_week_in_which_nobody_is_there_says_so() {
        try (ServerFixture empty = ServerFixture.of(db -> {
            SmallProject.fill(db);
            db.write("test", write -> {
                for (Stored<CrewMember> one : CrewMemberStore.TABLE.list(write)) {
                    write.handle()
                            .execute(
                                    "UPDATE crew SET mon=0, tue=0, wed=0, thu=0, fri=0, sat=0, sun=0 WHERE id = ?",
                                    one.value().id().value());
                }
                return null;
            });
        })) {
            empty.drawn();
            assertThat(empty.as("ilse")
                            .get("/week")
                            .page()
                            .select(".empty-sheet")
                            .text())
                    .startsWith("No tasks are planned for this week.");
        }
    }

    @Test
    void the_first_week_begins_on_the_first_day_of_the_build() {
        assertThat(server.as("ilse")
                        .get("/week?of=2026-09-01")
                        .page()
                        .select(".day .date")
                        .eachText())
                .startsWith("Tuesday 1 Sep, done")
                .hasSize(6);
    }
}
