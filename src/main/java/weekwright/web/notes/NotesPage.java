package weekwright.web.notes;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import weekwright.build.CrewMemberStore;
import weekwright.build.StageStore;
import weekwright.db.Stored;
import weekwright.notes.Markdown;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.PhotoStore;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.Addresses;

/** The build notes, newest first. */
public final class NotesPage implements Page {
    private static final int LETTERS = 180;

    /** @param months notes by month, newest first */
    public record View(String head, List<Month> months) {}

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
            List<Line> lines = NoteStore.TABLE.list(read).stream()
                    .map(Stored::value)
                    .sorted(Comparator.comparing(Note::date).reversed())
                    .map(note -> new Line(
                            note.id().value(),
                            note.date(),
                            note.title(),
                            Markdown.opening(note.text(), LETTERS, Addresses.links(read)),
                            note.author()
                                    .map(id -> names.getOrDefault(id.folded(), ""))
                                    .orElse(""),
                            note.stage()
                                    .map(id -> stages.getOrDefault(id.folded(), ""))
                                    .orElse(""),
                            NotePage.seenBy(note),
                            photos.getOrDefault(note.id().folded(), 0)))
                    .toList();
            List<Month> months = lines.stream()
                    .map(line -> line.date().withDayOfMonth(1))
                    .distinct()
                    .map(first -> new Month(
                            first,
                            lines.stream()
                                    .filter(line ->
                                            line.date().withDayOfMonth(1).equals(first))
                                    .toList()))
                    .toList();
            return new View(
                    lines.isEmpty()
                            ? "No notes yet"
                            : lines.size() == 1 ? "One build note" : lines.size() + " build notes",
                    months);
        });
    }
}
