package weekwright.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Rejected;
import weekwright.base.Shape;
import weekwright.base.Words;
import weekwright.build.Equipment;
import weekwright.build.EquipmentStore;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.Link;
import weekwright.build.LinkStore;
import weekwright.build.SettingsStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.db.Write;
import weekwright.files.csv.ProjectData;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;

class UndoChangeTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

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

    private ProjectData project() {
        return db.read(read -> ProjectData.of(read, folder)).orElseThrow();
    }

    private void undo(long version) throws Rejected {
        db.write("ilse", write -> UndoChange.undo(write, version, TODAY));
    }

    private static <R extends Record> R row(Class<R> type, String... texts) {
        Map<String, String> all = new HashMap<>();
        for (int i = 0; i < texts.length; i += 2) {
            all.put(texts[i], texts[i + 1]);
        }
        return Shape.of(type).parse(all, Reading.file(2), new Problems()).orElseThrow();
    }

    private static <R extends Record> void set(Write write, Table<R> table, String id, String column, Object value)
            throws Stale {
        Stored<R> old = table.find(write, new Id(id)).orElseThrow();
        table.update(write, old.row(), old.version(), table.shape().with(old.value(), column, value));
    }

    private static <R extends Record> void remove(Write write, Table<R> table, String id) throws Stale {
        Stored<R> old = table.find(write, new Id(id)).orElseThrow();
        table.delete(write, old.row(), old.version());
    }

    @Test
    void what_one_change_added_changed_and_removed_is_taken_back_together_and_again() throws Exception {
        ProjectData before = project();
        db.write("bram", write -> {
            TaskStore.TABLE.insert(
                    write, row(Task.class, "id", "gate.4", "stage", "gate", "title", "Oil it", "kind", "work"));
            set(write, TaskStore.TABLE, "gate.4", "title", "Oil the gate");
            LinkStore.TABLE.insert(write, row(Link.class, "task", "gate.4", "after", "gate.2"));
            set(write, TaskStore.TABLE, "gate.2", "title", "Hang the gate high");
            remove(write, HoursEntryStore.TABLE, "hours.5");
            return null;
        });
        ProjectData after = project();
        undo(db.version());
        assertThat(project()).isEqualTo(before);
        undo(db.version());
        assertThat(project()).isEqualTo(after);
        undo(db.version());
        assertThat(project()).isEqualTo(before);
    }

    @Test
    void settings_are_taken_back_too() throws Exception {
        ProjectData before = project();
        db.write(
                "bram",
                write -> SettingsStore.update(
                        write,
                        SettingsStore.PROJECT,
                        1,
                        SettingsStore.PROJECT.shape().with(before.settings().project(), "name", "The lock")));
        undo(db.version());
        assertThat(project()).isEqualTo(before);
    }

    @Test
    void what_was_changed_again_since_is_not_taken_back() throws Exception {
        db.write("bram", write -> {
            set(write, TaskStore.TABLE, "gate.2", "title", "Hang the gate high");
            set(write, TaskStore.TABLE, "gate.3", "title", "Forge two straps");
            return null;
        });
        long first = db.version();
        db.write("noor", write -> {
            set(write, TaskStore.TABLE, "gate.2", "title", "Hang it");
            return null;
        });
        ProjectData before = project();
        assertThatThrownBy(() -> undo(first))
                .isInstanceOf(Rejected.class)
                .hasMessage(
                        "The task “Hang the gate high” was changed again since, by Noor, so this cannot be taken back;"
                                + " take that back first");
        assertThat(project()).isEqualTo(before);
        undo(db.version());
        assertThatThrownBy(() -> undo(first)).hasMessageStartingWith("The task “Hang the gate high” was changed again");
    }

    @Test
    void what_others_came_to_need_does_not_go() throws Exception {
        db.write(
                "bram",
                write -> TaskStore.TABLE.insert(
                        write, row(Task.class, "id", "gate.4", "stage", "gate", "title", "Oil it", "kind", "work")));
        long added = db.version();
        db.write(
                "ilse",
                write -> HoursEntryStore.TABLE.insert(
                        write,
                        row(
                                HoursEntry.class,
                                "id",
                                "hours.6",
                                "date",
                                "2026-11-25",
                                "crew",
                                "ilse",
                                "task",
                                "GATE.4",
                                "hours",
                                "1")));
        assertThatThrownBy(() -> undo(added))
                .hasMessage(
                        "The task “Oil it” cannot be taken back: the hours entry “Ilse, 25 November 2026, Oil it” came to"
                                + " need it; take that away first");
    }

    @Test
    void equipment_that_a_task_came_to_need_and_a_task_of_a_note_do_not_go() throws Exception {
        db.write(
                "bram",
                write -> EquipmentStore.TABLE.insert(write, row(Equipment.class, "id", "hoist", "name", "The hoist")));
        long added = db.version();
        db.write("ilse", write -> {
            set(write, TaskStore.TABLE, "gate.2", "equipment", Words.of("hoist:1"));
            return null;
        });
        assertThatThrownBy(() -> undo(added))
                .hasMessage("The equipment “The hoist” cannot be taken back: the task “Hang the gate” came to need it;"
                        + " take that away first");
    }

    @Test
    void what_needs_things_that_are_gone_does_not_come_back() throws Exception {
        db.write("bram", write -> {
            remove(write, HoursEntryStore.TABLE, "hours.5");
            return null;
        });
        long removed = db.version();
        db.write("ilse", write -> {
            for (Stored<HoursEntry> entry : HoursEntryStore.ofTask(write, new Id("weir.2"))) {
                HoursEntryStore.TABLE.delete(write, entry.row(), entry.version());
            }
            for (Stored<Link> link : LinkStore.TABLE.list(write)) {
                if (List.of(link.value().task(), link.value().after()).contains(new Id("weir.2"))) {
                    LinkStore.TABLE.delete(write, link.row(), link.version());
                }
            }
            write.handle().execute("DELETE FROM tells WHERE task = 'weir.2'");
            remove(write, TaskStore.TABLE, "weir.2");
            return null;
        });
        assertThatThrownBy(() -> undo(removed))
                .hasMessage(
                        "The hours entry “Ilse, 10 November 2026, weir.2” cannot be taken back: it needs the task “weir.2”,"
                                + " which is not there any more; bring that back first");
    }

    @Test
    void a_ring_of_links_does_not_come_back() throws Exception {
        db.write("bram", write -> {
            Stored<Link> link = LinkStore.TABLE.list(write).get(0);
            LinkStore.TABLE.delete(write, link.row(), link.version());
            return null;
        });
        long removed = db.version();
        db.write("bram", write -> LinkStore.TABLE.insert(write, row(Link.class, "task", "weir.1", "after", "weir.2")));
        assertThatThrownBy(() -> undo(removed))
                .isInstanceOf(Rejected.class)
                .hasMessage(
                        "The link “Set the sill stones, after Dig the footing” cannot be taken back: “weir.1” closes a"
                                + " ring in which tasks wait for each other: weir.1 → weir.2 → weir.1");
    }

    @Test
    void a_fault_that_the_project_had_before_is_in_nobodys_way() throws Exception {
        db.write("bram", write -> {
            LinkStore.TABLE.insert(write, row(Link.class, "task", "weir.1", "after", "weir.2"));
            return null;
        });
        db.write("bram", write -> {
            set(write, TaskStore.TABLE, "gate.3", "title", "Forge two straps");
            return null;
        });
        undo(db.version());
        assertThat(project().rows(TaskStore.TABLE).list())
                .extracting(Task::title)
                .contains("Forge the straps");
    }

    @Test
    void an_import_and_a_change_that_never_was_are_not_taken_back() {
        db.write(
                "import",
                write -> TaskStore.TABLE.insert(
                        write, row(Task.class, "id", "gate.4", "stage", "gate", "title", "Oil it", "kind", "work")));
        assertThatThrownBy(() -> undo(db.version()))
                .hasMessage(
                        "An import is not taken back here; the project as it stood before lies in the folder backups,"
                                + " to be put back by hand");
        assertThatThrownBy(() -> undo(4711))
                .hasMessage("There is no change 4711; look in the history for the one that is meant");
    }

    @Test
    void every_table_that_leaves_change_records_is_a_thing_in_words() {
        List<String> tables =
                new ArrayList<>(ProjectData.tables().stream().map(Table::name).toList());
        tables.addAll(
                List.of("project", "publishing", "weather", "orders", "money", "emergency", "model", "build_log"));
        // kept with its episode and in no file
        tables.add("rolls");
        assertThat(Things.all().stream().map(thing -> thing.table().name()))
                .containsExactlyInAnyOrderElementsOf(tables);
    }
}
