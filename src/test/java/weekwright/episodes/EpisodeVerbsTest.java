package weekwright.episodes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static weekwright.testkit.OakMill.TODAY;
import static weekwright.testkit.OakMill.addEpisode;
import static weekwright.testkit.OakMill.addShot;
import static weekwright.testkit.OakMill.find;
import static weekwright.testkit.OakMill.shown;
import static weekwright.testkit.OakMill.texts;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Quantity;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Db;
import weekwright.db.FolderRefused;
import weekwright.db.Stored;
import weekwright.testkit.OakMill;

class EpisodeVerbsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 20);

    @TempDir
    Path folder;

    private Db db;

    @BeforeEach
    void open() throws FolderRefused {
        db = OakMill.create(folder);
        addEpisode(db, "id", "ep47", "number", "47", "slot", "2026-11-27", "title", "Sixteen sides");
    }

    @AfterEach
    void close() {
        db.close();
    }

    private MarkEpisode.Marked mark(Step step, LocalDate day) throws Exception {
        return db.write(
                "tomas",
                write -> MarkEpisode.mark(
                        write, shown(db, EpisodeStore.TABLE, "ep47"), step, Optional.ofNullable(day), TODAY));
    }

    private Episode episode() {
        return find(db, EpisodeStore.TABLE, "ep47").value();
    }

    @Test
    void steps_are_marked_in_their_order_and_some_may_be_passed_over() throws Exception {
        mark(Step.FOOTAGE_COMPLETE, DAY);
        mark(Step.SOUND, DAY.plusDays(2));
        mark(Step.CUT, DAY.plusDays(3));
        mark(Step.PUBLISHED, DAY.plusDays(5));
        assertThat(episode().published()).contains(TODAY);
        assertThat(episode().roughCut()).isEmpty();
        mark(Step.PUBLISHED, null);
        assertThat(episode().published()).isEmpty();
    }

    @Test
    void ready_needs_the_footage_and_published_needs_ready() {
        assertThatThrownBy(() -> mark(Step.CUT, DAY))
                .hasMessage("\"Sixteen sides\" cannot be ready before its footage is complete; mark that first");
        assertThatThrownBy(() -> mark(Step.PUBLISHED, DAY))
                .hasMessage("\"Sixteen sides\" cannot be published before it is ready; mark that first");
    }

    @Test
    void the_days_of_the_steps_stand_in_their_order_and_not_in_the_future() throws Exception {
        mark(Step.FOOTAGE_COMPLETE, DAY);
        mark(Step.PICTURE_LOCK, DAY.plusDays(2));
        assertThatThrownBy(() -> mark(Step.CUT, DAY.plusDays(1)))
                .hasMessage(
                        "day: \"21 November 2026\" is before picture lock on 22 November 2026; the steps follow each"
                                + " other");
        assertThatThrownBy(() -> mark(Step.ROUGH_CUT, DAY.plusDays(3)))
                .hasMessage("day: \"23 November 2026\" is after picture lock on 22 November 2026; the steps follow each"
                        + " other");
        assertThatThrownBy(() -> mark(Step.SOUND, TODAY.plusDays(1)))
                .hasMessage("day: \"26 November 2026\" is after today, 25 November 2026; mark it once it is so");
    }

    @Test
    void a_mark_that_a_later_one_needs_is_not_taken_away() throws Exception {
        mark(Step.FOOTAGE_COMPLETE, DAY);
        mark(Step.CUT, DAY);
        assertThatThrownBy(() -> mark(Step.FOOTAGE_COMPLETE, null))
                .hasMessage("\"Sixteen sides\" is ready, which needs footage complete; take that mark away first");
    }

    @Test
    void complete_footage_says_which_must_have_shots_are_not_captured() throws Exception {
        addShot(db, "id", "s1", "episode", "ep47", "what", "Chips fly", "must", "yes");
        addShot(db, "id", "s2", "episode", "ep47", "what", "The last facet", "must", "yes", "captured", "2026-11-18");
        addShot(db, "id", "s3", "episode", "ep47", "what", "Lathe by the pit", "must", "yes", "called_off", "yes");
        addShot(db, "id", "s4", "episode", "ep47", "what", "Rain");
        assertThat(texts(mark(Step.FOOTAGE_COMPLETE, DAY).remarks()))
                .containsExactly("\"Chips fly\" is a must-have shot that is not captured");
    }

    @Test
    void a_shot_is_captured_taken_back_and_called_off() throws Exception {
        addShot(db, "id", "s1", "episode", "ep47", "what", "Chips fly", "must", "yes");
        db.write(
                "tomas",
                write -> CaptureShot.capture(write, shown(db, ShotStore.TABLE, "s1"), TODAY, "A003 C012", TODAY));
        assertThat(find(db, ShotStore.TABLE, "s1").value().clip()).isEqualTo("A003 C012");
        assertThat(find(db, ShotStore.TABLE, "s1").value().isMissed()).isFalse();
        db.write("tomas", write -> CaptureShot.takeBack(write, shown(db, ShotStore.TABLE, "s1")));
        assertThat(find(db, ShotStore.TABLE, "s1").value().isMissed()).isTrue();
        db.write("tomas", write -> CallOffShot.callOff(write, shown(db, ShotStore.TABLE, "s1")));
        assertThat(find(db, ShotStore.TABLE, "s1").value().calledOff()).isTrue();
        assertThatThrownBy(() -> db.write(
                        "tomas",
                        write -> CaptureShot.capture(
                                write, shown(db, ShotStore.TABLE, "s1"), TODAY.plusDays(1), "", TODAY)))
                .hasMessage("day: \"26 November 2026\" is after today, 25 November 2026; mark it once it is captured");
    }

    @Test
    void rule_104_a_bank_episode_tells_finished_tasks_by_what_was_told_plus_its_minutes() throws Exception {
        story("shaft.1", "20");
        OakMill.addHours(
                db,
                "id",
                "h1",
                "date",
                "2026-09-15",
                "crew",
                "ilse",
                "task",
                "shaft.1",
                "hours",
                "15",
                "filmed",
                "yes");
        OakMill.addHours(db, "id", "h2", "date", "2026-09-16", "crew", "ilse", "task", "shaft.1", "hours", "5");
        addEpisode(db, "id", "ep40", "number", "40", "slot", "2026-10-02", "title", "First chips");
        db.write(
                "tomas",
                write -> TellStore.TABLE.insert(
                        write, OakMill.row(Tell.class, "episode", "ep40", "task", "shaft.1", "share", "0.25")));
        assertThatThrownBy(() -> publish(LocalDate.of(2026, 11, 20), "12"))
                .hasMessage("minutes: \"12\" is more than the story bank holds of finished tasks, 10 minutes; write"
                        + " fewer, or list the episode with what it tells");
        assertThatThrownBy(() -> publish(LocalDate.of(2026, 11, 19), "5"))
                .hasMessage("slot: \"19 November 2026\" is no day on which episodes come out; choose a slot");
        assertThatThrownBy(() -> publish(LocalDate.of(2026, 10, 2), "5"))
                .hasMessage("slot: \"2 October 2026\" is the day of \"First chips\" already; choose another");
        Episode kept = publish(LocalDate.of(2026, 11, 20), "8").value();
        assertThat(kept.kindOrDefault()).isEqualTo(Episode.Kind.BUILD);
        assertThat(kept.number()).contains(48);
        assertThat(kept.published()).contains(LocalDate.of(2026, 11, 20));
        assertThat(db.read(TellStore.TABLE::values).get(1))
                .isEqualTo(OakMill.row(Tell.class, "episode", kept.id().value(), "task", "shaft.1", "share", "0.65"));
    }

    private Stored<Episode> publish(LocalDate slot, String minutes) throws Exception {
        return db.write(
                "tomas",
                write -> PublishFromBank.publish(
                        write, slot, "From the bank", new Quantity(new BigDecimal(minutes)), TODAY));
    }

    private void story(String task, String minutes) throws Exception {
        var table = TaskStore.TABLE;
        var stored = find(db, table, task);
        var told =
                table.shape().with(stored.value(), "story_minutes", Optional.of(new Quantity(new BigDecimal(minutes))));
        var filmed = table.shape().with(told, "camera", Optional.of(Task.Camera.FIXED));
        db.write("tomas", write -> table.update(write, stored.row(), stored.version(), filmed));
    }
}
