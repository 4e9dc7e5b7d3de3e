package weekwright.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.files.csv.Pictures;
import weekwright.files.picture.PhotoFiles;
import weekwright.notes.Photo;
import weekwright.render.Templates;
import weekwright.site.PublicLog.Entry;

/**
 * The pages of the build log by path, each made when it is asked for: {@code index.html}, {@code notes/…}, {@code stages/…},
 * {@code years/…}, {@code episodes.html}, {@code feed.xml}, {@code sitemap.xml} and, under the secret link, {@code
 * supporters/…}. All links are relative. What is served and what is written as files is the same.
 */
public final class Site {
    private final PublicLog log;
    private final SiteFiles files;
    private final SitePages made;
    private final Map<String, Supplier<byte[]>> pages = new LinkedHashMap<>();

    /**
     * @param copies the copy of a picture that may be given out, by the picture's name
     * @param drawing the crew's own drawing, as its file has it
     */
    public Site(PublicLog log, Templates templates, Function<String, Optional<Path>> copies, Optional<String> drawing) {
        this.log = log;
        this.files = new SiteFiles(templates, copies);
        this.made = new SitePages(log, templates, files, log.showsDrawing() ? drawing : Optional.empty());
        files.assets().forEach((path, bytes) -> pages.put(path, () -> bytes));
        pages.put("index.html", made::index);
        notes(log.notes(), "notes/", false);
        log.pagesOfStages().forEach(stage -> pages.put(SitePaths.path(stage), () -> made.stage(stage)));
        log.years().forEach(year -> pages.put(SitePaths.year(year), () -> made.year(year)));
        if (!log.episodes().isEmpty()) {
            pages.put("episodes.html", made::films);
        }
        pages.put("feed.xml", () -> SiteFeeds.feed(log, made));
        if (!log.address().isEmpty()) {
            List<String> open = pages.keySet().stream()
                    .filter(path -> path.endsWith(".html"))
                    .toList();
            pages.put("sitemap.xml", () -> SiteFeeds.siteMap(log, open));
        }
        log.token().ifPresent(token -> {
            String folder = "supporters/" + token + "/";
            pages.put(folder + "index.html", () -> made.supporters(folder));
            notes(log.supporters(), folder, true);
        });
    }

    /** The crew's own drawing of a project, where it has one. */
    private static Optional<String> drawing(Folder folder) {
        Path file = folder.path().resolve(Pictures.DRAWING);
        try {
            return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                    ? Optional.of(Files.readString(file))
                    : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The copies of a project's pictures that may be given out, by the picture's name: they bear no position or other tags. */
    public static Function<String, Optional<Path>> copies(Folder folder) {
        PhotoFiles photos = new PhotoFiles(folder.photos());
        return name -> {
            try {
                return photos.copy(name, PhotoFiles.Size.PAGE).map(PhotoFiles.Copy::file);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        };
    }

    /** The site of a project as it stands today. @param copies see {@link #copies} */
    public static Site of(
            Db db, Folder folder, Templates templates, Function<String, Optional<Path>> copies, LocalDate today) {
        PublicLog log = db.read(read -> PublicLog.of(read, today));
        return new Site(log, templates, copies, drawing(folder));
    }

    /** Every path but those of pictures, which are known once the pages that show them were made. */
    public List<String> paths() {
        return List.copyOf(pages.keySet());
    }

    /** How many steps writing it takes at most: its pages, and each picture of its notes copied and written. */
    public int most() {
        return pages.size() + 2 * names().size();
    }

    private List<String> names() {
        return (log.supporters().isEmpty() ? log.notes() : log.supporters())
                .stream()
                        .flatMap(entry -> entry.photos().stream())
                        .map(Photo::file)
                        .distinct()
                        .toList();
    }

    /**
     * Has the copies made of all pictures, on every core, so that no page waits for its own.
     *
     * @param each is told of every picture, from several threads
     */
    void makeCopies(Runnable each) {
        names().parallelStream().forEach(name -> {
            files.copy(name);
            each.run();
        });
    }

    /** What stands at a path; empty where nothing does. */
    public Optional<byte[]> at(String path) {
        Supplier<byte[]> page = pages.get(path);
        if (page != null) {
            return Optional.of(page.get());
        }
        return Optional.ofNullable(files.pictures().get(path)).map(SiteFiles::read);
    }

    /** The pictures that the pages made so far show, by path, each with the file that stands there. */
    public Map<String, Path> pictures() {
        return files.pictures();
    }

    private void notes(List<Entry> entries, String folder, boolean secret) {
        for (int i = 0; i < entries.size(); i++) {
            int place = i;
            pages.put(folder + SitePaths.file(entries.get(i)), () -> made.note(entries, place, folder, secret));
        }
    }
}
