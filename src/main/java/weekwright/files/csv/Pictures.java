package weekwright.files.csv;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import weekwright.base.FileKind;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rows;
import weekwright.funds.LedgerEntry;
import weekwright.notes.NoteRules;
import weekwright.notes.Photo;

/** The pictures of a folder: those that build notes and the ledger name, against those that are there. */
public final class Pictures {
    public static final String PHOTOS = "photos";
    public static final String RECEIPTS = "receipts";
    public static final String DRAWING = "drawing.svg";

    private Pictures() {}

    /** The names of the files in a folder of pictures, in order; none if the folder is not there. Folders in it are left out. */
    public static List<String> names(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> file.getFileName().toString())
                    .filter(name -> !name.startsWith("."))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A picture that a note names but that is not there is a fault, one that no note names a remark. */
    static void photos(Path folder, Rows<Photo> photos, Problems problems) {
        Set<String> there = new TreeSet<>(names(folder.resolve(PHOTOS)));
        Set<String> named = new HashSet<>();
        photos.twice(
                photo -> Optional.of(List.of(photo.note().folded(), photo.file())),
                (later, first) -> photos.fault(
                        problems, later, "photo", photos.get(later).file(), "stands twice", "keep one of the lines"));
        for (int i = 0; i < photos.size(); i++) {
            String file = photos.get(i).file();
            if (!there.contains(file)) {
                String other = there.stream()
                        .filter(file::equalsIgnoreCase)
                        .findFirst()
                        .orElse("");
                photos.fault(
                        problems,
                        i,
                        "photo",
                        file,
                        "is not in " + PHOTOS + "/",
                        other.isEmpty() ? "put it there, or take the line out" : "write " + other);
            } else if (named.add(file) && !isPicture(folder.resolve(PHOTOS).resolve(file))) {
                photos.fault(problems, i, "photo", file, "is no JPEG, PNG or WebP inside", "save it as one of these");
            }
        }
        for (String file : there) {
            if (!named.contains(file)) {
                String rule = NoteRules.isPicture(file) ? "is named by no build note" : "is no picture by its name";
                problems.add(Problem.remark("", "", rule, "it is kept as it is").at(PHOTOS + "/" + file, 0));
            }
        }
    }

    /** A receipt that the ledger names but that is not there is told; the entry counts without it. */
    static void receipts(Path folder, Rows<LedgerEntry> ledger, Problems problems) {
        Set<String> there = new HashSet<>(names(folder.resolve(RECEIPTS)));
        for (int i = 0; i < ledger.size(); i++) {
            String file = ledger.get(i).receipt();
            if (!file.isEmpty() && !there.contains(file)) {
                ledger.remark(problems, i, "receipt", file, "is not in " + RECEIPTS + "/", "put it there");
            }
        }
    }

    private static boolean isPicture(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return FileKind.of(in.readNBytes(FileKind.HEAD))
                    .filter(FileKind::isPicture)
                    .isPresent();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
