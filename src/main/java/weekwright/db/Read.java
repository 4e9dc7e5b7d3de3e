package weekwright.db;

import java.util.HashMap;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** One consistent view of the store, for the length of one piece of work. Stores take their handle from it. */
public sealed class Read permits Write {
    private final Handle handle;
    private final KeptRows keptRows;
    private final Map<Table<?>, Integer> asked = new HashMap<>();
    private final Map<Table<?>, Object> seen = new HashMap<>();

    Read(Handle handle, KeptRows keptRows) {
        this.handle = handle;
        this.keptRows = keptRows;
    }

    KeptRows keptRows() {
        return keptRows;
    }

    /** What this view has got of a table as a whole; one view sees the same all along. For {@link KeptRows}. */
    Map<Table<?>, Object> seen() {
        return seen;
    }

    /** Counts how often a few rows of a table were asked for. For {@link KeptRows}. */
    int askedAgain(Table<?> table) {
        return asked.merge(table, 1, Integer::sum);
    }

    /** For stores alone. */
    public Handle handle() {
        return handle;
    }

    /** The project's version as this view sees it. */
    public long projectVersion() {
        return handle.createQuery("SELECT project_version FROM meta")
                .mapTo(Long.class)
                .one();
    }
}
