package weekwright.db;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;

/** One consistent view of the store, for the length of one piece of work. Stores take their handle from it. */
public sealed class Read permits Write {
    private final Handle handle;
    private final Optional<Lists> lists;
    private long version;

    Read(Handle handle) {
        this(handle, Optional.empty());
    }

    /** @param lists where whole tables are kept; empty reads them each time */
    Read(Handle handle, Optional<Lists> lists) {
        this.handle = handle;
        this.lists = lists;
    }

    /** A whole table's rows as this view sees them. */
    <T> List<T> whole(String table, Supplier<List<T>> load) {
        if (lists.isEmpty()) {
            return load.get();
        }
        if (version == 0) {
            version = projectVersion();
        }
        return lists.get().of(table, version, load);
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
