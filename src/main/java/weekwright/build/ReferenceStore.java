package weekwright.build;

import weekwright.base.Id;
import weekwright.db.Read;

/** Ids across tables: whether the row that one refers to is there, and the next of a series. */
public final class ReferenceStore {
    private ReferenceStore() {}

    /** @param table a name of {@link weekwright.base.Ref} */
    static boolean has(Read read, String table, Id id) {
        return read.handle()
                .createQuery("SELECT EXISTS (SELECT 1 FROM " + table + " WHERE \"id\" = :id)")
                .bind("id", id.value())
                .mapTo(Boolean.class)
                .one();
    }

    /**
     * The next id of a series in a table, numbered on from the rows that were ever there, so that an entry that was taken
     * away can come back under its own.
     */
    public static Id unusedId(Read read, String table, String word) {
        long number = read.handle()
                .createQuery("SELECT coalesce((SELECT seq FROM sqlite_sequence WHERE name = :table), 0)")
                .bind("table", table)
                .mapTo(Long.class)
                .one();
        Id id;
        do {
            number++;
            id = new Id(word + "." + number);
        } while (has(read, table, id));
        return id;
    }
}
