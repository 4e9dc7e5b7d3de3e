package weekwright.db;

import java.io.IOException;
import java.nio.file.FileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What the disk under a project's folder is like. Never touches the database file. */
public final class Disk {
    /** With less room than this files are not taken any more, so that entries still are. */
    public static final long LEAST_BYTES = 200_000_000;

    private static final Set<String> NETWORK = Set.of(
            "nfs",
            "nfs4",
            "cifs",
            "smb",
            "smb2",
            "smb3",
            "smbfs",
            "9p",
            "fuse.sshfs",
            "fuse.davfs",
            "davfs",
            "afs",
            "ncpfs");

    private Disk() {}

    /** Whether there is little room left for the folder. */
    public static boolean littleRoom(Path folder) {
        return folder.toFile().getUsableSpace() < LEAST_BYTES;
    }

    /**
     * Refuses a folder whose locks cannot be relied on: the log of SQLite does not work over a network (wal.html, section 1).
     *
     * @param folder need not be there yet
     */
    static void refuseNetwork(Path folder) throws FolderRefused {
        Path there = folder;
        while (!Files.exists(there) && there.getParent() != null) {
            there = there.getParent();
        }
        try {
            FileStore store = Files.getFileStore(there);
            refuseNetwork(folder, store.type());
        } catch (IOException e) {
            throw new FolderRefused(folder + " cannot be read. Give this program the right to read it.", e);
        }
    }

    static void refuseNetwork(Path folder, String type) throws FolderRefused {
        if (NETWORK.contains(type.toLowerCase(Locale.ROOT))) {
            throw new FolderRefused(folder + " lies on a network drive (" + type
                    + "), where two programs may write at once and damage it. Put the project on a disk of this"
                    + " machine, and copies of its backups on the network drive.");
        }
    }

    /** Nobody else on this machine reads a new folder, where the disk knows such rights. */
    static void keepToOneself(Path folder) throws IOException {
        if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwx------"));
        }
    }

    /** The newest backup that lies in a folder, by its name. */
    static Optional<Path> newestBackup(Path backups) {
        if (!Files.isDirectory(backups)) {
            return Optional.empty();
        }
        try (Stream<Path> files = Files.list(backups)) {
            return files.filter(one -> one.getFileName().toString().matches("\\d{4}-\\d\\d-\\d\\d-\\d{6}\\.zip"))
                    .max(Comparator.comparing(Path::toString));
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
