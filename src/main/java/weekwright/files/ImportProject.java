package weekwright.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.CrewMemberStore;
import weekwright.build.SettingsStore;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.db.Write;
import weekwright.episodes.RollStore;
import weekwright.files.csv.PlainFiles;
import weekwright.files.csv.ProjectData;
import weekwright.files.csv.ReadResult;

/**
 * Brings a project from plain files into a project folder: all of it or nothing, after everything was checked. It is never
 * merged with what stands there.
 */
public final class ImportProject {
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss", Locale.ROOT).withZone(ZoneOffset.UTC);

    private ImportProject() {}

    /**
     * How an import went.
     *
     * @param remarks what is odd but was accepted
     * @param changed false where the project was equal already and nothing was done
     * @param backup the folder to which the replaced project was copied
     */
    public record Done(List<Problem> remarks, boolean changed, Optional<Path> backup) {}

    /**
     * Imports into a folder that no server has open.
     *
     * @param replace whether a project that stands there may be replaced, after a copy of it
     * @param today in the project's zone, for what looks ahead
     * @throws Rejected with every fault and remark, when there is any fault; nothing was written
     * @throws FolderRefused when the folder cannot take it; nothing was written
     */
    public static Done into(Path files, Folder folder, boolean replace, LocalDate today, Clock clock)
            throws Rejected, FolderRefused {
        boolean standing = folder.isProject();
        if (standing && !replace) {
            throw new FolderRefused(folder.path()
                    + " holds a project already. Name a new or empty folder, or say --replace to replace the project"
                    + " after a backup of it.");
        }
        if (!standing && !folder.isEmpty()) {
            throw new FolderRefused(
                    folder.path() + " is not empty and holds no project. Name a new or empty folder, or a project's.");
        }
        ReadResult read = PlainFiles.read(files, today);
        ProjectData data = read.data().orElseThrow(() -> new Rejected(read.problems()));
        boolean there = Files.exists(folder.path());
        AutoCloseable lock = folder.lock();
        boolean whole = false;
        try (Db db = standing ? folder.open(clock) : folder.create(clock)) {
            Done done = into(data, folder, db, clock);
            whole = true;
            return new Done(read.remarks(), done.changed(), done.backup());
        } finally {
            close(lock);
            if (!whole && !standing) {
                removeStarted(folder, there);
            }
        }
    }

    /**
     * Imports checked data into an open store; a project that stands in it is replaced after a copy.
     *
     * @throws FolderRefused when the pictures cannot be written; nothing was changed
     */
    public static Done into(ProjectData data, Folder folder, Db db, Clock clock) throws FolderRefused {
        Optional<ProjectData> standing = db.read(read -> ProjectData.of(read, folder.path()));
        try {
            if (standing.isPresent() && same(standing.get(), data) && PictureMove.same(data.source(), folder.path())) {
                return new Done(List.of(), false, Optional.empty());
            }
            return replace(data, folder, db, standing.isPresent(), backupFolder(folder, clock));
        } catch (IOException e) {
            throw new FolderRefused(
                    "The project cannot be written to " + folder.path() + ": " + e.getMessage()
                            + ". Nothing was changed. Look after the disk and the right to write there.",
                    e);
        }
    }

    private static Done replace(ProjectData data, Folder folder, Db db, boolean standing, Path backup)
            throws IOException {
        boolean whole = false;
        try {
            Files.createDirectories(backup);
            if (standing) {
                db.copyInto(backup);
            }
            PictureMove pictures = PictureMove.prepare(data.source(), folder.path());
            try {
                write(data, db, pictures, backup);
            } finally {
                pictures.tidy();
            }
            whole = true;
            return new Done(List.of(), true, standing ? Optional.of(backup) : Optional.empty());
        } finally {
            if (!whole || !standing) {
                PictureMove.remove(backup);
                removeIfEmpty(backup.getParent());
            }
        }
    }

    private static void removeIfEmpty(Path backups) throws IOException {
        try (var left = Files.list(backups)) {
            if (left.findAny().isPresent()) {
                return;
            }
        }
        Files.delete(backups);
    }

    private static void write(ProjectData data, Db db, PictureMove pictures, Path backup) throws IOException {
        boolean whole = false;
        try {
            db.write("import", write -> {
                ProjectData.tables().forEach(table -> table.deleteAll(write));
                settings(write, data);
                ProjectData.tables().forEach(table -> insert(write, table, data));
                RollStore.forgetOfMissing(write);
                CrewMemberStore.forgetAccessOfMissing(write);
                pictures.swap(backup);
                return null;
            });
            whole = true;
        } finally {
            if (!whole) {
                pictures.undo();
            }
        }
    }

    private static void settings(Write write, ProjectData data) {
        if (SettingsStore.find(write).isEmpty()) {
            SettingsStore.insert(write, data.settings());
            return;
        }
        set(write, SettingsStore.PROJECT, data.settings().project());
        set(write, SettingsStore.PUBLISHING, data.settings().publishing());
        set(write, SettingsStore.WEATHER, data.settings().weather());
        set(write, SettingsStore.ORDERS, data.settings().orders());
        set(write, SettingsStore.MONEY, data.settings().money());
        set(write, SettingsStore.EMERGENCY, data.settings().emergency());
        set(write, SettingsStore.MODEL, data.settings().model());
        set(write, SettingsStore.BUILD_LOG, data.settings().buildLog());
    }

    private static <R extends Record> void set(Write write, Table<R> table, R value) {
        Stored<R> stored = SettingsStore.one(write, table);
        try {
            if (!stored.value().equals(value)) {
                SettingsStore.update(write, table, stored.version(), value);
            }
        } catch (Stale e) {
            throw new IllegalStateException("a row read in the same transaction changed", e);
        }
    }

    private static <R extends Record> void insert(Write write, Table<R> table, ProjectData data) {
        table.insertAll(write, data.list(table));
    }

    /** Whether two projects have the same settings and the same rows in the same order. */
    static boolean same(ProjectData one, ProjectData other) {
        return one.settings().equals(other.settings())
                && ProjectData.tables().stream()
                        .allMatch(table -> one.list(table).equals(other.list(table)));
    }

    private static Path backupFolder(Folder folder, Clock clock) {
        Path backups = folder.path().resolve("backups");
        String name = "before-import-" + STAMP.format(clock.instant());
        Path backup = backups.resolve(name);
        for (int i = 2; Files.exists(backup); i++) {
            backup = backups.resolve(name + "-" + i);
        }
        return backup;
    }

    private static void close(AutoCloseable lock) {
        try {
            lock.close();
        } catch (Exception e) {
            throw new IllegalStateException("the folder's lock cannot be given back", e);
        }
    }

    /** Leaves the folder as it was found: not there, or empty. */
    private static void removeStarted(Folder folder, boolean wasThere) throws FolderRefused {
        try {
            if (!wasThere) {
                PictureMove.remove(folder.path());
                return;
            }
            folder.removeDatabase();
            PictureMove.remove(folder.photos());
            PictureMove.remove(folder.receipts());
            PictureMove.remove(folder.path().resolve("backups"));
        } catch (IOException e) {
            throw new FolderRefused("The import failed, and " + folder.path() + " cannot be tidied up. Remove it.", e);
        }
    }
}
