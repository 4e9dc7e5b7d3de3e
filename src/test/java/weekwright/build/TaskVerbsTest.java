package weekwright.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static weekwright.testkit.OakMill.TODAY;
import static weekwright.testkit.OakMill.row;
import static weekwright.testkit.OakMill.shown;
import static weekwright.testkit.OakMill.task;
import static weekwright.testkit.OakMill.texts;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Rejected;
import weekwright.db.Db;
import weekwright.db.FolderRefused;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.testkit.OakMill;

class TaskVerbsTest {
    @TempDir
    Path folder;

    private Db db;

    @BeforeEach
    void open() throws FolderRefused {
        db = OakMill.create(folder);
    }

    @AfterEach
    void close() {
        db.close();
    }

    private Shown at(String id) {
        return shown(db, TaskStore.TABLE, id);
    }

    @Test
    void a_new_task_is_kept_with_its_links_and_the_day_it_was_added() throws Exception {
        SaveTask.Saved saved = db.write(
                "ilse",
                write -> SaveTask.save(
                        write,
                        Optional.empty(),
                        row(
                                Task.class,
                                "id",
                                TaskStore.nextId(write, new Id("wheel")).value(),
                                "stage",
                                "wheel",
                                "title",
                                "Saw the buckets",
                                "kind",
                                "work",
                                "likely",
                                "1.5",
                                "pieces",
                                "36"),
                        List.of(row(Link.class, "task", "wheel.1", "after", "shaft.3")),
                        TODAY));
        assertThat(saved.task().value().id().value()).isEqualTo("wheel.1");
        assertThat(task(db, "wheel.1").added()).contains(TODAY);
        assertThat(db.read(LinkStore.TABLE::count)).isEqualTo(4);
    }

    @Test
    void an_edit_takes_away_links_that_are_not_among_the_new_ones() throws Exception {
        db.write(
                "ilse",
                write -> SaveTask.save(
                        write,
                        Optional.of(at("shaft.3")),
                        task(db, "shaft.3"),
                        List.of(row(Link.class, "task", "shaft.3", "after", "shaft.1", "share", "0.5")),
                        TODAY));
        List<Link> links = db.read(read -> LinkStore.before(read, new Id("shaft.3"))).stream()
                .map(Stored::value)
                .toList();
        assertThat(links).containsExactly(row(Link.class, "task", "shaft.3", "after", "shaft.1", "share", "0.5"));
        assertThat(task(db, "shaft.3").added()).isEmpty();
    }

    @Test
    void a_ring_of_links_is_refused_with_the_ring_written_out() {
        assertThatThrownBy(() -> db.write(
                        "ilse",
                        write -> SaveTask.save(
                                write,
                                Optional.of(at("shaft.1")),
                                task(db, "shaft.1"),
                                List.of(row(Link.class, "task", "shaft.1", "after", "shaft.4")),
                                TODAY)))
                .isInstanceOf(Rejected.class)
                .hasMessage("after: Square the log → Arm mortises → Shrink on the hoops → Oil soaks in → Square the log"
                        + " is a ring: each waits for the one before it; take one of these links out");
        assertThat(db.read(LinkStore.TABLE::count)).isEqualTo(3);
    }

    @Test
    void a_task_after_itself_an_unknown_one_and_one_named_twice_are_each_named() {
        assertThatThrownBy(() -> db.write(
                        "ilse",
                        write -> SaveTask.save(
                                write,
                                Optional.of(at("shaft.2")),
                                row(
                                        Task.class,
                                        "id",
                                        "shaft.2",
                                        "stage",
                                        "roof",
                                        "title",
                                        "Arm mortises",
                                        "kind",
                                        "work",
                                        "equipment",
                                        "hoist:2"),
                                List.of(
                                        row(Link.class, "task", "shaft.2", "after", "SHAFT.2"),
                                        row(Link.class, "task", "shaft.2", "after", "gone"),
                                        row(Link.class, "task", "shaft.2", "after", "shaft.1"),
                                        row(Link.class, "task", "shaft.2", "after", "shaft.1")),
                                TODAY)))
                .hasMessage("after: \"SHAFT.2\" is the task itself; name the task that comes before it\n"
                        + "stage: \"roof\" is no stage of this project; choose one of the list\n"
                        + "equipment: \"hoist\" is no equipment of this project; choose one of the list\n"
                        + "after: \"gone\" is no task of this project; choose one of the tasks\n"
                        + "after: \"Square the log\" is named twice; name each task once");
    }

