package weekwright.web.notes;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weekwright.base.Id;
import weekwright.build.CrewMemberStore;
import weekwright.build.StageStore;
import weekwright.notes.Markdown;
import weekwright.notes.Note;
import weekwright.notes.NoteLinks;
import weekwright.notes.NoteStore;
import weekwright.notes.PhotoStore;
import weekwright.render.Form;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.Addresses;
import weekwright.web.parts.Choices;

/** The build notes, newest first; those of one stage or task alone by {@code ?stage=} and {@code ?task=}. */
public final class NotesPage implements Page {
    private static final int LETTERS = 180;

    /**
     * @param some whether there are any notes at all
     * @param stages and tasks: those that notes are about, to choose from
     * @param thisDay of this day in other years
     * @param months the notes found, by month, newest first
     */
    public record View(
            String head,
            boolean some,
            String stage,
            List<Form.Choice> stages,
            String task,
            List<Form.Choice> tasks,
            List<Line> thisDay,
            List<Month> months) {}

    /** The notes of one month; {@code first} is one of its days. */
    public record Month(LocalDate first, List<Line> notes) {}

    /** A note with its first words. */
    public record Line(
            String id,
            LocalDate date,
            String title,
            String opening,
            String by,
            String stage,
            String visible,
            int photos) {}

    @Override
    public View show(Request request) {
        return request.read(read -> {
            Map<String, String> names = new HashMap<>();
            CrewMemberStore.TABLE
                    .values(read)
                    .forEach(member -> names.put(member.id().folded(), member.name()));
            Map<String, String> stages = new HashMap<>();
            StageStore.TABLE.values(read).forEach(stage -> stages.put(stage.id().folded(), stage.name()));
            Map<String, Integer> photos = new HashMap<>();
            PhotoStore.TABLE
                    .values(read)
                    .forEach(photo -> photos.merge(photo.note().folded(), 1, Integer::sum));
            NoteLinks links = Addresses.links(read);
            Function<Note, Line> line = note -> new Line(
                    note.id().value(),
                    note.date(),
                    note.title(),
                    Markdown.opening(
                            note.text(),
                            LETTERS,
                            Addresses.links(read),
                            request.settings().quotes()),
                    note.author().map(id -> names.getOrDefault(id.folded(), "")).orElse(""),
                    note.stage().map(id -> stages.getOrDefault(id.folded(), "")).orElse(""),
                    NotePage.seenBy(note),
                    photos.getOrDefault(note.id().folded(), 0));
            List<Note> all = NoteStore.TABLE.values(read).stream()
                    .sorted(Comparator.comparing(Note::date).reversed())
                    .toList();
            String stage = request.query("stage");
            String task = request.query("task");
            List<Line> lines = all.stream()
                    .filter(note -> stage.isEmpty()
                            || note.stage()
                                    .map(id -> id.value().equalsIgnoreCase(stage))
                                    .orElse(false))
                    .filter(note ->
                            task.isEmpty() || note.tasks().list().stream().anyMatch(id -> id.equalsIgnoreCase(task)))
                    .map(line)
                    .toList();
            List<Line> thisDay = all.stream()
                    .filter(note -> MonthDay.from(note.date()).equals(MonthDay.from(request.today()))
                            && note.date().getYear() != request.today().getYear())
                    .map(line)
                    .toList();
            List<Month> months = lines.stream()
                    .map(one -> one.date().withDayOfMonth(1))
                    .distinct()
                    .map(first -> new Month(
                            first,
                            lines.stream()
                                    .filter(one -> one.date().withDayOfMonth(1).equals(first))
                                    .toList()))
                    .toList();
            return new View(
                    lines.isEmpty()
                            ? all.isEmpty() ? "No notes yet" : "No note of these"
                            : lines.size() == 1 ? "One build note" : lines.size() + " build notes",
                    !all.isEmpty(),
                    stage,
                    named(
                            Choices.stages(read),
                            all.stream().flatMap(note -> note.stage().stream().map(Id::folded))),
                    task,
                    named(Choices.tasks(read, one -> true), all.stream().flatMap(note -> note.tasks().list().stream())),
                    thisDay,
                    months);
        });
    }

    /** Those of the choices that some note names. */
    private static List<Form.Choice> named(List<Form.Choice> choices, Stream<String> ids) {
        Set<String> known = ids.map(id -> id.toLowerCase(Locale.ROOT)).collect(Collectors.toSet());
        return choices.stream()
                .filter(choice -> known.contains(choice.value().toLowerCase(Locale.ROOT)))
                .toList();
    }
}
