package weekwright.files.csv;

import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Rows;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.AllRows;
import weekwright.db.Read;
import weekwright.db.Table;
import weekwright.forecast.Source;
import weekwright.notes.NoteStore;
import weekwright.notes.PhotoStore;

/**
 * A whole project: settings, the rows of every table, and where its pictures lie.
 *
 * @param source the folder of plain files or of the project
 */
public record ProjectData(Settings settings, AllRows rows, Path source) implements Source {
    /** All tables that a project is exported as, settings apart; referring tables need not come after the others. */
    public static Set<Table<?>> tables() {
        Set<Table<?>> tables = new LinkedHashSet<>();
        FileTable.ALL.forEach(file -> tables.add(file.table()));
        tables.add(NoteStore.TABLE);
        tables.add(PhotoStore.TABLE);
        return tables;
    }

    /** The project as the store has it, or empty while the folder has none. */
    public static Optional<ProjectData> of(Read read, Path folder) {
        return SettingsStore.find(read).map(settings -> {
            AllRows rows = new AllRows();
            tables().forEach(table -> put(rows, table, read));
            return new ProjectData(settings, rows, folder);
        });
    }

    private static <R extends Record> void put(AllRows rows, Table<R> table, Read read) {
        rows.put(table, Rows.of(table.values(read)));
    }

    /** The rows of a table. */
    public <R extends Record> Rows<R> rows(Table<R> table) {
        return rows.of(table);
    }

    @Override
    public <R extends Record> List<R> list(Table<R> table) {
        return rows(table).list();
    }
}
