package weekwright.site;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import weekwright.base.Id;
import weekwright.notes.Markdown;
import weekwright.notes.Photo;
import weekwright.render.Formats;
import weekwright.render.Frame;
import weekwright.render.Templates;
import weekwright.render.chart.KeyDrawing;
import weekwright.site.PublicLog.Entry;
import weekwright.site.PublicLog.Film;

/**
 * The pages of the build log by path, each made when it is asked for: {@code index.html}, {@code notes/…}, {@code stages/…},
 * {@code years/…}, {@code episodes.html}, {@code feed.xml}, {@code sitemap.xml} and, under the secret link, {@code
 * supporters/…}. All links are relative. What is served and what is written as files is the same.
 */
public final class Site {
    private static final int LATEST = 12;
    private static final int FEED_MOST = 50;
    private static final int OPENING = 260;
    private static final Pattern OWN_LINK = Pattern.compile("<a href=\"/[^\"]*\"[^>]*>(.*?)</a>", Pattern.DOTALL);
    private static final Pattern PICTURE = Pattern.compile("<img src=\"/photos/([^\"]+)\"([^>]*)>");

    private final PublicLog log;
    private final Templates templates;
    private final SiteFiles files;
    private final Optional<String> drawing;
    private final Formats formats;
    private final Map<String, Supplier<byte[]>> pages = new LinkedHashMap<>();

    /**
     * What stands in the head of a page.
     *
     * @param root from the page to the log's own folder: empty or {@code ../}
     * @param url of the page; empty where the log's address is not known
     * @param picture for a preview, whole address; empty for none
     * @param secret whether search engines are to leave it
     * @param lists the lists there are, each a name with its path
     */
    public record Head(
            String title,
            String description,
            String root,
            String style,
            String url,
            String picture,
            boolean secret,
            List<Link> lists) {}

    /** A name and where it leads, relative to the log's folder; empty for nowhere. */
    public record Link(String name, String path) {}

    /** A note in a list. */
    public record Line(String path, LocalDate date, String title, String opening, String below) {}

    /** A stage in a list; {@code number} is the balloon on the drawing. */
    public record StageLine(int number, String name, String path, String words) {}

    /** A picture of a note. */
    public record Picture(String path, String caption, String alternative) {}

    /** The first page. */
    public record Index(
            Head head,
            String lead,
            List<StageLine> stages,
            String landing,
            String moved,
            String drawing,
            List<Line> notes,
            List<String> thanks,
            Optional<PublicMoney.Rung> rung,
            List<PublicMoney.Share> pledge) {}

    /** A page of one note. */
    public record NotePage(
            Head head,
            LocalDate date,
            String by,
            List<Link> belongs,
            String html,
            List<Picture> pictures,
            Optional<Link> earlier,
            Optional<Link> later) {}

    /** A page that lists notes: of a stage, of a year, for supporters. */
    public record ListPage(Head head, String words, List<Line> notes) {}

    /** The episodes that are out. */
    public record FilmsPage(Head head, List<FilmLine> films) {}

    /** @param address where it is seen; empty where that is not known */
    public record FilmLine(String title, LocalDate out, String address, List<Line> notes) {}

