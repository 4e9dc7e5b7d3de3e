package weekwright.files.backup;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.files.Tidy;
import weekwright.files.csv.Pictures;

/** Brings a project back from a backup into a new or empty folder: all of it, after it was checked, or nothing. */
public final class RestoreBackup {
    private RestoreBackup() {}

    /**
     * What was brought back.
     *
     * @param made when its state was taken
     * @param version the project's version in it
     * @param pictures how many photos and receipts came with it
     */
    public record Done(Instant made, long version, int pictures) {}

    /** @throws FolderRefused when the file is no whole backup, or the folder cannot take it; the folder is as it was then */
    public static Done into(Path backup, Folder folder) throws FolderRefused {
        Path file = backup.toAbsolutePath().normalize();
        if (!Files.isRegularFile(file)) {
            throw new FolderRefused(
                    Files.exists(file)
                            ? file + " is a folder, not a file. Name the backup's file."
                            : file + " does not exist. Name a backup's file.");
        }
        if (folder.isProject()) {
            throw new FolderRefused(folder.path() + " holds a project already, and a restore overwrites nothing. Name a"
                    + " new or empty folder.");
        }
        if (!folder.isEmpty()) {
            throw new FolderRefused(
                    folder.path() + " is not empty, and a restore overwrites nothing. Name a new or empty folder.");
        }
        boolean there = Files.exists(folder.path());
        AutoCloseable lock = folder.lock();
        boolean whole = false;
        try {
            Done done = restored(file, folder);
            whole = true;
            return done;
        } catch (ReadBackup.Broken e) {
            throw new FolderRefused(
                    file + " is no whole backup: " + e.getMessage() + ". Nothing was written to " + folder.path()
                            + ". Take another backup.",
                    e);
        } catch (IOException e) {
            throw new FolderRefused(
                    "The project cannot be written to " + folder.path() + ": " + e.getMessage()
                            + ". Nothing was left there. Look after the disk and the right to write there.",
                    e);
        } finally {
            close(lock);
            if (!whole) {
                asFound(folder, there);
            }
        }
    }

    /** The database comes last: with it the folder becomes a project. */
    private static Done restored(Path file, Folder folder) throws IOException, ReadBackup.Broken {
        Path scratch = Files.createTempDirectory(folder.path(), ".restore-");
        try {
            ReadBackup.Contents contents = ReadBackup.read(file, scratch, true);
            force(scratch);
            for (String name : List.of(Pictures.PHOTOS, Pictures.RECEIPTS, Pictures.DRAWING)) {
                if (Files.exists(scratch.resolve(name))) {
                    Files.move(scratch.resolve(name), folder.path().resolve(name));
                }
            }
            Files.createDirectories(folder.photos());
            Files.createDirectories(folder.receipts());
            folder.adopt(scratch.resolve(ReadBackup.DATABASE));
            Tidy.force(folder.path());
            return new Done(contents.made(), contents.facts().version(), contents.pictures());
        } finally {
            Tidy.remove(scratch);
        }
    }

    private static void force(Path scratch) throws IOException {
        try (Stream<Path> all = Files.walk(scratch)) {
            for (Path one : all.filter(Files::isRegularFile).toList()) {
                try (FileChannel channel = FileChannel.open(one, StandardOpenOption.WRITE)) {
                    channel.force(true);
                }
            }
        }
    }

    private static void close(AutoCloseable lock) {
        try {
            lock.close();
        } catch (Exception e) {
            throw new IllegalStateException("the folder's lock cannot be given back", e);
        }
    }

    private static void asFound(Folder folder, boolean wasThere) throws FolderRefused {
        try {
            if (!wasThere) {
                Tidy.remove(folder.path());
                return;
            }
            folder.removeDatabase();
            for (String name : List.of(Pictures.PHOTOS, Pictures.RECEIPTS, Pictures.DRAWING)) {
                Tidy.remove(folder.path().resolve(name));
            }
        } catch (IOException e) {
            throw new FolderRefused("The restore failed, and " + folder.path() + " cannot be tidied up. Remove it.", e);
        }
    }
}
