package weekwright.web.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.base.Words;
import weekwright.build.DayWordsStore;
import weekwright.build.EquipmentStore;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.LinkStore;
import weekwright.build.Said;
import weekwright.build.StoppedStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.build.WeekLineStore;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.db.Write;
import weekwright.episodes.ClipStore;
import weekwright.episodes.ShotStore;
import weekwright.episodes.TellStore;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.render.Formats;

/**
 * A task with all that hangs on it, as it is removed. What is only planned goes with it. What happened stays: a task with
 * hours, with money in the books, or with material ordered or in hand is not removed, it is dropped.
 */
final class TaskRemoval {
    private TaskRemoval() {}

    /**
     * What removing a task means.
     *
     * @param goes what goes with it, in words
     * @param stays what stays but no longer names it
     * @param held what happened on it, so that it cannot be removed; empty where it can
     */
    record Going(List<String> goes, List<String> stays, List<String> held) {}

    static Going of(Read read, Task task) {
        String id = task.id().value();
        List<String> goes = new ArrayList<>();
        some(
                goes,
                LinkStore.before(read, task.id()).size()
                        + LinkStore.after(read, task.id()).size(),
                "link");
        some(goes, TellStore.ofTask(read, task.id()).size(), "place in an episode", "places in episodes");
        some(
                goes,
                ShotStore.ofTask(read, task.id()).stream()
                        .filter(s -> s.value().captured().isEmpty())
                        .count(),
                "shot");
        some(goes, MaterialStore.ofTask(read, task.id()).size(), "material line");
        some(goes, WeekLineStore.TABLE.where(read, "task", id).size(), "line on week sheets", "lines on week sheets");
        List<String> stays = new ArrayList<>();
        some(stays, ClipStore.TABLE.where(read, "task", id).size(), "clip");
        some(
                stays,
                ShotStore.ofTask(read, task.id()).stream()
                        .filter(s -> s.value().captured().isPresent())
                        .count(),
                "shot taken",
                "shots taken");
        some(stays, StoppedStore.TABLE.where(read, "task", id).size(), "stopped day");
        some(stays, notes(read, task.id()).size(), "build note");
        EquipmentStore.TABLE.where(read, "ready_after", id).stream()
                .map(one -> one.value().name() + ", which was ready only after it")
                .forEach(stays::add);
        TaskStore.TABLE.where(read, "redo_of", id).stream()
                .map(one -> one.value().title() + ", which does it again")
                .forEach(stays::add);
        return new Going(goes, stays, held(read, task));
    }

    private static List<String> held(Read read, Task task) {
        List<String> held = new ArrayList<>();
        int minutes = HoursEntryStore.ofTask(read, task.id()).stream()
                .map(Stored::value)
                .mapToInt((HoursEntry entry) -> entry.hours().minutes() * entry.peopleOrDefault())
                .sum();
        if (minutes > 0) {
            held.add(Formats.hoursLong(minutes) + " logged");
        }
        some(
                held,
                LedgerEntryStore.TABLE.where(read, "task", task.id().value()).size(),
                "entry in the books",
                "entries in the books");
        MaterialStore.ofTask(read, task.id()).stream()
                .map(Stored::value)
                .filter(line -> line.ordered().isPresent() || line.received().isPresent())
                .map(Material::item)
                .map(item -> item + " ordered or in hand")
                .forEach(held::add);
        return held;
    }

    private static void some(List<String> list, long count, String one) {
        some(list, count, one, one + "s");
    }

    private static void some(List<String> list, long count, String one, String several) {
        if (count > 0) {
            list.add(Said.count(count, one, several));
        }
    }

    /** @throws Rejected where something happened on it */
    static void remove(Write write, Stored<Task> task, long version) throws Rejected, Stale {
        Id id = task.value().id();
        List<String> held = held(write, task.value());
        if (!held.isEmpty()) {
            throw new Rejected(Problem.fault(
                    "",
                    task.value().title(),
                    "has " + Said.list(held),
                    "drop it instead, so that these stay on record"));
        }
        deleteAll(write, LinkStore.TABLE, LinkStore.before(write, id));
        deleteAll(write, LinkStore.TABLE, LinkStore.after(write, id));
        deleteAll(write, TellStore.TABLE, TellStore.ofTask(write, id));
        deleteAll(write, DayWordsStore.TABLE, DayWordsStore.TABLE.where(write, "task", id.value()));
        deleteAll(
                write,
                ShotStore.TABLE,
                ShotStore.ofTask(write, id).stream()
                        .filter(s -> s.value().captured().isEmpty())
                        .toList());
        clear(write, ShotStore.TABLE, "task", id);
        deleteAll(write, MaterialStore.TABLE, MaterialStore.ofTask(write, id));
        deleteAll(write, WeekLineStore.TABLE, WeekLineStore.TABLE.where(write, "task", id.value()));
        clear(write, ClipStore.TABLE, "task", id);
        clear(write, StoppedStore.TABLE, "task", id);
        clear(write, EquipmentStore.TABLE, "ready_after", id);
        clear(write, TaskStore.TABLE, "redo_of", id);
        for (Stored<Note> note : notes(write, id)) {
            List<String> left = note.value().tasks().list().stream()
                    .filter(word -> !new Id(word).same(id))
                    .toList();
            NoteStore.TABLE.update(
                    write,
                    note.row(),
                    note.version(),
                    NoteStore.TABLE.shape().with(note.value(), "tasks", new Words(left)));
        }
        TaskStore.TABLE.delete(write, task.row(), version);
    }

    private static List<Stored<Note>> notes(Read read, Id task) {
        return NoteStore.TABLE.list(read).stream()
                .filter(note -> note.value().tasks().list().stream().anyMatch(word -> new Id(word).same(task)))
                .toList();
    }

    private static <R extends Record> void deleteAll(Write write, Table<R> table, List<Stored<R>> rows) throws Stale {
        for (Stored<R> row : rows) {
            table.delete(write, row.row(), row.version());
        }
    }

    private static <R extends Record> void clear(Write write, Table<R> table, String column, Id id) throws Stale {
        for (Stored<R> row : table.where(write, column, id.value())) {
            table.update(write, row.row(), row.version(), table.shape().with(row.value(), column, Optional.empty()));
        }
    }
}
