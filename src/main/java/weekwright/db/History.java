package weekwright.db;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The change log as it is read: who changed what, and when. */
public final class History {
    private History() {}

    /**
     * One change.
     *
     * @param thing the table
     * @param before the row as JSON, empty when it was added
     * @param after the row as JSON, empty when it was removed
     */
    public record Change(
            long id,
            Instant at,
            String who,
            long projectVersion,
            String thing,
            long row,
            String action,
            Optional<String> before,
            Optional<String> after) {}

    /** The changes of one row, newest first. */
    public static List<Change> of(Read read, String thing, long row) {
        return changes(read, "WHERE thing = :thing AND thing_row = :row ORDER BY id DESC", thing, row);
    }

    /** The newest changes of everything. */
    public static List<Change> newest(Read read, int most) {
        return changes(read, "ORDER BY id DESC LIMIT :row", "", most);
    }

    private static List<Change> changes(Read read, String tail, String thing, long row) {
        var query = read.handle().createQuery("SELECT * FROM change " + tail).bind("row", row);
        if (!thing.isEmpty()) {
            query.bind("thing", thing);
        }
        return query.map((rs, context) -> new Change(
                        rs.getLong("id"),
                        Instant.parse(rs.getString("at")),
                        rs.getString("who"),
                        rs.getLong("project_version"),
                        rs.getString("thing"),
                        rs.getLong("thing_row"),
                        rs.getString("action"),
                        Optional.ofNullable(rs.getString("before")),
                        Optional.ofNullable(rs.getString("after"))))
                .list();
    }
}
