package weekwright.web.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Shape;
import weekwright.build.LinkStore;
import weekwright.build.SaveTasks;
import weekwright.build.Shown;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;

/** The cells of a stage's tasks as one table: their texts, how they are read, and blocks that are pasted into them. */
final class TaskCells {
    /** Cells of a row, in the order of the table. */
    static final List<String> COLUMNS =
            List.of("title", "likely", "low", "high", "pieces", "kind", "hands", "trades", "after");

    static final int MORE = 10;
    static final int MOST = 500;
    private static final Shape<Task> SHAPE = Shape.of(Task.class);
    private static final Map<String, String> HEADS = Map.of(
            "task", "title", "what is done", "title", "hours", "likely", "estimate", "likely", "trade", "trades");

    private TaskCells() {}

    /** The texts of the standing tasks, each in the row of its place, and empty rows after them. */
    static Map<String, List<String>> filled(Read read, List<Stored<Task>> tasks) {
        Map<String, List<String>> values = new LinkedHashMap<>();
        for (int row = 0; row < tasks.size(); row++) {
            List<String> cells = cells(read, tasks.get(row).value());
            values.put("id." + row, List.of(tasks.get(row).value().id().value()));
            values.put("version." + row, List.of(String.valueOf(tasks.get(row).version())));
            values.put("was." + row, List.of(String.join("\t", cells)));
            for (int i = 0; i < COLUMNS.size(); i++) {
                values.put(COLUMNS.get(i) + "." + row, List.of(cells.get(i)));
            }
        }
        values.putAll(empty(tasks.size()));
        return values;
    }

    private static Map<String, List<String>> empty(int from) {
        Map<String, List<String>> values = new LinkedHashMap<>();
        for (int row = from; row < Math.min(MOST, from + MORE); row++) {
            values.put("title." + row, List.of());
        }
        return values;
    }

    static List<String> cells(Read read, Task task) {
        Map<String, String> texts = SHAPE.texts(task, 0);
        List<String> cells = new ArrayList<>();
        for (String column : COLUMNS) {
            cells.add(column.equals("after") ? after(read, task) : texts.get(column));
        }
        return cells;
    }

    /** The titles that it follows; an id where a title stands twice or could be read as several. */
    private static String after(Read read, Task task) {
        List<String> names = new ArrayList<>();
        for (var link : LinkStore.before(read, task.id())) {
            TaskStore.TABLE.find(read, link.value().after()).map(Stored::value).ifPresent(one -> {
                boolean plain = !one.title().contains(";")
                        && !one.title().matches("[0-9]+")
                        && TaskStore.TABLE.where(read, "title", one.title()).size() == 1;
                names.add(plain ? one.title() : one.id().value());
            });
        }
        return String.join("; ", names);
    }

    static int rows(FormReader form) {
        int rows = 0;
        while (rows < MOST && form.has("title." + rows)) {
            rows++;
        }
        return rows;
    }

    static Answer more(FormReader form) {
        return new Answer.Again(empty(rows(form)), "");
    }

    /** Puts a block from a spreadsheet into the rows after the last that is filled; a first line of heads names its columns. */
    static Answer paste(FormReader form) {
        List<String> lines = form.texts("paste").stream()
                .flatMap(text -> text.lines())
                .filter(line -> !line.isBlank())
                .toList();
        int row = 0;
        for (int i = 0; i < rows(form); i++) {
            row = empty(form, i) ? row : i + 1;
        }
        List<String> columns = COLUMNS;
        List<String> heads = lines.isEmpty() ? List.of() : heads(lines.get(0));
        if (!heads.isEmpty() && COLUMNS.containsAll(heads)) {
            columns = heads;
            lines = lines.subList(1, lines.size());
        }
        int fit = Math.min(lines.size(), MOST - row);
        Map<String, List<String>> values = new LinkedHashMap<>();
        for (String line : lines.subList(0, fit)) {
            String[] cells = line.split("\t", -1);
            values.put("title." + row, List.of());
            for (int i = 0; i < Math.min(cells.length, columns.size()); i++) {
                values.put(columns.get(i) + "." + row, List.of(cells[i].strip()));
            }
            row++;
        }
        values.putAll(empty(row));
        values.put("paste", List.of());
        return new Answer.Again(
                values,
                fit + (fit == 1 ? " row is" : " rows are") + " in the table now. Nothing is saved yet."
                        + (fit < lines.size() ? " The other " + (lines.size() - fit) + " did not fit." : ""));
    }

    private static List<String> heads(String line) {
        List<String> heads = new ArrayList<>();
        for (String cell : line.split("\t", -1)) {
            String head = cell.strip().toLowerCase(Locale.ROOT);
            heads.add(HEADS.getOrDefault(head, head));
        }
        return heads;
    }

    private static boolean empty(FormReader form, int row) {
        return COLUMNS.stream()
                .allMatch(column -> form.texts(column + "." + row).isEmpty());
    }

