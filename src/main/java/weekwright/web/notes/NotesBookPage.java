package weekwright.web.notes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.build.CrewMemberStore;
import weekwright.build.HoursEntry;
import weekwright.build.Project;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.TaskFigures;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.funds.StageCosts;
import weekwright.notes.Markdown;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.Addresses;

/**
 * The book: all notes of the build, or of one stage by {@code ?stage=}, as one document to print: a chapter a stage in the
 * order of the build with its hours and costs, then the notes that belong to none.
 */
public final class NotesBookPage implements Page {
    private static final Pattern HEADING = Pattern.compile("<(/?)h([2-6])>");
    private static final Pattern ANCHOR = Pattern.compile("(id=\"|href=\"#)(fn)");

    /**
     * @param stage the one asked for; empty for the whole build
     * @param notes how many there are
     */
    public record View(String title, String stage, int notes, List<Chapter> chapters) {}

    /** @param id of its anchor; {@code hours} and {@code costs} are empty where nothing was logged and nothing costs */
    public record Chapter(
            String id, String title, List<Hours> hours, Hours together, List<Cost> costs, Cost sum, List<Part> notes) {}

    /** Of a task, in minutes. */
    public record Hours(String task, int estimate, int logged, Optional<LocalDate> done) {}

    /** Of a line of the stage's cost. */
    public record Cost(String item, Money estimate, Money spent) {}

    /** A note. */
    public record Part(
            String id, String title, LocalDate date, String by, String html, List<NotePage.Picture> pictures) {}

    @Override
    public View show(Request request) {
        String asked = request.query("stage");
        return request.read(read -> {
            List<Stage> stages = StageStore.inOrder(read).stream()
                    .map(Stored::value)
                    .filter(stage -> asked.isEmpty() || stage.id().value().equalsIgnoreCase(asked))
                    .toList();
            if (!asked.isEmpty() && stages.isEmpty()) {
                throw new NotFound("There is no stage " + asked + ".");
            }
            Map<String, List<Part>> parts = parts(request, read);
            List<Chapter> chapters = new ArrayList<>(chapters(read, stages, parts));
            List<Part> rest = parts.getOrDefault("", List.of());
            if (asked.isEmpty() && !rest.isEmpty()) {
                chapters.add(new Chapter(
                        "rest",
                        "Of no one stage",
                        List.of(),
                        new Hours("", 0, 0, Optional.empty()),
                        List.of(),
                        new Cost("", Money.ZERO, Money.ZERO),
                        rest));
            }
            return new View(
                    asked.isEmpty()
                            ? request.settings().project().name()
                            : stages.get(0).name(),
                    asked.isEmpty() ? "" : stages.get(0).id().value(),
                    chapters.stream()
                            .mapToInt(chapter -> chapter.notes().size())
                            .sum(),
                    chapters);
        });
    }

    private static List<Chapter> chapters(Read read, List<Stage> stages, Map<String, List<Part>> parts) {
        Map<String, List<HoursEntry>> entries = TaskFigures.entries(read);
        Map<String, StageCosts> costs = StageCosts.all(read);
        List<Chapter> chapters = new ArrayList<>();
        for (Stage stage : stages) {
            List<Hours> hours = TaskStore.ofStage(read, stage.id()).stream()
                    .map(Stored::value)
                    .map(task -> {
                        TaskFigures of = TaskFigures.of(
                                task, entries.getOrDefault(task.id().folded(), List.of()));
                        return new Hours(task.title(), of.estimate(), of.logged(), task.done());
                    })
                    .filter(line -> line.logged() > 0 || line.done().isPresent())
                    .toList();
            StageCosts cost = costs.getOrDefault(stage.id().folded(), new StageCosts(List.of()));
            List<Cost> lines = cost.lines().stream()
                    .filter(line -> line.spent().minor() != 0)
                    .map(line -> new Cost(line.item(), line.estimate(), line.spent()))
                    .toList();
            List<Part> notes = parts.getOrDefault(stage.id().folded(), List.of());
            if (hours.isEmpty() && lines.isEmpty() && notes.isEmpty()) {
                continue;
            }
            chapters.add(new Chapter(
                    "stage-" + stage.id().folded(),
                    stage.name(),
                    hours,
                    new Hours(
                            "",
                            hours.stream().mapToInt(Hours::estimate).sum(),
                            hours.stream().mapToInt(Hours::logged).sum(),
                            Optional.empty()),
                    lines,
                    new Cost(
                            "",
                            lines.stream().map(Cost::estimate).reduce(Money.ZERO, Money::plus),
                            lines.stream().map(Cost::spent).reduce(Money.ZERO, Money::plus)),
                    notes));
        }
        return chapters;
    }

    /** The notes by their stage's id in lower case, empty for none; the oldest first, as a book is read. */
    private static Map<String, List<Part>> parts(Request request, Read read) {
        Map<String, String> names = new HashMap<>();
        CrewMemberStore.TABLE
                .values(read)
                .forEach(member -> names.put(member.id().folded(), member.name()));
        Map<String, List<Stored<Photo>>> pictures = new HashMap<>();
        for (Stored<Photo> photo : PhotoStore.TABLE.list(read)) {
            pictures.computeIfAbsent(photo.value().note().folded(), note -> new ArrayList<>())
                    .add(photo);
        }
        var links = Addresses.links(read);
        Project.Quotes quotes = request.settings().quotes();
        List<Note> notes = NoteStore.TABLE.values(read).stream()
                .sorted(Comparator.comparing(Note::date))
                .toList();
        Map<String, List<Part>> parts = new HashMap<>();
        for (Note note : notes) {
            String anchor = "note-" + note.id().folded();
            parts.computeIfAbsent(note.stage().map(Id::folded).orElse(""), stage -> new ArrayList<>())
                    .add(new Part(
                            anchor,
                            note.title(),
                            note.date(),
                            note.author()
                                    .map(id -> names.getOrDefault(id.folded(), ""))
                                    .orElse(""),
                            bound(Photos.inPlace(request, Markdown.html(note.text(), links, quotes)), anchor),
                            NotePage.pictures(
                                            request,
                                            note,
                                            pictures.getOrDefault(note.id().folded(), List.of()))
                                    .get(false)));
        }
        return parts;
    }

    /** A note's headings stand under its own, which is an h3 here, and its footnotes keep apart from those of others. */
    private static String bound(String html, String anchor) {
        String lower = HEADING.matcher(html)
                .replaceAll(
                        match -> "<" + match.group(1) + "h" + Math.min(6, Integer.parseInt(match.group(2)) + 2) + ">");
        return ANCHOR.matcher(lower).replaceAll("$1" + Matcher.quoteReplacement(anchor) + "-$2");
    }
}
