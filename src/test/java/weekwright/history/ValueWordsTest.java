package weekwright.history;

import static org.assertj.core.api.Assertions.assertThat;

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
import weekwright.base.Words;
import weekwright.build.Equipment;
import weekwright.build.EquipmentStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.History;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.SupporterMonthStore;
import weekwright.render.Formats;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;

class ValueWordsTest {
    @TempDir
    Path folder;

    private Db db;

    @BeforeEach
    void open() throws Exception {
        db = new Folder(folder).create(ServerFixture.CLOCK);
        SmallProject.fill(db);
    }

    @AfterEach
    void close() {
        db.close();
    }

    private <R extends Record> List<String> told(Table<R> table, long row) {
        return db.read(read -> {
            History.Change last = History.last(read, table.name(), row).orElseThrow();
            return new ValueWords(new Names(read), new Formats("EUR", LocalDate.of(2026, 11, 25)))
                    .fields(last).stream()
                            .map(field -> field.label() + ": " + field.before() + " -> " + field.after())
                            .toList();
        });
    }

    @Test
    void only_the_fields_that_differ_are_told_in_the_words_of_the_forms() throws Exception {
        Stored<Task> task =
                db.read(read -> TaskStore.TABLE.find(read, new Id("gate.1"))).orElseThrow();
        var shape = TaskStore.TABLE.shape();
        var changed = shape.with(
                shape.with(
                        shape.with(
                                shape.with(task.value(), "left", Optional.of(new Hours(270))),
                                "done",
                                Optional.of(LocalDate.of(2026, 11, 24))),
                        "redo_of",
                        Optional.of(new Id("weir.1"))),
                "outdoors",
                true);
        db.write("ilse", write -> TaskStore.TABLE.update(write, task.row(), task.version(), changed));
        assertThat(told(TaskStore.TABLE, task.row()))
                .containsExactly(
                        "Outdoors:  -> yes",
                        "It is done again of:  -> Dig the footing",
                        "Hours left, as seen:  -> 4½\u00a0h",
                        "Done on:  -> 24\u00a0November");
    }

    @Test
    void what_stands_in_a_list_of_words_is_told_by_its_name() throws Exception {
        db.write("ilse", write -> EquipmentStore.TABLE.insert(write, trestles()));
        Stored<Task> task =
                db.read(read -> TaskStore.TABLE.find(read, new Id("gate.1"))).orElseThrow();
        var changed = TaskStore.TABLE.shape().with(task.value(), "equipment", Words.of("trestle:2", "lost"));
        db.write("ilse", write -> TaskStore.TABLE.update(write, task.row(), task.version(), changed));
        assertThat(told(TaskStore.TABLE, task.row())).containsExactly("Equipment that it holds:  -> Trestles: 2, lost");
    }

    @Test
    void money_months_and_names_are_told_as_everywhere() {
        assertThat(told(SupporterMonthStore.TABLE, 1))
                .containsExactly(
                        "Month:  -> September\u00a02026",
                        "Pledge level:  -> Plank",
                        "At the start:  -> 60",
                        "Joined:  -> 8",
                        "Left:  -> 2");
        assertThat(told(LedgerEntryStore.TABLE, 1)).anyMatch(line -> line.matches("Amount:  -> .?€[0-9,]+\\.[0-9]{2}"));
    }

    @Test
    void every_field_of_every_row_of_the_small_project_can_be_told() {
        for (Thing<?> thing : Things.all()) {
            thing.table();
            List<History.Change> changes = db.read(read -> History.newest(read, 10_000)).stream()
                    .filter(change -> change.thing().equals(thing.table().name()))
                    .toList();
            changes.forEach(change -> told(thing.table(), change.row()));
        }
        assertThat(told(EquipmentStore.TABLE, add())).contains("How many:  -> 3");
    }

    private long add() {
        return db.write("ilse", write -> EquipmentStore.TABLE.insert(write, trestles()))
                .row();
    }

    private static Equipment trestles() {
        return new Equipment(
                new Id("trestle"),
                "Trestles",
                Optional.of(3),
                Words.NONE,
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
