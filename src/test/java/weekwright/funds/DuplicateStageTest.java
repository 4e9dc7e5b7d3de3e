package weekwright.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weekwright.build.HoursEntryStore;
import weekwright.build.LinkRules;
import weekwright.build.LinkStore;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Db;
import weekwright.db.Stored;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;

class DuplicateStageTest {
    @Test
    void every_stage_of_the_sample_is_made_once_more_right_after_it_without_what_happened() throws Exception {
        try (ServerFixture server = ServerFixture.sample()) {
            Db db = server.db();
            int hours = db.read(HoursEntryStore.TABLE::count);
            for (Stored<Stage> shown : db.read(StageStore::inOrder)) {
                Stored<Stage> stage = db.read(read -> StageStore.TABLE.find(read, shown.row()))
                        .orElseThrow();
                Stored<Stage> copy = db.write(
                        "test",
                        write -> DuplicateStage.duplicate(
                                write, stage, stage.value().name() + " II", OakMill.TODAY));
                List<Task> first = tasks(db, stage).stream()
                        .filter(task -> task.dropped().isEmpty())
                        .toList();
                List<Task> second = tasks(db, copy);
                assertThat(second.stream().map(Task::title))
                        .containsExactlyElementsOf(
                                first.stream().map(Task::title).toList());
                assertThat(second)
                        .allMatch(task -> task.isOpen()
                                && task.started().isEmpty()
                                && task.left().isEmpty()
                                && task.added().equals(Optional.of(OakMill.TODAY)));
                List<String> names = db.read(StageStore::inOrder).stream()
                        .map(one -> one.value().name())
                        .toList();
                assertThat(names.indexOf(copy.value().name()))
                        .isEqualTo(names.indexOf(stage.value().name()) + 1);
                for (Task task : second) {
                    List<Stored<Material>> lines = db.read(read -> MaterialStore.ofTask(read, task.id()));
                    assertThat(lines)
                            .allMatch(line -> line.value().ordered().isEmpty()
                                    && line.value().received().isEmpty()
                                    && line.value().stock().isEmpty());
                }
            }
            assertThat(LinkRules.ring(db.read(LinkStore.TABLE::values))).isEmpty();
            assertThat(db.read(HoursEntryStore.TABLE::count)).isEqualTo(hours);
        }
    }

    private static List<Task> tasks(Db db, Stored<Stage> stage) {
        return db.read(read -> TaskStore.ofStage(read, stage.value().id())).stream()
                .map(Stored::value)
                .toList();
    }
}
