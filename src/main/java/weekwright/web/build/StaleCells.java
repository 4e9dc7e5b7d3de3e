package weekwright.web.build;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.web.kit.FormReader;

/** Rows of the table of tasks that somebody else changed since it was opened: refused once, with theirs beside each cell. */
final class StaleCells {
    private StaleCells() {}

    /** A fault at each cell that is another now; none where only what the table does not show was changed. */
    static void refuse(FormReader form, Read read, int row, Stored<Task> now) {
        if (form.text("version." + row).equals(String.valueOf(now.version()))) {
            return;
        }
        theirs(form.text("was." + row), TaskCells.cells(read, now.value()))
                .forEach((column, theirs) -> form.fault(
                        column + "." + row,
                        form.text(column + "." + row),
                        "stands where somebody else wrote \"" + theirs + "\" since this table was opened",
                        "save once more to put yours in its place"));
    }

    /**
     * What a refused table shows: rows whose other version was told are over that one at the next save. A row that was
     * changed once more since is not among them.
     */
    static Map<String, List<String>> told(Read read, Form refused) {
        Map<String, List<String>> values = new LinkedHashMap<>(refused.values());
        for (int row = 0; refused.values().containsKey("title." + row); row++) {
            String place = "." + row;
            Optional<Stored<Task>> now = TaskStore.TABLE.where(read, "id", refused.value("id" + place)).stream()
                    .findFirst();
            if (now.isEmpty()) {
                continue;
            }
            List<String> cells = TaskCells.cells(read, now.get().value());
            boolean all = theirs(refused.value("was" + place), cells).keySet().stream()
                    .noneMatch(column -> refused.error(column + place).isEmpty());
            if (all) {
                values.put("version" + place, List.of(String.valueOf(now.get().version())));
                values.put("was" + place, List.of(String.join("\t", cells)));
            }
        }
        return values;
    }

    /** The cells that are another than they were when the table was opened, by column. */
    private static Map<String, String> theirs(String was, List<String> now) {
        Map<String, String> theirs = new LinkedHashMap<>();
        String[] before = was.split("\t", -1);
        for (int i = 0; i < now.size(); i++) {
            if (!now.get(i).strip().equals(i < before.length ? before[i].strip() : "")) {
                theirs.put(TaskCells.COLUMNS.get(i), now.get(i));
            }
        }
        return theirs;
    }
}
