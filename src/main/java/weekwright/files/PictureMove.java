package weekwright.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.stream.Stream;
import weekwright.files.csv.Pictures;

/**
 * Puts the pictures of plain files in the place of a project's: first copied beside it, then moved in a moment, and moved
 * back when something after that fails.
 */
final class PictureMove {
    private record Moved(Path from, Path to) {}

    private final Path folder;
    private final Path incoming;
    private final Deque<Moved> moved = new ArrayDeque<>();

    private PictureMove(Path folder, Path incoming) {
        this.folder = folder;
        this.incoming = incoming;
    }

    /** Copies the pictures of the plain files into a folder of their own inside the project's. */
    static PictureMove prepare(Path files, Path folder) throws IOException {
        PictureMove move = new PictureMove(folder, Files.createTempDirectory(folder, "incoming-"));
        try {
            copy(files, move.incoming);
        } catch (IOException e) {
            remove(move.incoming);
            throw e;
        }
        return move;
    }

    /** Copies photos, receipts and the drawing of one folder into another. */
    static void copy(Path from, Path to) throws IOException {
        for (String name : List.of(Pictures.PHOTOS, Pictures.RECEIPTS)) {
            Files.createDirectories(to.resolve(name));
            for (String file : Pictures.names(from.resolve(name))) {
                Files.copy(from.resolve(name).resolve(file), to.resolve(name).resolve(file));
            }
        }
        if (Files.isRegularFile(from.resolve(Pictures.DRAWING))) {
            Files.copy(from.resolve(Pictures.DRAWING), to.resolve(Pictures.DRAWING));
        }
    }

    /** Whether two folders have the same pictures, byte for byte. */
    static boolean same(Path one, Path other) throws IOException {
        for (String name : List.of(Pictures.PHOTOS, Pictures.RECEIPTS)) {
            List<String> names = Pictures.names(one.resolve(name));
            if (!names.equals(Pictures.names(other.resolve(name)))) {
                return false;
            }
            for (String file : names) {
                if (Files.mismatch(
                                one.resolve(name).resolve(file),
                                other.resolve(name).resolve(file))
                        >= 0) {
                    return false;
                }
            }
        }
        Path drawing = one.resolve(Pictures.DRAWING);
        Path otherDrawing = other.resolve(Pictures.DRAWING);
        return Files.exists(drawing)
                ? Files.exists(otherDrawing) && Files.mismatch(drawing, otherDrawing) < 0
                : !Files.exists(otherDrawing);
    }

    /** Moves what stands there to the backup, and the new pictures to their place. */
    void swap(Path backup) throws IOException {
        for (String name : List.of(Pictures.PHOTOS, Pictures.RECEIPTS, Pictures.DRAWING)) {
            move(folder.resolve(name), backup.resolve(name));
            move(incoming.resolve(name), folder.resolve(name));
        }
    }

    private void move(Path from, Path to) throws IOException {
        if (Files.exists(from)) {
            Files.createDirectories(to.getParent());
            Files.move(from, to);
            moved.push(new Moved(from, to));
        }
    }

    /** Takes back what was moved. */
    void undo() throws IOException {
        while (!moved.isEmpty()) {
            Moved last = moved.pop();
            Files.move(last.to(), last.from());
        }
    }

    /** Removes the folder of the copies, whatever still lies in it. */
    void tidy() throws IOException {
        remove(incoming);
    }

    /** Removes a file or a folder with all that is in it. */
    static void remove(Path path) throws IOException {
        if (!Files.exists(path)) {
            return;
        }
        try (Stream<Path> all = Files.walk(path)) {
            for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(one);
            }
        }
    }
}
