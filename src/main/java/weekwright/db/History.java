package weekwright.db;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The change log as it is read: who changed what, and when. */
public final class History {
    private static final String GONE = "action = 'removed' AND NOT EXISTS (SELECT 1 FROM change later"
            + " WHERE later.thing = c.thing AND later.thing_row = c.thing_row AND later.id > c.id)";

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

    /** When the project was begun; empty while nothing is in it. */
    public static Optional<Instant> first(Read read) {
        return read.handle()
                .createQuery("SELECT at FROM change ORDER BY id LIMIT 1")
                .mapTo(String.class)
                .findOne()
                .map(Instant::parse);
    }

    /** The changes of one row, newest first. */
    public static List<Change> of(Read read, String thing, long row) {
        return changes(read, "WHERE thing = :thing AND thing_row = :row ORDER BY id DESC", thing, row);
    }

    /** The changes that one transaction made, in their order. */
    public static List<Change> ofVersion(Read read, long projectVersion) {
        return changes(read, "WHERE project_version = :row ORDER BY id", "", projectVersion);
    }

    /** One record of the log. */
    public static Optional<Change> one(Read read, long id) {
        return changes(read, "WHERE id = :row", "", id).stream().findFirst();
    }

    /**
     * The project's versions whose changes removed what is still gone, newest first; those of imports left out.
     *
     * @param before only lower ones
     */
    public static List<Long> removals(Read read, long before, int most) {
        return read.handle()
                .createQuery("SELECT DISTINCT project_version FROM change c WHERE " + GONE
                        + " AND who <> 'import' AND project_version < :before ORDER BY project_version DESC"
                        + " LIMIT :most")
                .bind("before", before)
                .bind("most", most)
                .mapTo(Long.class)
                .list();
    }

    /** What a change removed and what is still gone, in the order in which it went. */
    public static List<Change> goneOf(Read read, long projectVersion) {
        return changes(read, "c WHERE project_version = :row AND " + GONE + " ORDER BY id", "", projectVersion);
    }

    /** The number of the newest record of a table; 0 where it has none. */
    static long newestOf(Read read, String thing) {
        return read.handle()
                .createQuery("SELECT coalesce(max(id), 0) FROM change WHERE thing = :thing")
                .bind("thing", thing)
                .mapTo(Long.class)
                .one();
    }

    /** The rows of a table that records after this one name, at most so many. */
    static List<Long> rowsSince(Read read, String thing, long id, int most) {
        return read.handle()
                .createQuery("SELECT DISTINCT thing_row FROM change WHERE thing = :thing AND id > :id LIMIT :most")
                .bind("thing", thing)
                .bind("id", id)
                .bind("most", most)
                .mapTo(Long.class)
                .list();
    }

    /** The newest change of one row. */
    public static Optional<Change> last(Read read, String thing, long row) {
        return changes(read, "WHERE thing = :thing AND thing_row = :row ORDER BY id DESC LIMIT 1", thing, row).stream()
                .findFirst();
    }

    /**
     * Which changes to look at.
     *
     * @param things the tables, none of them: all
     * @param who the change log's word for a person; empty: everybody
     * @param before only of lower project versions
     */
    public record Filter(List<String> things, String who, long before) {}

    /** The project's versions that changes made, newest first. */
    public static List<Long> versions(Read read, Filter filter, int most) {
        String where = "WHERE project_version < :before"
                + (filter.who().isEmpty() ? "" : " AND who = :who COLLATE NOCASE")
                + (filter.things().isEmpty() ? "" : " AND thing IN (<things>)");
        var query = read.handle()
                .createQuery("SELECT DISTINCT project_version FROM change " + where
                        + " ORDER BY project_version DESC LIMIT :most")
                .bind("before", filter.before())
                .bind("most", most);
        if (!filter.who().isEmpty()) {
            query.bind("who", filter.who());
        }
        if (!filter.things().isEmpty()) {
            query.bindList("things", filter.things());
        }
        return query.mapTo(Long.class).list();
    }

    /**
     * How many records of one kind a change has.
     *
     * @param first the first of them
     */
    public record Count(String thing, String action, int count, Change first) {}

    /** What a change consists of, in the order of its records. */
    public static List<Count> counts(Read read, long projectVersion) {
        return read.handle()
                .createQuery("SELECT thing, action, count(*) AS many, min(id) AS first FROM change"
                        + " WHERE project_version = :version GROUP BY thing, action ORDER BY first")
                .bind("version", projectVersion)
                .map((rs, context) -> new Count(
                        rs.getString("thing"),
                        rs.getString("action"),
                        rs.getInt("many"),
                        changes(read, "WHERE id = :row", "", rs.getLong("first"))
                                .get(0)))
                .list();
    }

    /** A row as JSON as it was in one of its versions; empty where the log does not have it. */
    public static Optional<String> image(Read read, String thing, long row, long version) {
        return read.handle()
                .createQuery("SELECT before FROM change WHERE thing = :thing AND thing_row = :row"
                        + " AND json_extract(before, '$.version') = :version ORDER BY id DESC LIMIT 1")
                .bind("thing", thing)
                .bind("row", row)
                .bind("version", version)
                .mapTo(String.class)
                .findOne();
    }

    /** Whether any row of a change was changed again by a later one. */
    public static boolean changedSince(Read read, long projectVersion) {
        return read.handle()
                .createQuery("SELECT EXISTS (SELECT 1 FROM change c WHERE c.project_version = :version AND EXISTS"
                        + " (SELECT 1 FROM change later WHERE later.thing = c.thing AND later.thing_row = c.thing_row"
                        + " AND later.project_version > :version))")
                .bind("version", projectVersion)
                .mapTo(Boolean.class)
                .one();
    }

    /**
     * When a row of a table was first changed after a version of the project.
     *
     * @param key of the row's JSON, as it was before or after
     * @param begins how its text begins
     */
    public static Optional<Instant> firstAfter(
            Read read, String thing, long projectVersion, String key, String begins) {
        return read.handle()
                .createQuery("SELECT at FROM change WHERE thing = :thing AND project_version > :version"
                        + " AND (substr(json_extract(before, :key), 1, length(:begins)) = :begins"
                        + " OR substr(json_extract(after, :key), 1, length(:begins)) = :begins) ORDER BY id LIMIT 1")
                .bind("thing", thing)
                .bind("version", projectVersion)
                .bind("key", "$." + key)
                .bind("begins", begins)
                .mapTo(String.class)
                .findOne()
                .map(Instant::parse);
    }

    /** Everybody whom the change log names. */
    public static List<String> whos(Read read) {
        return read.handle()
                .createQuery("SELECT DISTINCT who FROM change ORDER BY who")
                .mapTo(String.class)
                .list();
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
