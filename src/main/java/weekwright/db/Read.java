package weekwright.db;

import org.jdbi.v3.core.Handle;

/** One consistent view of the store, for the length of one piece of work. Stores take their handle from it. */
public sealed class Read permits Write {
    private final Handle handle;

    Read(Handle handle) {
        this.handle = handle;
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
