package weekwright.db;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import java.util.function.LongConsumer;
import org.jdbi.v3.core.ConnectionFactory;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.statement.ColonPrefixSqlParser;
import org.jdbi.v3.core.statement.SqlParser;
import org.jdbi.v3.core.statement.SqlStatements;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * The open store of one project. One connection writes, under a fair lock, each action in one IMMEDIATE transaction with
 * synchronous FULL; a small pool of connections reads. Safe for use from several threads.
 *
 * <p>The database file is never opened by java.nio here: closing any other descriptor of it would drop SQLite's locks.
 */
public final class Db implements AutoCloseable {
    private static final int READERS = 4;
    private static final int BUSY_MILLIS = 5_000;

    /** One for all connections: it keeps the statements that it has taken apart, which costs more than to run them. */
    private static final SqlParser PARSER = new ColonPrefixSqlParser();

    private final SQLiteDataSource writing;
    private final HikariDataSource readingPool;
    private final Jdbi reading;
    private final Clock clock;
    private final ReentrantLock writerLock = new ReentrantLock(true);
    private final List<LongConsumer> listeners = new CopyOnWriteArrayList<>();
    private Connection writer;
    private final Jdbi overWriter = jdbi(this::connection);

    private volatile long version;
    private final KeptRows keptRows = new KeptRows();

    Db(Path file, Clock clock) {
        this.clock = clock;
        writing = source(file, false);
        migrate(file);
        HikariConfig config = new HikariConfig();
        config.setDataSource(source(file, true));
        config.setMaximumPoolSize(READERS);
        config.setMinimumIdle(1);
        config.setPoolName("readers");
        config.setConnectionInitSql("PRAGMA query_only = ON");
        readingPool = new HikariDataSource(config);
        reading = jdbi(readingPool::getConnection);
        version = read(Read::projectVersion);
    }

    /** Work inside one transaction that may refuse with a checked exception; then nothing of it is kept. */
    @FunctionalInterface
    public interface Work<T, X extends Exception> {
        T in(Write write) throws X;
    }

    /** The project's version: rises with every change. */
    public long version() {
        return version;
    }

    /** Calls with the new version after each commit that changed anything, on the thread that wrote. */
    public void onChange(LongConsumer listener) {
        listeners.add(listener);
    }

    /** Runs reads on one consistent view. */
    public <T> T read(Function<Read, T> work) {
        try {
            return reading.inTransaction(handle -> work.apply(new Read(handle, keptRows)));
        } catch (RuntimeException e) {
            throw translated(e);
        }
    }

    /**
     * Runs one action as one transaction; whatever it throws, nothing of it is kept.
     *
     * @param who the crew member's id, or the name of the command
     * @throws StoreTrouble when disk or database failed
     */
    public <T, X extends Exception> T write(String who, Work<T, X> work) throws X {
        writerLock.lock();
        try {
            return inTransaction(who, work);
        } finally {
            writerLock.unlock();
        }
    }

    /**
     * Runs one action at most once for a key: a repeated post gets the first answer, and nothing is done again. Key and
     * change are kept in the same transaction.
     *
     * @return the action's answer, or the one it gave the first time
     * @throws KeyReused when the key came before with other contents
     */
    public <X extends Exception> String once(String who, AnswerKey key, Work<String, X> work) throws X, KeyReused {
        Optional<String> earlier = read(r -> answer(r, who, key));
        if (earlier.isPresent()) {
            return checked(earlier.get(), key);
        }
        writerLock.lock();
        try {
            String kept = inTransaction(who, write -> {
                Optional<String> raced = answer(write, who, key);
                if (raced.isPresent()) {
                    return raced.get();
                }
                String answer = work.in(write);
                write.handle()
                        .createUpdate("INSERT INTO answer (key, who, route, body_sha256, answer, at)"
                                + " VALUES (:key, :who, :route, :body, :answer, :at)")
                        .bind("key", key.key())
                        .bind("who", who)
                        .bind("route", key.route())
                        .bind("body", key.bodySha256())
                        .bind("answer", answer)
                        .bind("at", write.at().toString())
                        .execute();
                return "=" + answer;
            });
            return checked(kept, key);
        } finally {
            writerLock.unlock();
        }
    }

    /** "=" and the answer where key and contents are the same, "!" where the contents differ. */
    private static Optional<String> answer(Read read, String who, AnswerKey key) {
        return read.handle()
                .createQuery("SELECT CASE WHEN who = :who AND route = :route AND body_sha256 = :body"
                        + " THEN '=' || answer ELSE '!' END FROM answer WHERE key = :key")
                .bind("who", who)
                .bind("route", key.route())
                .bind("body", key.bodySha256())
                .bind("key", key.key())
                .mapTo(String.class)
                .findOne();
    }

    private static String checked(String kept, AnswerKey key) throws KeyReused {
        if (kept.startsWith("!")) {
            throw new KeyReused(key.key());
        }
        return kept.substring(1);
    }

    private <T, X extends Exception> T inTransaction(String who, Work<T, X> work) throws X {
        boolean committed = false;
        Connection connection = connection();
        Handle handle = overWriter.open();
        try {
            connection.setAutoCommit(false);
            Write write = new Write(handle, keptRows, who, clock.instant().truncatedTo(ChronoUnit.MILLIS));
            T result = work.in(write);
            connection.commit();
            committed = true;
            write.raisedTo().ifPresent(raised -> version = raised);
            connection.setAutoCommit(true);
            write.raisedTo().ifPresent(raised -> listeners.forEach(listener -> listener.accept(raised)));
            return result;
        } catch (SQLException e) {
            throw translated(new IllegalStateException(e));
        } catch (RuntimeException e) {
            throw translated(e);
        } finally {
            if (!committed) {
                undo();
            }
        }
    }

