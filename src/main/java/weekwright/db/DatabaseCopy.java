package weekwright.db;

import java.nio.file.Path;
import java.sql.SQLException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * A copy of a database that no server has open: made of an open one, cleared of what must not outlive it, and checked before
 * anything is built on it. A copy from elsewhere is not trusted (SQLite's security.html, section 1.2).
 */
public final class DatabaseCopy {
    private final Path file;

    private DatabaseCopy(Path file) {
        this.file = file;
    }

    /**
     * What is known of a copy that was found whole.
     *
     * @param schema how many migrations it has had
     * @param version the project's version
     */
    public record Facts(int schema, long version) {}

    /**
     * Copies an open database into a file that is not there yet; who was logged in is not in the copy, nor are start codes.
     *
     * @throws StoreTrouble when disk or database failed
     */
    public static DatabaseCopy of(Db db, Path file) {
        db.copyTo(file);
        DatabaseCopy copy = new DatabaseCopy(file);
        try (Handle handle = copy.open(false)) {
            handle.execute("PRAGMA secure_delete = ON");
            handle.execute("DELETE FROM session");
            handle.execute("DELETE FROM start_code");
        }
        return copy;
    }

    /** A file that is to be looked at. */
    public static DatabaseCopy at(Path file) {
        return new DatabaseCopy(file);
    }

    /**
     * Checks all that can be checked: every page and index, references, that the schema is one of ours and no newer one, and
     * that the change log ends with the project's version.
     *
     * @throws Damaged with the first finding
     */
    public Facts check() throws Damaged {
        try (Handle handle = open(true)) {
            int application = number(handle, "PRAGMA application_id");
            int schema = number(handle, "PRAGMA user_version");
            if (application != Migrations.APPLICATION_ID || schema < 1) {
                throw new Damaged("its database is none of weekwright");
            }
            if (schema > Migrations.newest()) {
                throw new Damaged("it was written by a newer weekwright: schema " + schema + ", this program knows "
                        + Migrations.newest());
            }
            String integrity = handle.createQuery("PRAGMA integrity_check(1)")
                    .mapTo(String.class)
                    .one();
            if (!integrity.equals("ok")) {
                throw new Damaged("its database is damaged: " + integrity);
            }
            if (handle.createQuery("PRAGMA foreign_key_check")
                    .mapToMap()
                    .findFirst()
                    .isPresent()) {
                throw new Damaged("its database refers to rows that are not there");
            }
            if (!schema(handle).equals(schemaOf(schema))) {
                throw new Damaged("the tables of its database are not those of schema " + schema);
            }
            long version = handle.createQuery("SELECT project_version FROM meta")
                    .mapTo(Long.class)
                    .one();
            long logged = handle.createQuery("SELECT coalesce(max(project_version), 1) FROM change")
                    .mapTo(Long.class)
                    .one();
            if (version != logged) {
                throw new Damaged("its project has version " + version + ", its change log ends with " + logged);
            }
            return new Facts(schema, version);
        } catch (JdbiException | IllegalStateException e) {
            throw new Damaged("its database cannot be read: " + last(e).getMessage());
        }
    }

    /** A copy is not whole; the message is what was found, as a part of a sentence. */
    public static final class Damaged extends Exception {
        private static final long serialVersionUID = 1L;

        Damaged(String finding) {
            super(finding);
        }
    }

    /** Names and texts of all tables, indexes, triggers and views. */
    private static Set<List<String>> schema(Handle handle) {
        return new HashSet<>(handle.createQuery("SELECT type, name, sql FROM sqlite_schema")
                .map((row, context) -> List.of(
                        row.getString(1),
                        row.getString(2),
                        Optional.ofNullable(row.getString(3)).orElse("")))
                .list());
    }

    private static Set<List<String>> schemaOf(int number) {
        try (Handle handle = Jdbi.create("jdbc:sqlite::memory:").open()) {
            Migrations.run(handle, 0, number);
            return schema(handle);
        }
    }

    private static int number(Handle handle, String sql) {
        return handle.createQuery(sql).mapTo(Integer.class).one();
    }

    private Handle open(boolean readOnly) {
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(readOnly);
        config.enforceForeignKeys(true);
        config.setTempStore(SQLiteConfig.TempStore.MEMORY);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        Handle handle = Jdbi.create(source).open();
        handle.execute("PRAGMA trusted_schema = OFF");
        handle.execute("PRAGMA cell_size_check = ON");
        return handle;
    }

    private static Throwable last(Throwable e) {
        Throwable cause = e;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        return cause instanceof SQLException ? cause : e;
    }
}