    /** Every row in which something was typed or changed; what cannot be read is a fault at its cell. */
    static List<SaveTasks.Row> read(FormReader form, Read read, Id stage) {
        List<SaveTasks.Row> rows = new ArrayList<>();
        int count = rows(form);
        form.text("paste");
        List<Task> all = TaskStore.TABLE.values(read);
        for (int row = 0; row < count; row++) {
            String id = form.text("id." + row);
            form.text("version." + row); // asked for here, compared in StaleCells
            String was = form.text("was." + row);
            List<String> cells = new ArrayList<>();
            for (String column : COLUMNS) {
                cells.add(form.text(column + "." + row));
            }
            boolean nothing = cells.stream().allMatch(String::isEmpty);
            // the hidden text comes back stripped at its ends
            if (id.isEmpty() ? nothing : String.join("\t", cells).strip().equals(was)) {
                continue;
            }
            Optional<Stored<Task>> old = id.isEmpty() ? Optional.empty() : standing(form, read, row, id);
            if (!id.isEmpty() && old.isEmpty()) {
                continue;
            }
            if (old.isPresent()) {
                StaleCells.refuse(form, read, row, old.get());
            }
            Task task = task(form, old.map(Stored::value).orElseGet(() -> blank(stage)), cells, row);
            List<Id> after = new ArrayList<>();
            Set<Integer> afterRows = new LinkedHashSet<>();
            for (String name : cells.get(COLUMNS.indexOf("after")).split(";")) {
                if (!name.isBlank()) {
                    follow(form, all, row, count, name.strip(), after, afterRows);
                }
            }
            rows.add(new SaveTasks.Row(
                    row, old.map(stored -> new Shown(stored.row(), stored.version())), task, after, afterRows));
        }
        return inTable(form, rows);
    }

    /** Rows that are followed but were not changed themselves are followed by their ids. */
    private static List<SaveTasks.Row> inTable(FormReader form, List<SaveTasks.Row> rows) {
        Set<Integer> changed = new LinkedHashSet<>();
        rows.forEach(row -> changed.add(row.number()));
        List<SaveTasks.Row> whole = new ArrayList<>();
        for (SaveTasks.Row row : rows) {
            List<Id> after = new ArrayList<>(row.after());
            Set<Integer> own = new LinkedHashSet<>();
            for (int number : row.afterRows()) {
                String id = form.text("id." + number);
                if (changed.contains(number)) {
                    own.add(number);
                } else if (!id.isEmpty()) {
                    after.add(new Id(id));
                } else {
                    form.fault(
                            "after." + row.number(),
                            String.valueOf(number + 1),
                            "is an empty row",
                            "name a row with a task");
                }
            }
            whole.add(new SaveTasks.Row(row.number(), row.shown(), row.task(), after, own));
        }
        return whole;
    }

    private static Optional<Stored<Task>> standing(FormReader form, Read read, int row, String id) {
        Optional<Stored<Task>> found =
                TaskStore.TABLE.where(read, "id", id).stream().findFirst();
        if (found.isEmpty()) {
            form.fault(
                    "title." + row,
                    form.text("title." + row),
                    "was removed by somebody else meanwhile",
                    "load the page again");
        }
        return found;
    }

    private static Task blank(Id stage) {
        Task blank = SHAPE.parse(
                        Map.of("id", "new", "stage", stage.value(), "title", "new", "kind", "work"),
                        Reading.file(0),
                        new Problems())
                .orElseThrow();
        return SHAPE.with(blank, "title", "");
    }

    private static Task task(FormReader form, Task old, List<String> cells, int row) {
        Task task = old;
        for (int i = 0; i < COLUMNS.size() - 1; i++) {
            String column = COLUMNS.get(i);
            String text = column.equals("kind") && cells.get(i).isEmpty()
                    ? "work"
                    : column.equals("kind") ? cells.get(i).toLowerCase(Locale.ROOT) : cells.get(i);
            Problems own = new Problems();
            Optional<Object> value = SHAPE.field(column).orElseThrow().parse(text, form.reading(), own);
            own.list().forEach(p -> form.fault(p.column() + "." + row, p.read(), p.rule(), p.remedy()));
            if (value.isPresent()) {
                task = SHAPE.with(task, column, value.get());
            }
        }
        return task;
    }

    /** A name in the last cell: the number of a row, a title, or an id. */
    private static void follow(
            FormReader form, List<Task> all, int row, int count, String name, List<Id> after, Set<Integer> afterRows) {
        String cell = "after." + row;
        if (name.matches("[0-9]{1,4}") && Integer.parseInt(name) >= 1 && Integer.parseInt(name) <= count) {
            other(form, row, Integer.parseInt(name) - 1, name, afterRows);
            return;
        }
        List<Integer> titled = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            if (form.text("title." + i).equalsIgnoreCase(name)) {
                titled.add(i);
            }
        }
        if (titled.size() == 1) {
            other(form, row, titled.get(0), name, afterRows);
            return;
        }
        List<Task> found = all.stream()
                .filter(task -> titled.isEmpty() && task.title().equalsIgnoreCase(name))
                .toList();
        List<Task> byId = all.stream()
                .filter(task -> task.id().value().equalsIgnoreCase(name))
                .toList();
        if (byId.size() == 1 && found.isEmpty() && titled.isEmpty()) {
            after.add(byId.get(0).id());
        } else if (found.size() == 1) {
            after.add(found.get(0).id());
        } else if (found.size() + titled.size() > 1) {
            form.fault(cell, name, "is the title of several tasks", "write the number of its row");
        } else {
            form.fault(cell, name, "is no task's title", "write a title, or the number of a row");
        }
    }

    private static void other(FormReader form, int row, int named, String name, Set<Integer> afterRows) {
        if (named == row) {
            form.fault("after." + row, name, "is this row itself", "name a task that comes before it");
        } else {
            afterRows.add(named);
        }
    }
}