    /** Rolls back; a connection whose rollback fails, or that had a disk fault, is thrown away. */
    private void undo() {
        try {
            if (writer != null) {
                writer.rollback();
                writer.setAutoCommit(true);
            }
        } catch (SQLException e) {
            discardWriter();
        }
    }

    private Connection connection() {
        try {
            if (writer == null || writer.isClosed()) {
                writer = writing.getConnection();
            }
            return writer;
        } catch (SQLException e) {
            throw translated(new IllegalStateException(e));
        }
    }

    private void discardWriter() {
        try {
            if (writer != null) {
                writer.close();
            }
        } catch (SQLException e) {
            // it is thrown away because it failed; there is nothing more to learn from how
        }
        writer = null;
    }

    /** Turns a failure of disk or database into {@link StoreTrouble}; anything else stays what it is. */
    private RuntimeException translated(RuntimeException e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLiteException sqlite) {
                Optional<StoreTrouble.Kind> kind = kind(sqlite.getResultCode());
                if (kind.isPresent()) {
                    if (kind.get() != StoreTrouble.Kind.BUSY && writerLock.isHeldByCurrentThread()) {
                        discardWriter();
                    }
                    return new StoreTrouble(kind.get(), e);
                }
            }
        }
        return e;
    }

    /** The low byte of a code is its family: 13 full, 10 input or output, 7 memory, 11 corrupt, 26 no database. */
    private static Optional<StoreTrouble.Kind> kind(SQLiteErrorCode code) {
        return switch (code.code & 0xff) {
            case 13 -> Optional.of(StoreTrouble.Kind.DISK_FULL);
            case 7, 10, 14 -> Optional.of(StoreTrouble.Kind.DISK);
            case 8 -> Optional.of(StoreTrouble.Kind.READ_ONLY);
            case 5, 6 -> Optional.of(StoreTrouble.Kind.BUSY);
            case 11, 26 -> Optional.of(StoreTrouble.Kind.DAMAGED);
            default -> Optional.empty();
        };
    }

    /**
     * Writes a consistent copy of the database into a folder that has none yet, under the database's own name; reading and
     * writing go on meanwhile, and the copy shows the state at its beginning.
     *
     * @throws StoreTrouble when disk or database failed
     */
    public void copyInto(Path folder) {
        copyTo(folder.resolve(Folder.DATABASE));
    }

    /** As above into a file that is not there yet. */
    public void copyTo(Path file) {
        try (Handle handle = Jdbi.create(writing).open()) {
            handle.execute("VACUUM INTO ?", file.toString());
        } catch (RuntimeException e) {
            throw translated(e);
        }
    }

    /** An older project is brought to the newest schema only after a copy of it was made. */
    private void copyBefore(Handle handle, Path file) {
        String stamp = DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss", Locale.ROOT)
                .withZone(ZoneOffset.UTC)
                .format(clock.instant());
        Path copy = file.resolveSibling("backups").resolve("before-schema-" + Migrations.newest() + "-" + stamp);
        try {
            Files.createDirectories(copy.getParent());
            Files.createDirectory(copy);
        } catch (IOException e) {
            throw new UncheckedIOException("no copy of it can be made in " + copy, e);
        }
        handle.execute("VACUUM INTO ?", copy.resolve(Folder.DATABASE).toString());
    }

    private static Jdbi jdbi(ConnectionFactory connections) {
        Jdbi jdbi = Jdbi.create(connections);
        jdbi.getConfig(SqlStatements.class).setSqlParser(PARSER);
        return jdbi;
    }

    private void migrate(Path file) {
        try (Handle handle = Jdbi.create(writing).open()) {
            int from = handle.createQuery("PRAGMA user_version")
                    .mapTo(Integer.class)
                    .one();
            if (from > 0 && from < Migrations.newest()) {
                copyBefore(handle, file);
            }
            Migrations.run(handle, from);
        }
    }

    private static SQLiteDataSource source(Path file, boolean readOnly) {
        SQLiteConfig config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.enforceForeignKeys(true);
        config.setBusyTimeout(BUSY_MILLIS);
        config.setTempStore(SQLiteConfig.TempStore.MEMORY);
        config.setPragma(SQLiteConfig.Pragma.JOURNAL_SIZE_LIMIT, "8388608");
        config.setTransactionMode(
                readOnly ? SQLiteConfig.TransactionMode.DEFERRED : SQLiteConfig.TransactionMode.IMMEDIATE);
        SQLiteDataSource source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        return source;
    }

    /** The key from which the forms' keys against cross-site posts are made; kept, so that a restart breaks no form. */
    public String csrfKey() {
        return read(r -> r.handle()
                .createQuery("SELECT csrf_key FROM meta")
                .mapTo(String.class)
                .one());
    }

    /** A random name of this database, so that a device notices when it speaks to another one. */
    public String projectKey() {
        return read(r -> r.handle()
                .createQuery("SELECT project_key FROM meta")
                .mapTo(String.class)
                .one());
    }

    @Override
    public void close() {
        readingPool.close();
        writerLock.lock();
        try {
            discardWriter();
        } finally {
            writerLock.unlock();
        }
    }
}
