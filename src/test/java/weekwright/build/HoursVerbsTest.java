package weekwright.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static weekwright.testkit.OakMill.TODAY;
import static weekwright.testkit.OakMill.row;
import static weekwright.testkit.OakMill.task;
import static weekwright.testkit.OakMill.texts;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Rejected;
import weekwright.db.Db;
import weekwright.db.FolderRefused;
import weekwright.db.Stale;
import weekwright.history.UndoChange;
import weekwright.testkit.OakMill;

class HoursVerbsTest {
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

    private LoggedHours log(String... texts) throws Rejected {
        return db.write("ilse", write -> {
            String[] all = Arrays.copyOf(texts, texts.length + 2);
            all[texts.length] = "id";
            all[texts.length + 1] = HoursEntryStore.nextId(write).value();
            return LogHours.log(write, row(HoursEntry.class, all), TODAY);
        });
    }

    @Test
    void logged_hours_are_kept_under_the_next_id_and_the_task_has_begun() throws Exception {
        LoggedHours logged =
                log("crew", "ilse", "date", "2026-11-24", "task", "shaft.2", "hours", "3.25", "pieces", "1");
        assertThat(logged.entry().value().id().value()).isEqualTo("hours.1");
        assertThat(logged.entry().value().hours().minutes()).isEqualTo(195);
        assertThat(logged.remarks()).isEmpty();
        assertThat(task(db, "shaft.2").started()).contains(LocalDate.of(2026, 11, 24));
    }

    @Test
    void earlier_hours_move_the_start_back_and_removing_them_moves_it_forward_again() throws Exception {
        log("crew", "ilse", "date", "2026-11-24", "task", "shaft.2", "hours", "2");
        LoggedHours earlier = log("crew", "tomas", "date", "2026-11-20", "task", "shaft.2", "hours", "2");
        assertThat(task(db, "shaft.2").started()).contains(LocalDate.of(2026, 11, 20));
        db.write("tomas", write -> {
            RemoveHours.remove(write, Shown.of(earlier.entry()));
            return null;
        });
        assertThat(task(db, "shaft.2").started()).contains(LocalDate.of(2026, 11, 24));
        db.write("tomas", write -> UndoChange.undo(write, db.version(), TODAY));
        assertThat(task(db, "shaft.2").started()).contains(LocalDate.of(2026, 11, 20));
    }

    @Test
    void removing_the_only_hours_leaves_the_task_not_begun() throws Exception {
        LoggedHours only = log("crew", "ilse", "date", "2026-11-24", "task", "shaft.2", "hours", "2");
        db.write("ilse", write -> {
            RemoveHours.remove(write, Shown.of(only.entry()));
            return null;
        });
        assertThat(task(db, "shaft.2").started()).isEmpty();
        assertThat(db.read(HoursEntryStore.TABLE::count)).isZero();
    }

    @Test
    void an_edit_that_changes_the_task_moves_both_starts() throws Exception {
        LoggedHours wrong = log("crew", "ilse", "date", "2026-11-24", "task", "shaft.2", "hours", "2");
        db.write(
                "ilse",
                write -> EditHours.edit(
                        write,
                        Shown.of(wrong.entry()),
                        row(
                                HoursEntry.class,
                                "id",
                                "hours.1",
                                "crew",
                                "ilse",
                                "date",
                                "2026-11-23",
                                "task",
                                "shaft.3",
                                "hours",
                                "3"),
                        TODAY));
        assertThat(task(db, "shaft.2").started()).isEmpty();
        assertThat(task(db, "shaft.3").started()).contains(LocalDate.of(2026, 11, 23));
    }

    @Test
    void a_stale_edit_is_refused() throws Exception {
        LoggedHours first = log("crew", "ilse", "date", "2026-11-24", "task", "shaft.2", "hours", "2");
        HoursEntry changed = row(
                HoursEntry.class,
                "id",
                "hours.1",
                "crew",
                "ilse",
                "date",
                "2026-11-24",
                "task",
                "shaft.2",
                "hours",
                "3");
        db.write("tomas", write -> EditHours.edit(write, Shown.of(first.entry()), changed, TODAY));
        assertThatThrownBy(() ->
                        db.write("ilse", write -> EditHours.edit(write, Shown.of(first.entry()), changed, TODAY)))
                .isInstanceOf(Stale.class)
                .hasMessage("hours 1 was changed meanwhile");
    }

