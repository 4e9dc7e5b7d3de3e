package weekwright.db;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Shape;
import weekwright.build.Stage;
import weekwright.build.Task;
import weekwright.testkit.ServerFixture;

class KeptRowsTest {
    private static final Table<Stage> STAGES = new Table<>("stages", Stage.class);

    @TempDir
    Path folder;

    private Db db;

    @BeforeEach
    void open() throws FolderRefused {
        db = new Folder(folder).create(ServerFixture.CLOCK);
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

    private void same() {
        List<Stored<Stage>> kept = db.read(STAGES::list);
        List<Stored<Stage>> fresh = db.read(STAGES::all);
        assertThat(kept).isEqualTo(fresh);
        List<Stage> values = db.read(STAGES::values);
        assertThat(values).isEqualTo(fresh.stream().map(Stored::value).toList());
    }

    @Test
    void what_is_kept_is_what_a_view_sees_after_any_changes() throws Exception {
        SplittableRandom random = new SplittableRandom(7);
        for (int round = 0; round < 300; round++) {
            int number = round;
            db.write("ilse", write -> {
                for (int i = random.nextInt(3); i >= 0; i--) {
                    List<Stored<Stage>> all = STAGES.list(write);
                    int act = random.nextInt(all.isEmpty() ? 1 : 4);
                    Stored<Stage> one = all.isEmpty() ? null : all.get(random.nextInt(all.size()));
                    switch (act) {
                        case 1 ->
                            STAGES.update(
                                    write,
                                    one.row(),
                                    one.version(),
                                    stage(one.value().id().value(), "n" + number));
                        case 2 -> STAGES.delete(write, one.row(), one.version());
                        default -> STAGES.insert(write, stage("s" + number + "-" + i, "new"));
                    }
                }
                return null;
            });
            if (random.nextInt(3) > 0) {
                same();
            }
        }
        same();
    }

    @Test
    void many_changes_at_once_are_seen_too() {
        same();
        db.write("ilse", write -> {
            STAGES.insertAll(
                    write,
                    IntStream.range(0, 600).mapToObj(i -> stage("s" + i, "new")).toList());
            return null;
        });
        same();
        db.write("ilse", write -> {
            STAGES.deleteAll(write);
            return null;
        });
        same();
    }

    @Test
    void what_was_not_committed_is_not_kept() {
        db.write("ilse", write -> STAGES.insert(write, stage("pit", "Wheel pit")));
        same();
        assertThatThrownBy(() -> db.write("ilse", write -> {
                    STAGES.insert(write, stage("roof", "Roof"));
                    assertThat(STAGES.values(write)).hasSize(2);
                    throw new IllegalStateException("no");
                }))
                .hasMessage("no");
        same();
        db.write("ilse", write -> STAGES.insert(write, stage("floor", "Floor")));
        same();
    }

    @Test
    void a_view_that_began_before_a_change_goes_on_seeing_what_it_saw() {
        db.write("ilse", write -> STAGES.insert(write, stage("pit", "Wheel pit")));
        db.read(view -> {
            assertThat(STAGES.values(view)).hasSize(1);
            db.write("ilse", write -> STAGES.insert(write, stage("roof", "Roof")));
            same();
            assertThat(STAGES.values(view)).hasSize(1);
            return null;
        });
        same();
    }

    @Test
    void the_rows_of_an_id_are_the_same_from_the_database_and_from_what_is_kept() {
        Table<Task> tasks = new Table<>("tasks", Task.class);
        db.write("ilse", write -> {
            STAGES.insert(write, stage("Pit", "Wheel pit"));
            STAGES.insert(write, stage("roof", "Roof"));
            for (int i = 0; i < 30; i++) {
                Map<String, String> texts =
                        Map.of("id", "t" + i, "stage", i % 3 == 0 ? "pit" : "PIT", "title", "T", "kind", "work");
                tasks.insert(
                        write,
                        tasks.shape()
                                .parse(texts, Reading.file(2), new Problems())
                                .orElseThrow());
            }
            return null;
        });
        db.read(read -> {
            for (String stage : List.of("pit", "PIT", "roof", "none")) {
                List<Stored<Task>> first = db.read(fresh -> tasks.where(fresh, "stage", stage));
                for (int i = 0; i < 12; i++) {
                    assertThat(tasks.where(read, "stage", stage)).isEqualTo(first);
                }
                assertThat(first).hasSize(stage.equalsIgnoreCase("pit") ? 30 : 0);
            }
            assertThat(tasks.find(read, new Id("T7")).orElseThrow().value().title())
                    .isEqualTo("T");
            return null;
        });
    }

    @Test
    void rows_that_have_not_changed_are_not_made_again() {
        db.write("ilse", write -> STAGES.insert(write, stage("pit", "Wheel pit")));
        List<Stored<Stage>> first = db.read(STAGES::list);
        db.write("ilse", write -> STAGES.insert(write, stage("roof", "Roof")));
        List<Stored<Stage>> second = db.read(STAGES::list);
        assertThat(second.get(0)).isSameAs(first.get(0));
        List<Stored<Stage>> third = db.read(STAGES::list);
        assertThat(third).isSameAs(second);
    }
}
