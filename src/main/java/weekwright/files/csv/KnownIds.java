package weekwright.files.csv;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import weekwright.base.Id;
import weekwright.base.Nearest;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rows;
import weekwright.base.Shape;
import weekwright.build.EquipmentNeeds;
import weekwright.build.Task;
import weekwright.db.Table;
import weekwright.notes.Note;

/** The ids of every table that was read, and whether what refers to them is known. Ids are written the same way everywhere. */
final class KnownIds {
    /** Looking for the nearest of thousands of ids takes its time; nobody reads further offers than these. */
    private static final int MOST_OFFERED = 200;

    private record Ids(String file, Set<String> written, boolean whole) {}

    private final Map<String, Ids> byTable = new HashMap<>();
    private final Problems problems;
    private int unknown;

    KnownIds(Problems problems) {
        this.problems = problems;
    }

    /**
     * @param file where they stand, as problems call it
     * @param whole whether all could be read; if not, an unknown id is no fault
     */
    void add(String table, String file, List<String> ids, boolean whole) {
        byTable.put(table, new Ids(file, new LinkedHashSet<>(ids), whole));
    }

    /** No id twice, regardless of case. */
    <R extends Record> void twice(Table<R> table, Rows<R> rows) {
        if (table.shape().field("id").isEmpty()) {
            return;
        }
        Shape.Field field = table.shape().field("id").orElseThrow();
        Map<String, Integer> first = new LinkedHashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            String id = ((Id) field.value(rows.get(i)).orElseThrow()).value();
            Integer earlier = first.putIfAbsent(id.toLowerCase(Locale.ROOT), i);
            if (earlier != null) {
                var place = rows.places().get(earlier);
                String where = place.file().equals(rows.places().get(i).file()) ? "line " + place.line() : place.file();
                rows.fault(problems, i, "id", id, "is the id of " + where + " already", "choose another one");
            }
        }
    }

    /** Every id in a column that refers to another table stands there. */
    <R extends Record> void references(Table<R> table, Rows<R> rows) {
        for (Shape.Field field : table.shape().fields()) {
            if (field.ref().isEmpty()) {
                continue;
            }
            for (int i = 0; i < rows.size(); i++) {
                int index = i;
                field.value(rows.get(i))
                        .ifPresent(id ->
                                known(rows, index, field.name(), field.ref().get(), ((Id) id).value()));
            }
        }
    }

    void equipment(Rows<Task> tasks) {
        for (int i = 0; i < tasks.size(); i++) {
            for (Id id : EquipmentNeeds.of(tasks.get(i)).counts().keySet()) {
                known(tasks, i, "equipment", "equipment", id.value());
            }
        }
    }

    void tasksOf(Rows<Note> notes) {
        for (int i = 0; i < notes.size(); i++) {
            for (String id : notes.get(i).tasks().list()) {
                known(notes, i, "tasks", "tasks", id);
            }
        }
    }

    private void known(Rows<?> rows, int index, String column, String table, String id) {
        Ids ids = byTable.get(table);
        if (ids.whole() && !ids.written().contains(id)) {
            String otherwise = ids.written().isEmpty()
                    ? "write it there first"
                    : "write one that stands there, or write it there first";
            String remedy = ++unknown > MOST_OFFERED ? otherwise : Nearest.remedy(id, ids.written(), otherwise);
            problems.add(rows.placed(index, Problem.fault(column, id, "is not an id in " + ids.file(), remedy)));
        }
    }
}
