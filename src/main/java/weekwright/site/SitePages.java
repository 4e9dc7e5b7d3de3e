package weekwright.site;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import weekwright.notes.Markdown;
import weekwright.notes.Photo;
import weekwright.render.Formats;
import weekwright.render.Frame;
import weekwright.render.Templates;
import weekwright.render.chart.KeyDrawing;
import weekwright.site.PublicLog.Entry;
import weekwright.site.PublicLog.Film;

/** What the pages of the build log show. All links are relative. Pages need no lock. */
final class SitePages {
    private static final int LATEST = 12;
    private static final int OPENING = 260;
    private static final Pattern OWN_LINK = Pattern.compile("<a href=\"/[^\"]*\"[^>]*>(.*?)</a>", Pattern.DOTALL);
    private static final Pattern PICTURE = Pattern.compile("<img src=\"/photos/([^\"]+)\"([^>]*)>");

    private final PublicLog log;
    private final Templates templates;
    private final SiteFiles files;
    private final Optional<String> drawing;
    private final Formats formats;

    /**
     * What stands in the head of a page.
     *
     * @param root from the page to the log's own folder: empty or {@code ../}
     * @param letters asked for beside the style sheet, which else would be shown in others on a first visit
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
            List<String> letters,
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
    public record Picture(String path, String place, String caption, String alternative) {}

    /** The first page. */
    public record Index(
            Head head,
            String lead,
            List<StageLine> stages,
            String landing,
            String moved,
            String drawing,
            List<Line> notes,
            String nextFilm,
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

    /** @param drawing the crew's own drawing, as its file has it; empty where it is not shown */
    SitePages(PublicLog log, Templates templates, SiteFiles files, Optional<String> drawing) {
        this.log = log;
        this.templates = templates;
        this.files = files;
        this.drawing = drawing;
        this.formats = new Formats(log.currency(), log.today());
    }

    byte[] index() {
        List<StageLine> stages = new ArrayList<>();
        if (log.showsStages()) {
            for (int i = 0; i < log.stages().size(); i++) {
                PublicStage stage = log.stages().get(i);
                stages.add(new StageLine(
                        i + 1, stage.name(), SitePaths.link(SitePaths.path(stage)), stage.words(formats)));
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
                        log.nextFilm().map(formats::date).orElse(""),
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

    byte[] note(List<Entry> entries, int place, String folder, boolean secret) {
        Entry entry = entries.get(place);
        String root = "../".repeat(folder.split("/").length);
        List<Picture> pictures = new ArrayList<>();
        for (Photo photo : Markdown.under(entry.note().text(), entry.photos())) {
            files.picture(photo.file())
                    .ifPresent(shown -> pictures.add(
                            new Picture(root + shown.path(), shown.place(), photo.caption(), photo.alternative())));
        }
        List<Link> belongs = new ArrayList<>();
        entry.stage()
                .ifPresent(stage -> belongs.add(new Link(
                        stage.name(), log.hasPage(stage) ? root + SitePaths.link(SitePaths.path(stage)) : "")));
        entry.film()
                .ifPresent(film ->
                        belongs.add(new Link(film.title(), log.episodes().isEmpty() ? "" : root + "episodes.html")));
        return page(
                "site/note",
                new NotePage(
                        head(
                                root,
                                entry.note().title(),
                                opening(entry),
                                folder + SitePaths.file(entry),
                                preview(entry),
                                secret),
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
                .map(shown -> log.address() + shown.path())
                .orElse("");
    }

    private static Optional<Link> neighbour(List<Entry> entries, int place) {
        return place < 0 || place >= entries.size()
                ? Optional.empty()
                : Optional.of(new Link(
                        entries.get(place).note().title(), SitePaths.link(SitePaths.file(entries.get(place)))));
    }

    byte[] stage(PublicStage stage) {
        String words = log.showsStages() ? Formats.sentence(stage.words(formats)) + "." : "";
        return page(
                "site/list",
                new ListPage(
                        head(
                                "../",
                                stage.name(),
                                stage.name() + " of " + log.project(),
                                SitePaths.path(stage),
                                "",
                                false),
                        words,
                        lines(log.notesOf(stage), "../notes/")));
    }

    byte[] year(int year) {
        return page(
                "site/list",
                new ListPage(
                        head("../", "Notes of " + year, log.project() + " in " + year, SitePaths.year(year), "", false),
                        "",
                        lines(
                                log.notes().stream()
                                        .filter(entry -> entry.note().date().getYear() == year)
                                        .toList(),
                                "../notes/")));
    }

    byte[] supporters(String folder) {
        return page(
                "site/list",
                new ListPage(
                        head("../../", "For supporters", "Notes for supporters", folder + "index.html", "", true),
                        "Keep this address to yourselves: it is yours as supporters.",
                        lines(log.supporters(), "")));
    }

    byte[] films() {
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
        log.years().forEach(year -> lists.add(new Link(Integer.toString(year), SitePaths.year(year))));
        return new Head(
                title,
                description,
                root,
                files.style(),
                files.letters(),
                log.address().isEmpty() || secret ? "" : log.address() + SitePaths.link(path),
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
                            to + SitePaths.link(SitePaths.file(entry)),
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
    String html(Entry entry, String root) {
        String html = Markdown.html(entry.note().text(), entry.links(), log.quotes());
        String plain = OWN_LINK.matcher(html).replaceAll("$1");
        return PICTURE.matcher(plain)
                .replaceAll(match -> Matcher.quoteReplacement(files.picture(
                                URLDecoder.decode(match.group(1), StandardCharsets.UTF_8))
                        .map(shown -> "<img src=\"" + root + shown.path() + "\"" + shown.place() + match.group(2) + ">")
                        .orElse("")));
    }
}
