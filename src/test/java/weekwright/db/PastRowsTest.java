package weekwright.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Shape;
import weekwright.build.Stage;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SettableClock;

/** Rows as they stood, read from the change log; each step of the clock is an hour. */
class PastRowsTest {
    private static final Table<Stage> STAGES = new Table<>("stages", Stage.class);

    @TempDir
    Path folder;

    private final SettableClock clock = new SettableClock(ServerFixture.CLOCK);
    private Db db;

    @BeforeEach
    void open() throws FolderRefused {
        db = new Folder(folder).create(clock);
    }

    @AfterEach
    void close() {
        db.close();
    }

    private static Stage stage(String id, String name) {
        return Shape.of(Stage.class)
                .parse(Map.of("id", id, "name", name), Reading.file(2), new Problems())
                .orElseThrow();
    }

    /** Writes and says when; the clock then goes on by an hour. */
    private <X extends Exception> Instant at(Db.Work<?, X> work) throws X {
        Instant now = clock.instant();
        db.write("ilse", work);
        clock.step(Duration.ofHours(1));
        return now;
    }

    private List<String> stood(Instant then) {
        return db.read(read -> STAGES.past(read).apply(then).stream()
                .map(stage -> stage.id() + " " + stage.name())
                .toList());
    }

    @Test
    void a_changed_row_stands_as_before_until_the_instant_of_its_change() throws Exception {
        at(write -> STAGES.insert(write, stage("pit", "Pit")));
        Instant first = at(write -> update(write, "Wheel pit"));
        Instant second = at(write -> update(write, "Pit of the wheel"));
        assertThat(stood(first.minusSeconds(1))).containsExactly("pit Pit");
        assertThat(stood(first)).containsExactly("pit Wheel pit");
        assertThat(stood(second.minusSeconds(1))).containsExactly("pit Wheel pit");
        assertThat(stood(second)).containsExactly("pit Pit of the wheel");
    }

    private static Object update(Write write, String name) throws Stale {
        Stored<Stage> now = STAGES.list(write).get(0);
        return STAGES.update(write, now.row(), now.version(), stage("pit", name));
    }

    @Test
    void before_its_first_record_a_row_that_is_still_there_stands_as_first_recorded() throws Exception {
        Instant first = at(write -> STAGES.insert(write, stage("pit", "Pit")));
        at(write -> update(write, "Wheel pit"));
        assertThat(stood(first.minus(Duration.ofDays(30)))).containsExactly("pit Pit");
    }

    @Test
    void a_removed_row_stands_until_it_was_removed_and_one_that_came_and_went_later_never_stood() throws Exception {
        Instant first = at(write -> STAGES.insert(write, stage("pit", "Pit")));
        Instant gone = at(write -> {
            STAGES.delete(
                    write,
                    STAGES.list(write).get(0).row(),
                    STAGES.list(write).get(0).version());
            return null;
        });
        assertThat(stood(gone.minusSeconds(1))).containsExactly("pit Pit");
        assertThat(stood(gone)).isEmpty();
        assertThat(stood(first.minusSeconds(1))).isEmpty();
    }

    @Test
    void rows_keep_their_stored_order_and_one_read_answers_for_many_instants() throws Exception {
        at(write -> STAGES.insert(write, stage("pit", "Pit")));
        Instant removed = at(write -> {
            STAGES.insert(write, stage("roof", "Roof"));
            return null;
        });
        Instant later = at(write -> update(write, "Wheel pit"));
        List<List<String>> both = db.read(read -> {
            Function<Instant, List<Stage>> past = STAGES.past(read);
            return List.of(names(past.apply(removed)), names(past.apply(later)));
        });
        assertThat(both).containsExactly(List.of("Pit", "Roof"), List.of("Wheel pit", "Roof"));
    }

    private static List<String> names(List<Stage> stages) {
        return stages.stream().map(Stage::name).toList();
    }
}
