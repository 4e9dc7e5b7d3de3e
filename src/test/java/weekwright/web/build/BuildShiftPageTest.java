package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.build.Gathering;
import weekwright.build.GatheringStore;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.episodes.EpisodeStore;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class BuildShiftPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    private static ServerFixture planned() {
        ServerFixture server = ServerFixture.small();
        Visitor ilse = server.as("ilse");
        ilse.follow(ilse.form(ilse.get("/build/tasks/gate.1/edit"))
                .with("not_before", "2026-12-01")
                .send());
        ilse.follow(ilse.form(ilse.get("/build/tasks/gate.2/edit"))
                .with("booked", "2026-12-20")
                .send());
        server.db().write("test", write -> {
            GatheringStore.TABLE.insert(
                    write,
                    SmallProject.of(Gathering.class, "id", "g.1", "date", "2026-12-12", "hands", "6", "hours", "5"));
            WeekLineStore.TABLE.insert(
                    write,
                    SmallProject.of(
                            WeekLine.class,
                            "id",
                            "w.1",
                            "date",
                            "2026-11-27",
                            "crew",
                            "ilse",
                            "kind",
                            "errand",
                            "hours",
                            "1",
                            "text",
                            "Fetch the iron"));
            WeekLineStore.TABLE.insert(
                    write,
                    SmallProject.of(
                            WeekLine.class,
                            "id",
                            "w.2",
                            "date",
                            "2026-11-26",
                            "crew",
                            "ilse",
                            "kind",
                            "errand",
                            "hours",
                            "1",
                            "text",
                            "Paid the mill",
                            "done",
                            "yes"));
            return null;
        });
        return server;
    }

    @Test
    void what_moves_is_shown_before_it_is_done() {
        try (ServerFixture server = planned()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply look = ilse.form(ilse.get("/build/shift"))
                    .with("first", "2026-11-26")
                    .with("days", "14")
                    .with("slots", "yes")
                    .send();
            assertThat(look.status()).isEqualTo(200);
            assertThat(look.page().select("tbody th").eachText())
                    .containsExactly(
                            "Line of the week, Ilse: Fetch the iron",
                            "Slot of “Sill stones”",
                            "Plane the gate boards, not before",
                            "Slot of “Boards for the gate”",
                            "Gathering",
                            "Hang the gate, booked");
            assertThat(OakMill.task(server.db(), "gate.1").notBefore()).contains(LocalDate.of(2026, 12, 1));
            Visitor.Reply done = ilse.follow(ilse.form(look).press("move"));
            assertThat(done.page().select(".flash p").text()).isEqualTo("6 days are moved by 14 days, later.");
            assertThat(OakMill.task(server.db(), "gate.1").notBefore()).contains(LocalDate.of(2026, 12, 15));
            assertThat(OakMill.task(server.db(), "gate.2").booked()).contains(LocalDate.of(2027, 1, 3));
            assertThat(OakMill.find(server.db(), GatheringStore.TABLE, "g.1")
                            .value()
                            .date())
                    .isEqualTo(LocalDate.of(2026, 12, 26));
            assertThat(OakMill.find(server.db(), WeekLineStore.TABLE, "w.2")
                            .value()
                            .date())
                    .isEqualTo(LocalDate.of(2026, 11, 26));
            assertThat(OakMill.find(server.db(), EpisodeStore.TABLE, "ep.11")
                            .value()
                            .slot())
                    .contains(LocalDate.of(2026, 12, 11));
            assertThat(OakMill.find(server.db(), EpisodeStore.TABLE, "ep.10")
                            .value()
                            .slot())
                    .contains(LocalDate.of(2026, 11, 20));
        }
    }

    @Test
    void days_that_mean_nothing_and_slots_that_do_not_fit_are_refused_with_nothing_moved() {
        try (ServerFixture server = planned()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply refused = ilse.form(ilse.get("/build/shift"))
                    .with("first", "2026-11-24")
                    .with("days", "0")
                    .send();
            assertThat(refused.troubles())
                    .containsExactly(
                            "\"24 November 2026\" is past, and what is past stays; write today or a later day",
                            "\"0\" moves nothing; write how many days later; with a minus, earlier");
            Visitor.Reply slots = ilse.form(refused)
                    .with("first", "2026-11-26")
                    .with("days", "10")
                    .with("slots", "yes")
                    .press("move");
            assertThat(slots.troubles())
                    .containsExactly("\"10\" is not a number of whole slots, which are 7 days apart; write 7 or 14, or"
                            + " leave the episodes where they are");
            Visitor.Reply taken = ilse.form(slots)
                    .with("first", "2026-12-01")
                    .with("days", "-7")
                    .press("move");
            assertThat(taken.troubles())
                    .containsExactly("\"Boards for the gate\" would come on 27 November 2026, the slot of Sill stones;"
                            + " move that one first, or leave the episodes where they are");
            assertThat(OakMill.task(server.db(), "gate.1").notBefore()).contains(LocalDate.of(2026, 12, 1));
        }
    }

    @Test
    void rule_125_a_line_that_would_leave_somebody_alone_in_danger_holds_the_whole_move() {
        try (ServerFixture server = ServerFixture.small()) {
            server.db().write("test", write -> {
                WeekLineStore.TABLE.insert(
                        write,
                        SmallProject.of(
                                WeekLine.class,
                                "id",
                                "w.1",
                                "date",
                                "2026-11-27",
                                "crew",
                                "ilse",
                                "task",
                                "weir.2",
                                "kind",
                                "work",
                                "hours",
                                "4"));
                return null;
            });
            Visitor ilse = server.as("ilse");
            Visitor.Reply refused = ilse.form(ilse.get("/build/shift"))
                    .with("first", "2026-11-26")
                    .with("days", "1")
                    .press("move");
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.troubles().get(0))
                    .startsWith("Line of the week, Ilse: Set the sill stones on 28 November 2026: ");
            assertThat(OakMill.find(server.db(), WeekLineStore.TABLE, "w.1")
                            .value()
                            .date())
                    .isEqualTo(LocalDate.of(2026, 11, 27));
        }
    }

    @Test
    void an_empty_plan_says_so() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply look =
                ilse.form(ilse.get("/build/shift")).with("days", "3").send();
        assertThat(look.page().select("section p").text())
                .isEqualTo("Nothing is planned from that day on with a date of its own.");
        assertThat(look.page().select("button[value=move]")).isEmpty();
    }
}