    /**
     * @param copies the copy of a picture that may be given out, by the picture's name
     * @param drawing the crew's own drawing, as its file has it
     */
    public Site(PublicLog log, Templates templates, Function<String, Optional<Path>> copies, Optional<String> drawing) {
        this.log = log;
        this.templates = templates;
        this.files = new SiteFiles(templates, copies);
        this.drawing = log.showsDrawing() ? drawing : Optional.empty();
        this.formats = new Formats(log.currency(), log.today());
        files.assets().forEach((path, bytes) -> pages.put(path, () -> bytes));
        pages.put("index.html", this::index);
        notes(log.notes(), "notes/", false);
        log.pagesOfStages().forEach(stage -> pages.put(path(stage), () -> stage(stage)));
        years().forEach(year -> pages.put("years/" + year + ".html", () -> year(year)));
        if (!log.episodes().isEmpty()) {
            pages.put("episodes.html", this::films);
        }
        pages.put("feed.xml", this::feed);
        if (!log.address().isEmpty()) {
            List<String> open = pages.keySet().stream()
                    .filter(path -> path.endsWith(".html"))
                    .toList();
            pages.put("sitemap.xml", () -> siteMap(open));
        }
        log.token().ifPresent(token -> {
            String folder = "supporters/" + token + "/";
            pages.put(folder + "index.html", () -> supporters(folder));
            notes(log.supporters(), folder, true);
        });
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
            pages.put(folder + file(entries.get(i)), () -> note(entries, place, folder, secret));
        }
    }

    private static String file(Entry entry) {
        return entry.note().id().folded() + ".html";
    }

    private static String path(PublicStage stage) {
        return "stages/" + stage.id().folded() + ".html";
    }

    /** A path as an address has it. */
    private static String link(String path) {
        List<String> parts = new ArrayList<>();
        for (String part : path.split("/")) {
            parts.add(URLEncoder.encode(part, StandardCharsets.UTF_8).replace("+", "%20"));
        }
        return String.join("/", parts);
    }

    private TreeSet<Integer> years() {
        TreeSet<Integer> years = new TreeSet<>(java.util.Comparator.reverseOrder());
        log.notes().forEach(entry -> years.add(entry.note().date().getYear()));
        return years;
    }

    // ---- pages

    private byte[] index() {
        List<StageLine> stages = new ArrayList<>();
        if (log.showsStages()) {
            for (int i = 0; i < log.stages().size(); i++) {
                PublicStage stage = log.stages().get(i);
                stages.add(new StageLine(i + 1, stage.name(), link(path(stage)), stage.words(formats)));
            }
        }
        String description = log.lead().isEmpty() ? "The build log of " + log.project() : log.lead();
        return page(
                "site/index",
                new Index(
                        head("", log.project(), description, "index.html", "", false),
                        log.lead(),
                        stages,
                        log.landing(),
                        log.moved(),
                        drawn(),
                        lines(log.notes().stream().limit(LATEST).toList(), "notes/"),
                        log.thanks(),
                        log.rung(),
                        log.pledge()));
    }

    private String drawn() {
        List<KeyDrawing.Part> parts = new ArrayList<>();
        for (int i = 0; i < log.stages().size(); i++) {
            PublicStage stage = log.stages().get(i);
            parts.add(new KeyDrawing.Part(stage.id().value(), stage.name(), i + 1, stage.standing()));
        }
        return drawing.flatMap(KeyDrawing::read)
                .map(read -> read.inked(parts, "Where " + log.project() + " stands"))
                .orElse("");
    }

    private byte[] note(List<Entry> entries, int place, String folder, boolean secret) {
        Entry entry = entries.get(place);
        String root = "../".repeat(folder.split("/").length);
        List<Picture> pictures = new ArrayList<>();
        for (Photo photo : Markdown.under(entry.note().text(), entry.photos())) {
            files.picture(photo.file())
                    .ifPresent(path -> pictures.add(new Picture(root + path, photo.caption(), photo.alternative())));
        }
        List<Link> belongs = new ArrayList<>();
        entry.stage()
                .ifPresent(stage -> belongs.add(
                        new Link(stage.name(), pages.containsKey(path(stage)) ? root + link(path(stage)) : "")));
        entry.film()
                .ifPresent(film ->
                        belongs.add(new Link(film.title(), log.episodes().isEmpty() ? "" : root + "episodes.html")));
        return page(
                "site/note",
                new NotePage(
                        head(root, entry.note().title(), opening(entry), folder + file(entry), preview(entry), secret),
                        entry.note().date(),
                        entry.by(),
                        belongs,
                        html(entry, root),
                        pictures,
                        neighbour(entries, place + 1),
                        neighbour(entries, place - 1)));
    }

    /** The whole address of the note's first picture, those in its text before those under it; empty for none. */
    private String preview(Entry entry) {
        if (log.address().isEmpty()) {
            return "";
        }
        String text = entry.note().text();
        return Stream.concat(
                        Markdown.pictures(text).stream().map(Markdown.Picture::file),
                        Markdown.under(text, entry.photos()).stream().map(Photo::file))
                .flatMap(file -> files.picture(file).stream())
                .findFirst()
                .map(path -> log.address() + path)
                .orElse("");
    }

    private static Optional<Link> neighbour(List<Entry> entries, int place) {
        return place < 0 || place >= entries.size()
                ? Optional.empty()
                : Optional.of(new Link(entries.get(place).note().title(), link(file(entries.get(place)))));
    }

    private byte[] stage(PublicStage stage) {
        String words = log.showsStages() ? Formats.sentence(stage.words(formats)) + "." : "";
        return page(
                "site/list",
                new ListPage(
                        head("../", stage.name(), stage.name() + " of " + log.project(), path(stage), "", false),
                        words,
                        lines(log.notesOf(stage), "../notes/")));
    }

    private byte[] year(int year) {
        return page(
                "site/list",
                new ListPage(
                        head(
                                "../",
                                "Notes of " + year,
                                log.project() + " in " + year,
                                "years/" + year + ".html",
                                "",
                                false),
                        "",
                        lines(
                                log.notes().stream()
                                        .filter(entry -> entry.note().date().getYear() == year)
                                        .toList(),
                                "../notes/")));
    }

    private byte[] supporters(String folder) {
        return page(
                "site/list",
                new ListPage(
                        head("../../", "For supporters", "Notes for supporters", folder + "index.html", "", true),
                        "Keep this address to yourselves: it is yours as supporters.",
                        lines(log.supporters(), "")));
    }

    private byte[] films() {
        return page(
                "site/films",
                new FilmsPage(
                        head("", "Episodes", "The films of " + log.project(), "episodes.html", "", false),
                        log.episodes().stream()
                                .map(film -> new FilmLine(
                                        film.title(), film.out(), web(film), lines(log.notesOf(film), "notes/")))
                                .toList()));
    }

    private static String web(Film film) {
        return film.address().matches("https?://[^\\s\"<>]+") ? film.address() : "";
    }

    private byte[] page(String template, Record view) {
        Frame frame = new Frame(
                log.project(),
                log.currency(),
                log.today(),
                "site",
                "public",
                Optional.empty(),
                "",
                0,
                "",
                "",
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                "");
        return templates.render(template, frame, view).getBytes(StandardCharsets.UTF_8);
    }

    private Head head(String root, String title, String description, String path, String picture, boolean secret) {
        List<Link> lists = new ArrayList<>();
        if (!log.episodes().isEmpty()) {
            lists.add(new Link("Episodes", "episodes.html"));
        }
        years().forEach(year -> lists.add(new Link(Integer.toString(year), "years/" + year + ".html")));
        return new Head(
                title,
                description,
                root,
                files.style(),
                log.address().isEmpty() || secret ? "" : log.address() + link(path),
                picture,
                secret,
                lists);
    }

    private List<Line> lines(List<Entry> entries, String to) {
        return entries.stream()
                .map(entry -> {
                    List<String> below = new ArrayList<>();
                    below.add(entry.by());
                    entry.stage().ifPresent(stage -> below.add(stage.name()));
                    entry.film().ifPresent(film -> below.add("told in " + film.title()));
                    below.removeIf(String::isEmpty);
                    return new Line(
                            to + link(file(entry)),
                            entry.note().date(),
                            entry.note().title(),
                            opening(entry),
                            String.join(" · ", below));
                })
                .toList();
    }

    private String opening(Entry entry) {
        return Markdown.opening(entry.note().text(), OPENING, entry.links(), log.quotes());
    }

    /** The text with its pictures where they stand in the log; links to the crew's own pages are words alone. */
    private String html(Entry entry, String root) {
        String html = Markdown.html(entry.note().text(), entry.links(), log.quotes());
        String plain = OWN_LINK.matcher(html).replaceAll("$1");
        return PICTURE.matcher(plain)
                .replaceAll(match -> Matcher.quoteReplacement(
                        files.picture(URLDecoder.decode(match.group(1), StandardCharsets.UTF_8))
                                .map(path -> "<img src=\"" + root + path + "\"" + match.group(2) + ">")
                                .orElse("")));
    }

    private byte[] feed() {
        LocalDate began = log.notes().isEmpty()
                ? log.today()
                : log.notes().get(log.notes().size() - 1).since();
        return AtomFeed.of(
                new AtomFeed.Head(log.key(), log.project(), log.address(), log.project(), began),
                log.notes().stream()
                        .sorted(java.util.Comparator.comparing(Entry::since).reversed())
                        .limit(FEED_MOST)
                        .map(entry -> new AtomFeed.Entry(
                                id(entry),
                                entry.note().title(),
                                link("notes/" + file(entry)),
                                entry.since(),
                                entry.by(),
                                html(entry, log.address())))
                        .toList());
    }

    private static String id(Entry entry) {
        Id id = entry.note().id();
        return "note " + id.folded();
    }

    /** A site map (sitemaps.org, protocol 0.9) of the pages for everyone. */
    private byte[] siteMap(List<String> paths) {
        StringBuilder xml = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<urlset xmlns=\"http://www.sitemaps.org/schemas/sitemap/0.9\">\n");
        paths.forEach(path -> xml.append("<url><loc>")
                .append((log.address() + link(path)).replace("&", "&amp;"))
                .append("</loc></url>\n"));
        return xml.append("</urlset>\n").toString().getBytes(StandardCharsets.UTF_8);
    }
}