    @Test
    void hours_left_are_kept_with_the_day_on_which_they_were_said() throws Exception {
        db.write("ilse", write -> SayLeft.say(write, at("shaft.2"), new Hours(720), TODAY));
        assertThat(task(db, "shaft.2").left()).contains(new Hours(720));
        assertThat(task(db, "shaft.2").leftOn()).contains(TODAY);
        assertThatThrownBy(() -> db.write("ilse", write -> SayLeft.say(write, at("shaft.1"), Hours.ZERO, TODAY)))
                .hasMessage("\"Square the log\" is done since 19 September 2026; open it again first");
    }

    @Test
    void done_takes_the_hours_left_with_it_and_says_which_pieces_are_not_logged() throws Exception {
        db.write("ilse", write -> SayLeft.say(write, at("shaft.2"), new Hours(120), TODAY));
        OakMill.addHours(
                db, "id", "h1", "date", "2026-11-20", "crew", "ilse", "task", "shaft.2", "hours", "6", "pieces", "5");
        MarkDone.Done done = db.write("ilse", write -> MarkDone.mark(write, at("shaft.2"), TODAY, TODAY));
        assertThat(done.task().value().done()).contains(TODAY);
        assertThat(done.task().value().left()).isEmpty();
        assertThat(texts(done.remarks())).containsExactly("\"Arm mortises\" has 5 of 6 pieces logged");
    }

    @Test
    void a_task_without_hours_is_not_done_before_what_it_follows() {
        assertThatThrownBy(() -> db.write("ilse", write -> MarkDone.mark(write, at("shaft.3"), TODAY, TODAY)))
                .hasMessage("\"Shrink on the hoops\" cannot be done before what it follows: Arm mortises is not done;"
                        + " mark that done first, or log the hours worked on this");
        assertThatThrownBy(() -> db.write("ilse", write -> MarkStarted.mark(write, at("shaft.4"), TODAY, TODAY)))
                .hasMessage(
                        "\"Oil soaks in\" cannot begin before what it follows: Shrink on the hoops is not done; mark"
                                + " that done first");
    }

    @Test
    void a_task_with_hours_is_under_way_whatever_its_links_say() throws Exception {
        OakMill.addHours(db, "id", "h1", "date", "2026-11-20", "crew", "ilse", "task", "shaft.3", "hours", "6");
        db.write("ilse", write -> MarkDone.mark(write, at("shaft.3"), TODAY, TODAY));
        assertThat(task(db, "shaft.3").done()).contains(TODAY);
        db.write("ilse", write -> MarkStarted.mark(write, at("shaft.4"), TODAY, TODAY));
        assertThat(task(db, "shaft.4").started()).contains(TODAY);
    }

    @Test
    void days_in_the_future_or_before_the_start_are_refused() throws Exception {
        db.write(
                "ilse",
                write -> LogHours.log(
                        write,
                        row(
                                HoursEntry.class,
                                "id",
                                "h1",
                                "date",
                                "2026-11-20",
                                "crew",
                                "ilse",
                                "task",
                                "shaft.2",
                                "hours",
                                "6"),
                        TODAY));
        assertThatThrownBy(() -> db.write(
                        "ilse", write -> MarkDone.mark(write, at("shaft.2"), LocalDate.of(2026, 11, 19), TODAY)))
                .hasMessage(
                        "day: \"19 November 2026\" is before it began on 20 November 2026; write that day or a later"
                                + " one");
        assertThatThrownBy(() ->
                        db.write("ilse", write -> MarkDropped.mark(write, at("shaft.2"), TODAY.plusDays(1), TODAY)))
                .hasMessage("day: \"26 November 2026\" is after today, 25 November 2026; write the day it happened");
    }

    @Test
    void a_task_is_dropped_laid_aside_and_opened_again() throws Exception {
        db.write("ilse", write -> LayAside.lay(write, at("shaft.2"), Optional.empty(), TODAY));
        assertThat(LayAside.isAside(task(db, "shaft.2"), TODAY)).isTrue();
        assertThat(LayAside.until(task(db, "shaft.2"), TODAY)).isEmpty();
        db.write("ilse", write -> LayAside.lay(write, at("shaft.2"), Optional.of(TODAY.plusDays(9)), TODAY));
        assertThat(LayAside.until(task(db, "shaft.2"), TODAY)).contains(TODAY.plusDays(9));
        assertThat(LayAside.isAside(task(db, "shaft.2"), TODAY.plusDays(9))).isFalse();
        db.write("ilse", write -> MarkDropped.mark(write, at("shaft.2"), TODAY, TODAY));
        assertThat(task(db, "shaft.2").dropped()).contains(TODAY);
        assertThat(task(db, "shaft.2").asideUntil()).isEmpty();
        db.write("ilse", write -> Reopen.reopen(write, at("shaft.2")));
        assertThat(task(db, "shaft.2").isOpen()).isTrue();
        assertThatThrownBy(
                        () -> db.write("ilse", write -> LayAside.lay(write, at("shaft.2"), Optional.of(TODAY), TODAY)))
                .hasMessage(
                        "aside_until: \"25 November 2026\" is not after today, 25 November 2026; write a later day");
    }

