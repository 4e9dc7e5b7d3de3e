package weekwright.campaign;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What a database holds of the marks of a {@link Crowd}, seen by plain SQL and none of the program's code. */
final class Kept implements AutoCloseable {
    private final Connection connection;
    private final Path photos;

    /** Opens the database of a folder, as it lies there, with the log that a killed server left beside it. */
    Kept(Path folder, Path photos) throws SQLException {
        this.photos = photos;
        connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("build.db"));
        try (Statement statement = connection.createStatement()) {
            statement.execute("PRAGMA busy_timeout = 10000");
        }
    }

    private static String table(Crowd.Kind kind) {
        return switch (kind) {
            case HOURS -> "hours";
            case COST -> "ledger";
            case NOTE -> "notes";
            case PICTURE -> "photos";
            case TASK -> "tasks";
        };
    }

    private static String column(Crowd.Kind kind) {
        return switch (kind) {
            case HOURS, COST -> "note";
            case NOTE, TASK -> "title";
            case PICTURE -> "alternative";
        };
    }

    /** The acknowledged marks that are not there. */
    List<String> lost(Map<Crowd.Kind, List<String>> acknowledged) throws SQLException {
        List<String> lost = new ArrayList<>();
        for (Crowd.Kind kind : Crowd.Kind.values()) {
            Map<String, Integer> there = counts(logged(kind));
            acknowledged.get(kind).stream()
                    .filter(mark -> !there.containsKey(mark))
                    .forEach(lost::add);
        }
        return lost;
    }

    /** All that does not fit together: doubled marks, rows without their change, versions with gaps, pictures without a file. */
    List<String> faults() throws SQLException {
        List<String> faults = new ArrayList<>();
        expect(faults, "PRAGMA integrity_check", "ok");
        expect(faults, "SELECT count(*) FROM pragma_foreign_key_check", "0");
        expect(faults, "SELECT (SELECT project_version FROM meta) - max(project_version) FROM change", "0");
        expect(
                faults,
                "SELECT max(project_version) - min(project_version) + 1 - count(DISTINCT project_version) FROM change",
                "0");
        int marks = 0;
        for (Crowd.Kind kind : Crowd.Kind.values()) {
            Map<String, Integer> log = counts(logged(kind));
            marks += log.size();
            doubled(faults, log, " stands in the change log ");
            String table = table(kind);
            if (kind != Crowd.Kind.TASK) {
                Map<String, Integer> rows = counts(
                        "SELECT " + column(kind) + " FROM " + table + " WHERE " + column(kind) + " LIKE 'mark %'");
                doubled(faults, rows, " stands in " + table + " ");
                if (!rows.keySet().equals(log.keySet())) {
                    faults.add(table + " and the change log differ: " + rows.size() + " and " + log.size() + " marks");
                }
            }
            // what the log last said of a row is the row
            expect(
                    faults,
                    "SELECT count(*) FROM " + table + " AS one WHERE one." + column(kind) + " LIKE 'mark %' AND one."
                            + column(kind) + " <> (SELECT json_extract(\"after\", '$." + column(kind)
                            + "') FROM change WHERE thing = '" + table
                            + "' AND thing_row = one.row ORDER BY id DESC LIMIT 1)",
                    "0");
        }
        expect(faults, "SELECT count(*) FROM answer", String.valueOf(marks));
        for (String file : texts("SELECT file FROM photos WHERE alternative LIKE 'mark %'")) {
            if (!Files.isRegularFile(photos.resolve(file))) {
                faults.add("the picture " + file + " has no file");
            }
        }
        return faults;
    }

    /** The changes that brought a mark in; a later change of another column of the row carries it along. */
    private static String logged(Crowd.Kind kind) {
        return "SELECT json_extract(\"after\", '$." + column(kind) + "') AS mark FROM change WHERE thing = '"
                + table(kind) + "' AND mark LIKE 'mark %' AND mark IS NOT json_extract(\"before\", '$." + column(kind)
                + "')";
    }

    private static void doubled(List<String> faults, Map<String, Integer> counts, String where) {
        counts.forEach((mark, count) -> {
            if (count != 1) {
                faults.add(mark + where + count + " times");
            }
        });
    }

    private Map<String, Integer> counts(String sql) throws SQLException {
        Map<String, Integer> counts = new HashMap<>();
        texts(sql).forEach(mark -> counts.merge(mark, 1, Integer::sum));
        return counts;
    }

    private List<String> texts(String sql) throws SQLException {
        List<String> texts = new ArrayList<>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(sql)) {
            while (rows.next()) {
                texts.add(rows.getString(1));
            }
        }
        return texts;
    }

    private void expect(List<String> faults, String sql, String expected) throws SQLException {
        List<String> found = texts(sql);
        if (!found.equals(List.of(expected))) {
            faults.add(sql + " gave " + found);
        }
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
