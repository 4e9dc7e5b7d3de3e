package weekwright.build;

import weekwright.base.Id;
import weekwright.db.Read;

/** Asks whether the row that an id refers to is there; table names come from {@link weekwright.base.Ref} alone. */
final class ReferenceStore {
    private ReferenceStore() {}

    static boolean has(Read read, String table, Id id) {
        return read.handle()
                .createQuery("SELECT EXISTS (SELECT 1 FROM " + table + " WHERE \"id\" = :id)")
                .bind("id", id.value())
                .mapTo(Boolean.class)
                .one();
    }
}