    @Test
    void of_two_who_mark_the_same_task_the_second_is_told() throws Exception {
        Shown both = at("shaft.2");
        db.write("ilse", write -> SayLeft.say(write, both, new Hours(60), TODAY));
        assertThatThrownBy(() -> db.write("tomas", write -> MarkDropped.mark(write, both, TODAY, TODAY)))
                .isInstanceOf(Stale.class)
                .hasMessage("tasks 2 was changed meanwhile");
    }

    @Test
    void a_stage_has_a_name_of_its_own() throws Exception {
        var roof = db.write(
                "ilse",
                write -> SaveStage.save(
                        write,
                        Optional.empty(),
                        row(
                                Stage.class,
                                "id",
                                StageStore.nextId(write, "Hurst frame").value(),
                                "name",
                                "Hurst frame")));
        assertThat(roof.value().id().value()).isEqualTo("frame");
        assertThatThrownBy(() -> db.write(
                        "ilse",
                        write -> SaveStage.save(
                                write,
                                Optional.of(Shown.of(roof)),
                                row(Stage.class, "id", "frame", "name", "wheel SHAFT"))))
                .hasMessage("name: \"wheel SHAFT\" is the name of another stage; choose another name");
    }

    @Test
    void somebody_of_the_crew_has_to_stay() throws Exception {
        CrewMember tomas = row(CrewMember.class, "id", "tomas", "name", "Tomas", "access", "helper");
        db.write(
                "ilse",
                write -> SaveCrewMember.save(write, Optional.of(shown(db, CrewMemberStore.TABLE, "tomas")), tomas));
        CrewMember ilse = row(CrewMember.class, "id", "ilse", "name", "Wren", "access", "helper");
        assertThatThrownBy(() -> db.write(
                        "ilse",
                        write -> SaveCrewMember.save(
                                write, Optional.of(shown(db, CrewMemberStore.TABLE, "ilse")), ilse)))
                .hasMessage("name: \"Wren\" is the name of somebody else here; add a second name\n"
                        + "access: \"Wren\" is the only one of the crew; give somebody else that access first");
    }

    @Test
    void settings_are_saved_a_table_at_a_time_and_the_currency_stays() throws Exception {
        db.write(
                "ilse",
                write -> SaveSettings.save(
                        write, SettingsStore.ORDERS, 1, row(OrderSettings.class, "margin_days", "21")));
        assertThat(db.read(SettingsStore::get).marginDays()).isEqualTo(21);
        Project yen = row(
                Project.class, "name", "Oak mill", "started", "2026-03-01", "currency", "JPY", "zone", "Europe/Berlin");
        assertThatThrownBy(() -> db.write("ilse", write -> SaveSettings.save(write, SettingsStore.PROJECT, 1, yen)))
                .hasMessage(
                        "currency: \"JPY\" is not EUR, in which all amounts here stand; export the project, change it"
                                + " there, and import it again");
        assertThatThrownBy(() -> db.write(
                        "ilse", write -> SaveSettings.save(write, SettingsStore.ORDERS, 1, row(OrderSettings.class))))
                .isInstanceOf(Stale.class);
    }

    @Test
    void a_ring_of_1500_tasks_is_found() throws Exception {
        int many = 1500;
        db.write("ilse", write -> {
            for (int i = 0; i < many; i++) {
                TaskStore.TABLE.insert(
                        write, row(Task.class, "id", "w" + i, "stage", "wheel", "title", "T" + i, "kind", "work"));
                if (i > 0) {
                    LinkStore.TABLE.insert(write, row(Link.class, "task", "w" + i, "after", "w" + (i - 1)));
                }
            }
            return null;
        });
        assertThatThrownBy(() -> db.write(
                        "ilse",
                        write -> SaveTask.save(
                                write,
                                Optional.of(at("w0")),
                                task(db, "w0"),
                                List.of(row(Link.class, "task", "w0", "after", "w" + (many - 1))),
                                TODAY)))
                .hasMessage("after: T0 → T1 → T2 → T3 → T4 → T5 → T6 → T7 → T8 → T9 → … 1481 more … → T1491 → T1492 →"
                        + " T1493 → T1494 → T1495 → T1496 → T1497 → T1498 → T1499 → T0 is a ring: each waits for the one"
                        + " before it; take one of these links out");
    }
}
