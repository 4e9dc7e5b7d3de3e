package weekwright.db;

import java.util.HashMap;
import java.util.Map;
import weekwright.base.Rows;

/** The rows of a whole project by their tables, out of plain files or out of a store; a table that was not put has none. */
public final class AllRows {
    private final Map<String, Rows<?>> byTable = new HashMap<>();

    public <R extends Record> void put(Table<R> table, Rows<R> rows) {
        byTable.put(table.name(), rows);
    }

    @SuppressWarnings("unchecked")
    public <R extends Record> Rows<R> of(Table<R> table) {
        return (Rows<R>) byTable.getOrDefault(table.name(), Rows.none());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof AllRows all && byTable.equals(all.byTable);
    }

    @Override
    public int hashCode() {
        return byTable.hashCode();
    }

    @Override
    public String toString() {
        return byTable.toString();
    }
}
