package weekwright.files.picture;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.FileKind;
import weekwright.base.Refused;
import weekwright.files.KeptFiles;

/**
 * The pictures of {@code photos/}. Originals are kept as they came and never given out; what a browser or the public gets is
 * a copy without position, camera and other tags. Copies lie in {@code photos/.copies/}, bear the time of their original and
 * are made anew where it differs.
 */
public final class PhotoFiles {
    private static final String COPIES = ".copies";

    private final Path folder;
    private final KeptFiles kept;

    /** A copy's size: the most pixels of its longer side. */
    public enum Size {
        PAGE(1600),
        SMALL(480);

        private final int most;

        Size(int most) {
            this.most = most;
        }
    }

    /** A copy that may be given out. */
    public record Copy(Path file, FileKind kind) {}

    /** @param folder the folder of pictures itself */
    public PhotoFiles(Path folder) {
        this.folder = folder;
        this.kept = new KeptFiles(folder);
    }

    /**
     * Keeps an original and makes its copies.
     *
     * @param day that names it
     * @return its name
     * @throws Refused when it cannot be decoded; then nothing is kept
     */
    public String keep(InputStream content, PictureFacts facts, LocalDate day) throws IOException, Refused {
        String name = kept.keep(content, facts.kind(), day);
        try {
            make(folder.resolve(name), facts);
        } catch (IOException | Refused e) {
            remove(name);
            throw e;
        }
        return name;
    }

    /** What an original says of itself; nothing where it is not there or no picture. */
    public Optional<PictureFacts> facts(String name) throws IOException {
        Optional<Path> file = kept.find(name);
        if (file.isEmpty()) {
            return Optional.empty();
        }
        try (InputStream in = Files.newInputStream(file.get())) {
            return Optional.of(PictureFacts.read(in));
        } catch (Refused e) {
            return Optional.empty();
        }
    }

    /** Pixels of a copy as it is shown. */
    public record Box(int width, int height) {
        /** The attributes that keep a picture's place in a page until it is there. */
        public String place() {
            return " width=\"" + width + "\" height=\"" + height + "\"";
        }
    }

    /** How large a copy of a picture is, made or not; nothing where it is not there or no picture. */
    public Optional<Box> box(String name, Size size) throws IOException {
        return facts(name).map(facts -> {
            boolean turned = facts.orientation() > 4;
            int width = turned ? facts.height() : facts.width();
            int height = turned ? facts.width() : facts.height();
            int longer = Math.max(size.most, Math.max(width, height));
            return new Box(Math.max(1, (int) ((long) width * size.most / longer)), Math.max(1, (int)
                    ((long) height * size.most / longer)));
        });
    }

    /** A copy of a picture, made now where it was not yet; nothing for a name that is no picture of the folder. */
    public Optional<Copy> copy(String name, Size size) throws IOException {
        Optional<Path> original = kept.find(name);
        if (original.isEmpty()) {
            return Optional.empty();
        }
        Optional<FileKind> kind = KeptFiles.kind(original.get()).filter(FileKind::isPicture);
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        FileKind as = PictureCopy.as(kind.get());
        Copy copy = new Copy(place(name, size, as), as);
        if (!isFresh(original.get(), copy.file())) {
            try (InputStream in = Files.newInputStream(original.get())) {
                make(original.get(), PictureFacts.read(in));
            } catch (Refused e) {
                return Optional.empty();
            }
        }
        return Optional.of(copy);
    }

    private static boolean isFresh(Path original, Path copy) throws IOException {
        return Files.exists(copy) && Files.getLastModifiedTime(copy).equals(Files.getLastModifiedTime(original));
    }

    private Path place(String name, Size size, FileKind kind) {
        return folder.resolve(COPIES).resolve(name + "." + size.most + "." + kind.ending());
    }

    private void make(Path original, PictureFacts facts) throws IOException, Refused {
        Files.createDirectories(folder.resolve(COPIES));
        String name = original.getFileName().toString();
        FileTime time = Files.getLastModifiedTime(original);
        FileKind as = PictureCopy.as(facts.kind());
        Pixels page = PictureCopy.decode(original, facts, Size.PAGE.most);
        Pixels small = page.reduced(Size.SMALL.most);
        put(place(name, Size.PAGE, as), time, out -> PictureCopy.write(page, as, out));
        put(place(name, Size.SMALL, as), time, out -> PictureCopy.write(small, as, out));
    }

    private interface Writing {
        void to(OutputStream out) throws IOException;
    }

    private void put(Path place, FileTime time, Writing writing) throws IOException {
        Path incoming = Files.createTempFile(folder.resolve(COPIES), ".incoming-", "");
        try {
            try (OutputStream out = Files.newOutputStream(incoming)) {
                writing.to(out);
            }
            Files.setLastModifiedTime(incoming, time);
            Files.move(incoming, place, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(incoming);
        }
    }

    /** Removes a picture with its copies. */
    public void remove(String name) throws IOException {
        for (FileKind kind : FileKind.values()) {
            for (Size size : Size.values()) {
                Files.deleteIfExists(place(name, size, kind));
            }
        }
        kept.remove(name);
    }
}
