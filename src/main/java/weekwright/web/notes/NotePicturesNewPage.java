package weekwright.web.notes;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.base.Shape;
import weekwright.db.Stored;
import weekwright.notes.KeepPhoto;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Adds pictures to a note, several at once, with their words. */
public final class NotePicturesNewPage implements Page {
    /** @param everyone whether everyone reads the note, so that words are needed */
    public record View(Form form, String id, String title, boolean everyone) {}

    @Override
    public View show(Request request) {
        Note note = NotePage.note(request).value();
        return new View(
                request.form(""), note.id().value(), note.title(), note.visibleOrDefault() == Note.Visible.EVERYONE);
    }

    @Override
    public Answer submit(Request request) throws Exception {
        Note note = NotePage.note(request).value();
        FormReader form = request.form();
        List<SentPictures.Sent> good = SentPictures.read(request, form);
        List<String> shows = lines(form, "shows", "alternative");
        List<String> captions = lines(form, "captions", "caption");
        boolean byDay = form.ticked("by_day");
        int sent = request.uploads(SentPictures.FIELD).size();
        if (note.visibleOrDefault() == Note.Visible.EVERYONE && sent > 0 && filled(shows, sent) < sent) {
            form.fault(
                    "shows",
                    "",
                    "has no line for each picture; everyone reads this note",
                    "write what each shows, for those who do not see it");
        }
        List<SentPictures.Kept> kept = new ArrayList<>();
        boolean[] named = {false};
        try {
            // files of a form that is refused anyhow are not decoded
            if (!form.problems().hasFaults()) {
                kept.addAll(SentPictures.keep(request, form, good));
            }
            return request.save(write -> {
                List<Stored<Note>> notes = NoteStore.TABLE.list(write);
                Set<String> elsewhere = new LinkedHashSet<>();
                for (SentPictures.Kept picture : kept) {
                    Note into = byDay ? ofItsDay(notes, note, picture) : note;
                    if (!into.id().same(note.id())) {
                        elsewhere.add(into.title());
                    }
                    needWords(into, at(shows, picture.place()));
                    KeepPhoto.keep(
                            write,
                            Optional.empty(),
                            new Photo(
                                    into.id(),
                                    picture.file(),
                                    at(captions, picture.place()),
                                    at(shows, picture.place())));
                }
                named[0] = true;
                return Saved.to("/notes/" + note.id()).saying(said(kept, note, elsewhere, byDay));
            });
        } finally {
            if (!named[0]) {
                for (SentPictures.Kept picture : kept) {
                    Photos.files(request).remove(picture.file());
                }
            }
        }
    }

    private static void needWords(Note into, String shows) throws Rejected {
        if (into.visibleOrDefault() == Note.Visible.EVERYONE && shows.isEmpty()) {
            throw new Rejected(Problem.fault(
                    "shows",
                    "",
                    "has no line for each picture; everyone reads \"" + into.title() + "\"",
                    "write what each shows, for those who do not see it"));
        }
    }

    /** The one note of the day it was taken, else the note it is sent to. */
    private static Note ofItsDay(List<Stored<Note>> notes, Note note, SentPictures.Kept picture) {
        List<Note> ofDay = notes.stream()
                .map(Stored::value)
                .filter(other -> picture.takenOn().filter(other.date()::equals).isPresent())
                .toList();
        return ofDay.size() == 1 ? ofDay.get(0) : note;
    }

    private static String said(List<SentPictures.Kept> kept, Note note, Set<String> elsewhere, boolean byDay) {
        String text = Formats.sentence(Formats.counted(kept.size(), "picture is", "pictures are")) + " kept.";
        if (!elsewhere.isEmpty()) {
            return text + " Some stand with the note of their day: " + String.join("; ", elsewhere) + ".";
        }
        List<String> days = kept.stream()
                .flatMap(picture -> picture.takenOn().stream())
                .filter(day -> !day.equals(note.date()))
                .distinct()
                .sorted()
                .map(Formats::dayMonthLong)
                .toList();
        return days.isEmpty() || byDay
                ? text
                : text + " Some were taken on " + Formats.list(days) + ", not on the day of this note.";
    }

    /** The lines of an area, a line for each picture, under the bounds of their column. */
    private static List<String> lines(FormReader form, String area, String column) {
        Shape.Field field = Shape.of(Photo.class).field(column).orElseThrow();
        List<String> lines = form.exact(area).lines().map(String::strip).toList();
        Problems found = new Problems();
        lines.forEach(line -> field.parse(line, form.reading(), found));
        found.faults().forEach(fault -> form.fault(area, fault.read(), fault.rule(), fault.remedy()));
        return lines;
    }

    private static long filled(List<String> lines, int sent) {
        return lines.stream().limit(sent).filter(line -> !line.isEmpty()).count();
    }

    private static String at(List<String> lines, int place) {
        return place < lines.size() ? lines.get(place) : "";
    }
}
