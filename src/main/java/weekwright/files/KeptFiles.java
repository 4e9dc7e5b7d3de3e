package weekwright.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.base.FileKind;
import weekwright.files.csv.Pictures;

/**
 * The files of {@code receipts/} or of {@code photos/}. A file is written whole and safe before a row names it; a receipt that no row
 * names waits to be typed in.
 */
public final class KeptFiles {
    /** The largest file that is taken, in bytes. */
    public static final long MOST_BYTES = 25L * 1024 * 1024;

    private static final String NAME = "[\\p{L}\\p{Nd}_-][\\p{L}\\p{Nd} ._-]{0,199}";

    private final Path folder;

    /** @param folder the folder of the files itself */
    public KeptFiles(Path folder) {
        this.folder = folder;
    }

    /** All names, in order. */
    public List<String> names() {
        return Pictures.names(folder);
    }

    /** A file by its name; nothing for a name that is no plain file of the folder. */
    public Optional<Path> find(String name) {
        if (!name.matches(NAME)) {
            return Optional.empty();
        }
        Path file = folder.resolve(name);
        return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) ? Optional.of(file) : Optional.empty();
    }

    /** What a file of the folder is. */
    public static Optional<FileKind> kind(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return FileKind.of(in.readNBytes(FileKind.HEAD));
        }
    }

    /**
     * Writes a file whole, forces it to disk and only then gives it its name: the day and the next free number.
     *
     * @return its name
     */
    public String keep(InputStream content, FileKind kind, LocalDate day) throws IOException {
        Files.createDirectories(folder);
        Path incoming = Files.createTempFile(folder, ".incoming-", "");
        try {
            try (OutputStream out = Files.newOutputStream(incoming)) {
                content.transferTo(out);
            }
            try (FileChannel channel = FileChannel.open(incoming, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            for (int number = 1; ; number++) {
                Path named = folder.resolve("%s-%d.%s".formatted(day, number, kind.ending()));
                if (!Files.exists(named) && isClaimed(named)) {
                    Files.move(incoming, named, StandardCopyOption.ATOMIC_MOVE);
                    return named.getFileName().toString();
                }
            }
        } finally {
            Files.deleteIfExists(incoming);
        }
    }

    /** Takes the name, empty as yet: of two who keep a file at once one alone gets it, and a move would overwrite the other's. */
    private static boolean isClaimed(Path named) throws IOException {
        try {
            Files.createFile(named);
            return true;
        } catch (FileAlreadyExistsException taken) {
            return false;
        }
    }

    /** Throws a file away; whether it was there. */
    public boolean remove(String name) throws IOException {
        Optional<Path> file = find(name);
        return file.isPresent() && Files.deleteIfExists(file.get());
    }
}
