package weekwright.history;

import java.util.List;
import weekwright.db.Read;
import weekwright.db.Write;

/** Which rows were put in as an example: the table {@code example_row}. */
final class ExampleStore {
    private ExampleStore() {}

    /**
     * A row as it was put in.
     *
     * @param thing its table
     * @param version the one it then had
     */
    record Known(String thing, long row, long version) {}

    /** In the order in which they came. */
    static List<Known> all(Read read) {
        return read.handle()
                .createQuery("SELECT thing, \"row\", version FROM example_row ORDER BY rowid")
                .mapToMap()
                .map(row -> new Known(
                        (String) row.get("thing"),
                        ((Number) row.get("row")).longValue(),
                        ((Number) row.get("version")).longValue()))
                .list();
    }

    static void note(Write write, Known known) {
        write.handle()
                .createUpdate("INSERT INTO example_row (thing, \"row\", version) VALUES (:thing, :row, :version)")
                .bind("thing", known.thing())
                .bind("row", known.row())
                .bind("version", known.version())
                .execute();
    }

    static void forget(Write write) {
        write.handle().execute("DELETE FROM example_row");
    }
}
