package weekwright.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.engine.simulate.Progress;

/**
 * Writes the build log into a folder as a static site. The folder is new, empty, or one that this wrote before: it then
 * writes only what differs and removes what is not published any more. Files that it did not write stay as they are.
 */
public final class PublishSite {
    /** What it wrote, a path a line; by this it knows its own folder again. */
    static final String LIST = "published.txt";

    private static final String HEAD = "weekwright build log";

    private final Path target;
    private final Progress progress;
    private int written;
    private int same;
    private int removed;
    private int looked;

    /** How many files were written, stayed as they were, and were removed. */
    public record Done(int written, int same, int removed) {}

    private PublishSite(Path target, Progress progress) {
        this.target = target;
        this.progress = progress;
    }

    /**
     * @param progress counts the steps, {@link Site#most} at most
     * @throws FolderRefused when the folder holds something else or cannot be written
     */
    public static Done into(Path target, Site site, Progress progress) throws FolderRefused {
        Path place = target.toAbsolutePath().normalize();
        try {
            return new PublishSite(place, progress).run(site);
        } catch (IOException e) {
            throw new FolderRefused(
                    "The build log cannot be written to " + place + ": " + e.getMessage()
                            + ". Look after the disk and the right to write there.",
                    e);
        }
    }

    private Done run(Site site) throws IOException, FolderRefused {
        List<String> before = before();
        Files.createDirectories(target);
        try {
            site.makeCopies(this::step);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        TreeSet<String> now = new TreeSet<>();
        for (String path : site.paths()) {
            put(path, () -> site.at(path).orElseThrow(), false);
            now.add(path);
        }
        for (Map.Entry<String, Path> picture : site.pictures().entrySet()) {
            put(picture.getKey(), () -> SiteFiles.read(picture.getValue()), true);
            now.add(picture.getKey());
        }
        for (String path : before) {
            if (!now.contains(path)) {
                remove(path);
            }
        }
        String list = HEAD + "\n" + String.join("\n", now) + "\n";
        write(target.resolve(LIST), list.getBytes(StandardCharsets.UTF_8));
        return new Done(written, same, removed);
    }

    /** What was written here before. */
    private List<String> before() throws IOException, FolderRefused {
        if (!Files.exists(target) || new Folder(target).isEmpty()) {
            return List.of();
        }
        Path list = target.resolve(LIST);
        List<String> lines =
                Files.isRegularFile(list, LinkOption.NOFOLLOW_LINKS) ? Files.readAllLines(list) : List.of();
        if (lines.isEmpty() || !lines.get(0).equals(HEAD)) {
            throw new FolderRefused(target + " holds something else than a build log, and nothing of it is overwritten."
                    + " Name a new or empty folder, or the one that was published into before.");
        }
        return lines.stream().skip(1).filter(PublishSite::isOwn).toList();
    }

    /** Whether a line of the list is a path under the folder: the list may have been changed by hand. */
    private static boolean isOwn(String path) {
        return !path.isBlank()
                && !path.startsWith("/")
                && !path.contains("\\")
                && Arrays.stream(path.split("/")).noneMatch(part -> part.isEmpty() || part.equals(".."));
    }

    /** @param named whether its name bears a hash of what is in it, so that a file that stands there is the same */
    private void put(String path, Supplier<byte[]> content, boolean named) throws IOException {
        step();
        Path file = target.resolve(path);
        boolean there = Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
        if (there && named) {
            same++;
            return;
        }
        byte[] bytes = content.get();
        if (there && Files.size(file) == bytes.length && Arrays.equals(Files.readAllBytes(file), bytes)) {
            same++;
            return;
        }
        write(file, bytes);
        written++;
    }

    private synchronized void step() {
        progress.done(++looked);
    }

    private static void write(Path file, byte[] bytes) throws IOException {
        Files.createDirectories(file.getParent());
        Path incoming = Files.createTempFile(file.getParent(), ".incoming-", "");
        try {
            Files.write(incoming, bytes);
            readable(incoming);
            Files.move(incoming, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(incoming);
        }
    }

    /** A temporary file is its owner's alone; a web server has to read it. */
    private static void readable(Path file) throws IOException {
        if (Files.getFileStore(file).supportsFileAttributeView("posix")) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
        }
    }

    private void remove(String path) throws IOException {
        Path file = target.resolve(path);
        if (Files.deleteIfExists(file)) {
            removed++;
        }
        for (Path folder = file.getParent(); !folder.equals(target); folder = folder.getParent()) {
            try (Stream<Path> left = Files.exists(folder) ? Files.list(folder) : Stream.of(folder)) {
                if (left.findAny().isEmpty()) {
                    Files.delete(folder);
                }
            }
        }
    }
}
