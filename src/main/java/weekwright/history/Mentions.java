package weekwright.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Shape;
import weekwright.build.EquipmentNeeds;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;

/** Which rows name which others: by columns that refer, by a task's equipment, by the tasks of a note. */
final class Mentions {
    /**
     * One thing that a row names.
     *
     * @param table of the thing
     */
    record Mention(String table, Id id) {
        boolean same(Mention other) {
            return table.equals(other.table) && id.same(other.id);
        }
    }

    private Mentions() {}

    /** All that a row names. */
    static List<Mention> in(Record row) {
        List<Mention> all = new ArrayList<>(words(row));
        for (Shape.Field field : Shape.of(row.getClass()).fields()) {
            if (field.ref().isPresent()) {
                field.value(row).ifPresent(id -> all.add(new Mention(field.ref().get(), (Id) id)));
            }
        }
        return all;
    }

    private static List<Mention> words(Record row) {
        if (row instanceof Task task) {
            return EquipmentNeeds.of(task).counts().keySet().stream()
                    .map(id -> new Mention("equipment", id))
                    .toList();
        }
        if (row instanceof Note note) {
            return note.tasks().list().stream()
                    .map(id -> new Mention("tasks", new Id(id)))
                    .toList();
        }
        return List.of();
    }

    /** What the first row that names this thing is called; empty where none does. */
    static Optional<String> of(Names names, Mention mention) {
        for (Thing<?> thing : Things.all()) {
            Optional<String> found = in(names, thing, mention);
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static <R extends Record> Optional<String> in(Names names, Thing<R> thing, Mention mention) {
        List<R> rows = new ArrayList<>();
        for (Shape.Field field : thing.shape().fields()) {
            if (field.ref().filter(mention.table()::equals).isPresent()) {
                thing.table().where(names.read(), field.name(), mention.id().value()).stream()
                        .map(Stored::value)
                        .forEach(rows::add);
            }
        }
        boolean inWords =
                thing.table() == (Table<?>) TaskStore.TABLE && mention.table().equals("equipment")
                        || thing.table() == (Table<?>) NoteStore.TABLE
                                && mention.table().equals("tasks");
        if (inWords) {
            thing.table().values(names.read()).stream()
                    .filter(row -> words(row).stream().anyMatch(mention::same))
                    .forEach(rows::add);
        }
        return rows.stream().findFirst().map(row -> thing.called(names, row));
    }

    static boolean stands(Read read, Mention mention) {
        return Things.of(mention.table()).table().find(read, mention.id()).isPresent();
    }
}
