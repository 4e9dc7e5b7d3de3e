package weekwright.db;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.stream.Stream;

/**
 * One project folder: {@code build.db}, {@code photos/}, {@code receipts/}. Says in one sentence why a folder cannot be
 * opened. The database file itself is looked at through SQLite alone.
 */
public final class Folder {
    public static final String DATABASE = "build.db";
    private static final String LOCK = "server.lock";

    private final Path path;
    private final Path backups;

    /** With its backups in it. */
    public Folder(Path path) {
        this(path, path.resolve("backups"));
    }

    /** With its backups elsewhere, on another disk say. */
    public Folder(Path path, Path backups) {
        this.path = path.toAbsolutePath().normalize();
        this.backups = backups.toAbsolutePath().normalize();
    }

    public Path path() {
        return path;
    }

    /** Where the backups that it makes by itself lie. */
    public Path backups() {
        return backups;
    }

    public Path photos() {
        return path.resolve("photos");
    }

    public Path receipts() {
        return path.resolve("receipts");
    }

    /** Whether a database stands in it. */
    public boolean isProject() {
        return Files.isRegularFile(path.resolve(DATABASE));
    }

    /**
     * Makes a copy of a database, that nobody has open, the database of this folder, which has none; from then on the folder
     * is a project.
     */
    public void adopt(Path copy) throws IOException {
        Files.move(copy, path.resolve(DATABASE), StandardCopyOption.ATOMIC_MOVE);
    }

    /** Removes the database of a project that was begun and given up; it must not be open. */
    public void removeDatabase() throws IOException {
        for (String ending : new String[] {"", "-wal", "-shm"}) {
            Files.deleteIfExists(path.resolve(DATABASE + ending));
        }
    }

    /** Whether it does not exist yet, or holds nothing but a lock file. */
    public boolean isEmpty() throws FolderRefused {
        if (!Files.exists(path)) {
            return true;
        }
        if (!Files.isDirectory(path)) {
            throw new FolderRefused(path + " is a file, not a folder. Name the project's folder.");
        }
        try (Stream<Path> files = Files.list(path)) {
            return files.allMatch(file -> file.getFileName().toString().equals(LOCK));
        } catch (IOException e) {
            throw new FolderRefused(path + " cannot be read. Give this program the right to read it.", e);
        }
    }

    /** Opens the project that stands in the folder, after bringing an older one to the newest schema. */
    public Db open(Clock clock) throws FolderRefused {
        if (!isProject()) {
            throw new FolderRefused(
                    isEmpty()
                            ? path + " holds no project yet. Start one with: weekwright serve " + path
                            : path + " is no project folder: it has no " + DATABASE + ". Name a project's folder, or an"
                                    + " empty one to start a new project in.");
        }
        Disk.refuseNetwork(path);
        inspect();
        try {
            return new Db(path.resolve(DATABASE), clock);
        } catch (RuntimeException e) {
            throw new FolderRefused("The database in " + path + " cannot be opened: " + plain(e), e);
        }
    }

    /** Makes a new, empty project. */
    public Db create(Clock clock) throws FolderRefused {
        if (isProject()) {
            throw new FolderRefused(path + " holds a project already. Name an empty folder.");
        }
        if (!isEmpty()) {
            throw new FolderRefused(path + " is not empty and holds no project. Name an empty folder.");
        }
        Disk.refuseNetwork(path);
        try {
            Files.createDirectories(path);
            Disk.keepToOneself(path);
            Files.createDirectories(photos());
            Files.createDirectories(receipts());
            return new Db(path.resolve(DATABASE), clock);
        } catch (IOException | RuntimeException e) {
            throw new FolderRefused(
                    "No project can be made in " + path + ": " + plain(e) + ". Give this program the right to write"
                            + " there, or name another folder.",
                    e);
        }
    }

    /**
     * Keeps the folder for one server; the lock ends with the process, however it ends.
     *
     * @throws FolderRefused when another process has it
     */
    public AutoCloseable lock() throws FolderRefused {
        try {
            Files.createDirectories(path);
            FileChannel channel =
                    FileChannel.open(path.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock lock = tryLock(channel);
            if (lock == null) {
                channel.close();
                throw new FolderRefused(path + " is already open in another weekwright" + lockedBy()
                        + ". Use that one, or stop it first.");
            }
            channel.truncate(0);
            channel.write(
                    ByteBuffer.wrap(("process " + ProcessHandle.current().pid()).getBytes(StandardCharsets.UTF_8)));
            return channel;
        } catch (IOException e) {
            throw new FolderRefused(
                    path + " cannot be written. Give this program the right to write there, or name another folder.",
                    e);
        }
    }

    private static FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null;
        }
    }

    private String lockedBy() {
        try {
            String who = Files.readString(path.resolve(LOCK)).strip();
            return who.isEmpty() ? "" : " (" + who + ")";
        } catch (IOException e) {
            return "";
        }
    }

    /** Refuses other files, damaged files and newer schemas before anything is written. */
    private void inspect() throws FolderRefused {
        Path file = path.resolve(DATABASE);
        String url = "jdbc:sqlite:file:" + file + "?mode=ro";
        try (Connection connection = DriverManager.getConnection(url);
                Statement statement = connection.createStatement()) {
            int application = number(statement, "PRAGMA application_id");
            int schema = number(statement, "PRAGMA user_version");
            if (application != Migrations.APPLICATION_ID || schema < 1) {
                throw new FolderRefused(file + " is not a weekwright database. Name a project's folder.");
            }
            if (schema > Migrations.newest()) {
                throw new FolderRefused(file + " was written by a newer weekwright (schema " + schema
                        + ", this program knows " + Migrations.newest() + "). Nothing was changed. Use the newer"
                        + " program.");
            }
            String check = text(statement, "PRAGMA quick_check(1)");
            if (!check.equals("ok")) {
                throw new FolderRefused(damaged(file, check));
            }
        } catch (SQLException e) {
            throw new FolderRefused(damaged(file, plain(e)), e);
        }
    }

    private String damaged(Path file, String finding) {
        return file + " is damaged (" + finding + "). Nothing was changed. Keep the file and "
                + Disk.newestBackup(backups)
                        .map(backup -> "bring the newest backup back into a new folder: weekwright restore " + backup
                                + " " + path + "-restored")
                        .orElse("restore the newest backup; none lies in " + backups)
                + ".";
    }

    private static int number(Statement statement, String sql) throws SQLException {
        try (ResultSet rs = statement.executeQuery(sql)) {
            return rs.next() ? rs.getInt(1) : 0;
        }
    }

    private static String text(Statement statement, String sql) throws SQLException {
        try (ResultSet rs = statement.executeQuery(sql)) {
            return rs.next() ? rs.getString(1) : "";
        }
    }

    private static String plain(Exception e) {
        Throwable cause = e;
        while (cause.getCause() != null) {
            cause = cause.getCause();
        }
        return cause instanceof AccessDeniedException ? "no right to write" : cause.getMessage();
    }
}