    @Test
    void a_person_s_day_holds_24_hours_and_the_refusal_names_sum_and_entries() throws Exception {
        log("crew", "ilse", "date", "2026-11-24", "task", "shaft.2", "hours", "13");
        log("crew", "ilse", "date", "2026-11-24", "as", "shop", "hours", "10");
        log("crew", "tomas", "date", "2026-11-24", "task", "shaft.2", "hours", "20");
        assertThatThrownBy(() -> log("crew", "ilse", "date", "2026-11-24", "task", "shaft.3", "hours", "2"))
                .isInstanceOf(Rejected.class)
                .hasMessage("hours: \"2\" makes 25 hours for Ilse on 24 November 2026 (already there: 13 on Arm"
                        + " mortises and 10"
                        + " on shop and office); at most 24 fit in a day");
        assertThat(log("crew", "ilse", "date", "2026-11-24", "task", "shaft.3", "hours", "1")
                        .entry()
                        .value()
                        .hours()
                        .minutes())
                .isEqualTo(60);
    }

    @Test
    void an_edit_counts_the_day_without_the_entry_as_it_was() throws Exception {
        LoggedHours long1 = log("crew", "ilse", "date", "2026-11-24", "task", "shaft.2", "hours", "20");
        db.write(
                "ilse",
                write -> EditHours.edit(
                        write,
                        Shown.of(long1.entry()),
                        row(
                                HoursEntry.class,
                                "id",
                                "hours.1",
                                "crew",
                                "ilse",
                                "date",
                                "2026-11-24",
                                "task",
                                "shaft.2",
                                "hours",
                                "24"),
                        TODAY));
        assertThat(OakMill.find(db, HoursEntryStore.TABLE, "hours.1")
                        .value()
                        .hours()
                        .minutes())
                .isEqualTo(1440);
    }

    @Test
    void every_fault_is_told_at_once() {
        assertThatThrownBy(() -> log("crew", "nobody", "date", "2026-11-26", "task", "shaft.9", "hours", "2"))
                .hasMessage("date: \"2026-11-26\" is still to come; write 2026-11-25 or an earlier day\n"
                        + "crew: \"nobody\" is nobody of the crew; choose a person of the crew\n"
                        + "task: \"shaft.9\" is no task of this project; choose one of the tasks");
        assertThatThrownBy(() -> log("crew", "ilse", "date", "2026-02-28", "task", "shaft.4", "hours", "2"))
                .hasMessage("date: \"28 February 2026\" is before the project began; write a day from 1 March 2026 on\n"
                        + "task: \"Oil soaks in\" is a wait, which nobody works on; log the hours on a task of work");
        assertThatThrownBy(
                        () -> log("crew", "ilse", "date", "2026-11-24", "task", "shaft.3", "hours", "2", "pieces", "2"))
                .hasMessage("pieces: \"Shrink on the hoops\" is not made in pieces; leave the pieces empty");
    }

    @Test
    void hours_on_a_done_task_and_over_the_stated_hours_are_kept_with_remarks() throws Exception {
        LoggedHours logged = log("crew", "ilse", "date", "2026-11-24", "task", "shaft.1", "hours", "9");
        assertThat(texts(logged.remarks()))
                .containsExactly(
                        "task: \"Square the log\" is done since 19 September 2026; the hours are kept with it",
                        "hours: makes 9 hours for Ilse on 24 November 2026, more than the 8 stated");
        assertThat(task(db, "shaft.1").started()).contains(LocalDate.of(2026, 9, 14));
    }

