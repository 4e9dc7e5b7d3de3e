package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import weekwright.base.Rejected;
import weekwright.build.HoursEntryStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Db;
import weekwright.db.Stored;
import weekwright.funds.LedgerEntryStore;
import weekwright.notes.NoteStore;
import weekwright.testkit.ServerFixture;

class TaskRemovalTest {
    @Test
    void every_task_of_the_sample_is_removed_whole_or_held_by_what_happened() throws Exception {
        try (ServerFixture server = ServerFixture.sample()) {
            Db db = server.db();
            int hours = db.read(HoursEntryStore.TABLE::count);
            int ledger = db.read(LedgerEntryStore.TABLE::count);
            int removed = 0;
            List<Stored<Task>> tasks = db.read(TaskStore.TABLE::list);
            for (Stored<Task> shown : tasks) {
                // removing one may clear a column of another
                Stored<Task> task =
                        db.read(read -> TaskStore.TABLE.find(read, shown.row())).orElseThrow();
                List<String> held =
                        db.read(read -> TaskRemoval.of(read, task.value())).held();
                if (held.isEmpty()) {
                    db.write("test", write -> {
                        TaskRemoval.remove(write, task, task.version());
                        return null;
                    });
                    removed++;
                } else {
                    assertThatThrownBy(() -> db.write("test", write -> {
                                TaskRemoval.remove(write, task, task.version());
                                return null;
                            }))
                            .isInstanceOf(Rejected.class)
                            .hasMessageStartingWith("\"");
                }
            }
            assertThat(removed).isBetween(10, tasks.size() - 10);
            assertThat(db.read(TaskStore.TABLE::count)).isEqualTo(tasks.size() - removed);
            assertThat(db.read(HoursEntryStore.TABLE::count)).isEqualTo(hours);
            assertThat(db.read(LedgerEntryStore.TABLE::count)).isEqualTo(ledger);
            Set<String> left = new HashSet<>();
            db.read(TaskStore.TABLE::ids).forEach(id -> left.add(id.value()));
            db.read(NoteStore.TABLE::values)
                    .forEach(note -> assertThat(left).containsAll(note.tasks().list()));
        }
    }
}
