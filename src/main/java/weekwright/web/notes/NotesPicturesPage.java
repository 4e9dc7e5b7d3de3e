package weekwright.web.notes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import weekwright.build.StageStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.files.picture.PhotoFiles;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.Choices;

/** The pictures of all notes or of one stage's, in time, newest first. */
public final class NotesPicturesPage implements Page {
    private static final int A_PAGE = 48;

    /**
     * @param stages to choose from
     * @param newer address of the page before; empty on the first
     * @param older address of the next page; empty on the last
     */
    public record View(
            String head, List<Form.Choice> stages, String stage, List<Day> days, String newer, String older) {}

    /** The pictures of one note. */
    public record Day(String id, LocalDate date, String title, List<NotePage.Picture> pictures) {}

    private record Line(Note note, Stored<Photo> photo) {}

    @Override
    public View show(Request request) {
        String stage = request.query("stage");
        int asked = request.query("page").matches("[0-9]{1,4}") ? Integer.parseInt(request.query("page")) : 0;
        return request.read(read -> {
            List<Line> all = lines(read, stage);
            int page = Math.min(asked, Math.max(0, all.size() - 1) / A_PAGE);
            int to = Math.min((page + 1) * A_PAGE, all.size());
            return new View(
                    head(read, stage, all.size()),
                    Choices.stages(read),
                    stage,
                    days(request, all.subList(page * A_PAGE, to)),
                    page > 0 ? address(stage, page - 1) : "",
                    to < all.size() ? address(stage, page + 1) : "");
        });
    }

    private static List<Line> lines(Read read, String stage) {
        List<Line> lines = new ArrayList<>();
        NoteStore.TABLE.values(read).stream()
                .filter(note -> stage.isEmpty()
                        || note.stage()
                                .filter(id -> id.value().equalsIgnoreCase(stage))
                                .isPresent())
                .sorted(Comparator.comparing(Note::date).reversed())
                .forEach(note -> PhotoStore.TABLE
                        .where(read, "note", note.id().value())
                        .forEach(photo -> lines.add(new Line(note, photo))));
        return lines;
    }

    private static List<Day> days(Request request, List<Line> lines) {
        List<Day> days = new ArrayList<>();
        for (Line line : lines) {
            Note note = line.note();
            if (days.isEmpty()
                    || !days.get(days.size() - 1).id().equals(note.id().value())) {
                days.add(new Day(note.id().value(), note.date(), note.title(), new ArrayList<>()));
            }
            days.get(days.size() - 1).pictures().add(NotePage.Picture.of(request, line.photo(), PhotoFiles.Size.SMALL));
        }
        return days;
    }

    private static String head(Read read, String stage, int pictures) {
        String of = StageStore.TABLE.values(read).stream()
                .filter(one -> one.id().value().equalsIgnoreCase(stage))
                .map(one -> " of " + one.name())
                .findFirst()
                .orElse("");
        return pictures == 0 ? "No pictures" + of + " yet" : Formats.sentence(Formats.count(pictures, "picture")) + of;
    }

    private static String address(String stage, int page) {
        return "/notes/pictures?page=" + page + (stage.isEmpty() ? "" : "&stage=" + stage);
    }
}
