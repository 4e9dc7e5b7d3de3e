package weekwright.files.backup;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import weekwright.db.DatabaseCopy;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.files.Tidy;
import weekwright.files.csv.Pictures;

/**
 * Makes a backup of an open project while reading and writing go on. The file is written under another name, read back and
 * checked, forced to disk and only then given its name, so that whatever bears the name is whole.
 */
public final class MakeBackup {
    private MakeBackup() {}

    /**
     * A backup that was made and found whole.
     *
     * @param made when its state was taken
     * @param version the project's version in it
     * @param pictures how many photos and receipts it holds
     * @param bytes its length
     */
    public record Done(Path file, Instant made, long version, int pictures, long bytes) {}

    /**
     * @throws FolderRefused when a file of that name is there, or the place cannot take it; nothing is left then
     */
    public static Done into(Db db, Folder folder, Path target, Clock clock) throws FolderRefused {
        Path file = target.toAbsolutePath().normalize();
        if (Files.exists(file)) {
            throw new FolderRefused(file + " is there already, and a backup overwrites nothing. Name a file that is not"
                    + " there yet.");
        }
        try {
            Files.createDirectories(file.getParent());
            Path scratch = Files.createTempDirectory(file.getParent(), ".backup-");
            try {
                return made(db, folder, file, scratch, clock);
            } finally {
                Tidy.remove(scratch);
            }
        } catch (IOException e) {
            throw new FolderRefused(
                    "The backup " + file + " cannot be written: " + e.getMessage()
                            + ". Nothing was left there. Look after the disk and the right to write there.",
                    e);
        } catch (ReadBackup.Broken e) {
            throw new FolderRefused(
                    "The backup " + file + " was written, read back and found wrong (" + e.getMessage()
                            + "). It was not kept. Look after the disk, and check the project.",
                    e);
        }
    }

    private static Done made(Db db, Folder folder, Path file, Path scratch, Clock clock)
            throws IOException, ReadBackup.Broken {
        Instant made = clock.instant().truncatedTo(ChronoUnit.SECONDS);
        Path copy = scratch.resolve("copy.db");
        DatabaseCopy.of(db, copy);
        // temporary files are made for their owner alone
        Path whole = Files.createTempFile(scratch, "whole", "");
        write(whole, copy, folder.path(), made);
        Path back = Files.createDirectory(scratch.resolve("back"));
        ReadBackup.Contents contents = ReadBackup.read(whole, back, false);
        long bytes = Files.size(whole);
        Files.move(whole, file, StandardCopyOption.ATOMIC_MOVE);
        Tidy.force(file.getParent());
        return new Done(file, contents.made(), contents.facts().version(), contents.pictures(), bytes);
    }

    /** The pictures come after the database: a picture is there before a row names it. */
    private static void write(Path whole, Path database, Path folder, Instant made) throws IOException {
        try (FileChannel channel = FileChannel.open(whole, StandardOpenOption.WRITE)) {
            OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel));
            ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
            zip.setLevel(Deflater.BEST_SPEED);
            Map<String, String> hashes = new TreeMap<>();
            add(zip, ReadBackup.DATABASE, database, hashes);
            for (String name : List.of(Pictures.PHOTOS, Pictures.RECEIPTS)) {
                for (String picture : Pictures.names(folder.resolve(name))) {
                    add(zip, name + "/" + picture, folder.resolve(name).resolve(picture), hashes);
                }
            }
            if (Files.isRegularFile(folder.resolve(Pictures.DRAWING))) {
                add(zip, Pictures.DRAWING, folder.resolve(Pictures.DRAWING), hashes);
            }
            zip.putNextEntry(new ZipEntry(ReadBackup.CONTENTS));
            String list = ReadBackup.FIRST_LINE + "\n" + ReadBackup.MADE + made + "\n"
                    + String.join("\n", ReadBackup.lines(hashes)) + "\n";
            zip.write(list.getBytes(StandardCharsets.UTF_8));
            zip.finish();
            out.flush();
            channel.force(true);
        }
    }

    private static void add(ZipOutputStream zip, String name, Path file, Map<String, String> hashes)
            throws IOException {
        MessageDigest digest = ReadBackup.sha256();
        try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
            zip.putNextEntry(new ZipEntry(name));
            in.transferTo(zip);
            zip.closeEntry();
        } catch (NoSuchFileException e) {
            // thrown away since the names were read, with the row that named it
            return;
        }
        hashes.put(name, HexFormat.of().formatHex(digest.digest()));
    }
}