    @Test
    void a_restored_entry_has_to_fit_into_its_day_again() throws Exception {
        LoggedHours first = log("crew", "ilse", "date", "2026-11-24", "task", "shaft.2", "hours", "20");
        log("crew", "ilse", "date", "2026-11-20", "task", "shaft.2", "hours", "1");
        db.write("ilse", write -> {
            RemoveHours.remove(write, Shown.of(first.entry()));
            return null;
        });
        long removed = db.version();
        log("crew", "ilse", "date", "2026-11-24", "task", "shaft.1", "hours", "5");
        assertThatThrownBy(() -> db.write("ilse", write -> UndoChange.undo(write, removed, TODAY)))
                .hasMessage(
                        "The hours entry “Ilse, 24 November 2026, Square the log” cannot be taken back: “5” makes 25 hours"
                                + " of ilse on 2026-11-24 (hours.1 20, hours.3 5), and a day has 24");
        assertThat(db.read(HoursEntryStore.TABLE::count)).isEqualTo(2);
    }

    @Test
    void a_day_on_which_nothing_was_done_is_kept_with_its_reason() throws Exception {
        var stopped = db.write(
                "ilse",
                write -> SaveStopped.save(
                        write,
                        Optional.empty(),
                        row(
                                Stopped.class,
                                "id",
                                "stopped.1",
                                "date",
                                "2026-11-25",
                                "crew",
                                "ilse",
                                "reason",
                                "weather"),
                        TODAY));
        assertThat(stopped.value().reason()).isEqualTo(Stopped.Reason.WEATHER);
        assertThatThrownBy(() -> db.write(
                        "ilse",
                        write -> SaveStopped.save(
                                write,
                                Optional.empty(),
                                row(
                                        Stopped.class,
                                        "id",
                                        "stopped.2",
                                        "date",
                                        "2026-11-26",
                                        "equipment",
                                        "hoist",
                                        "reason",
                                        "ill"),
                                TODAY)))
                .hasMessage("date: \"26 November 2026\" is after today, 25 November 2026; enter days off ahead under"
                        + " Crew, stopped days once they have been\n"
                        + "equipment: \"hoist\" is no equipment of this project; choose one of the list");
    }

    @Test
    void stated_hours_follow_rule_3_seasons_then_days_off_then_the_ceiling() {
        CrewMember ilse = row(CrewMember.class, "id", "ilse", "name", "Ilse", "mon", "8", "sat", "4");
        var seasons = List.of(
                row(CrewHours.class, "crew", "ilse", "from", "2026-06-01", "to", "2026-08-31", "mon", "10"),
                row(CrewHours.class, "crew", "ilse", "from", "2026-07-01", "to", "2026-07-31", "mon", "6"));
        var off = List.of(
                row(DaysOff.class, "crew", "ilse", "from", "2026-11-02", "to", "2026-11-08"),
                row(DaysOff.class, "crew", "ilse", "from", "2026-11-15", "to", "2026-11-15", "hours", "5"),
                row(DaysOff.class, "from", "2026-11-16", "to", "2026-11-20", "hours", "3"));
        assertThat(on(ilse, "2026-05-25", seasons, off)).isEqualTo("8");
        assertThat(on(ilse, "2026-06-08", seasons, off)).isEqualTo("10");
        assertThat(on(ilse, "2026-07-06", seasons, off)).isEqualTo("6");
        assertThat(on(ilse, "2026-06-06", seasons, off)).isEqualTo("0");
        assertThat(on(ilse, "2026-11-02", seasons, off)).isEqualTo("0");
        assertThat(on(ilse, "2026-11-08", seasons, off)).isEqualTo("0");
        assertThat(on(ilse, "2026-11-15", seasons, off)).isEqualTo("5");
        assertThat(on(ilse, "2026-11-16", seasons, off)).isEqualTo("3");
        assertThat(on(ilse, "2026-11-18", seasons, off)).isEqualTo("0");
    }

    private static String on(CrewMember member, String day, List<CrewHours> seasons, List<DaysOff> off) {
        return StatedHours.on(LocalDate.parse(day), member, seasons, off).text();
    }
}
