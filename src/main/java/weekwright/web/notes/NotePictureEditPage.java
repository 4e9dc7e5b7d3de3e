package weekwright.web.notes;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.files.picture.PhotoFiles;
import weekwright.files.picture.PictureFacts;
import weekwright.notes.KeepPhoto;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;
import weekwright.notes.RemovePhoto;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Changes the words of a picture, puts it with another note, or takes it out. */
public final class NotePictureEditPage implements Page {
    /**
     * @param takenOn by the camera, empty where it does not tell
     * @param suggested titles of the notes of that day, where it is not this note's
     * @param notes those of that day first, then the newest
     */
    public record View(
            Form form,
            Form remove,
            String id,
            String title,
            String file,
            String alternative,
            String place,
            Optional<LocalDate> takenOn,
            List<String> suggested,
            List<Form.Choice> notes) {}

    @Override
    public View show(Request request) {
        Note note = NotePage.note(request).value();
        Stored<Photo> photo = photo(request, note);
        Optional<LocalDate> takenOn = takenOn(request, photo.value());
        return request.read(read -> {
            List<Note> notes = notes(read, takenOn);
            return new View(
                    request.form("", photo),
                    request.form("remove", photo),
                    note.id().value(),
                    note.title(),
                    photo.value().file(),
                    photo.value().alternative(),
                    Photos.place(request, photo.value().file(), PhotoFiles.Size.PAGE),
                    takenOn,
                    takenOn.filter(day -> !day.equals(note.date())).stream()
                            .flatMap(day ->
                                    notes.stream().filter(one -> one.date().equals(day)))
                            .map(Note::title)
                            .toList(),
                    notes.stream()
                            .map(one -> new Form.Choice(
                                    one.id().value(),
                                    Formats.dayMonth(one.date()) + " "
                                            + one.date().getYear() + ", " + one.title()))
                            .toList());
        });
    }

    private static List<Note> notes(Read read, Optional<LocalDate> takenOn) {
        List<Note> all = new ArrayList<>(NoteStore.TABLE.values(read));
        all.sort(Comparator.comparing(
                        (Note one) -> takenOn.filter(one.date()::equals).isEmpty())
                .thenComparing(Note::date, Comparator.reverseOrder()));
        return all;
    }

    private static Optional<LocalDate> takenOn(Request request, Photo photo) {
        try {
            return Photos.files(request).facts(photo.file()).flatMap(PictureFacts::takenOn);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stored<Photo> photo(Request request, Note note) {
        return request.read(read -> PhotoStore.TABLE.find(read, request.row("row")))
                .filter(photo -> photo.value().note().same(note.id()))
                .orElseThrow(() -> new NotFound("This picture is not with this note any more."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Note note = NotePage.note(request).value();
        Stored<Photo> photo = photo(request, note);
        Shown shown = new Shown(photo.row(), form.version());
        if (form.act().equals("remove")) {
            return request.save(write -> {
                RemovePhoto.remove(write, shown);
                return Saved.to("/notes/" + note.id())
                        .saying("The picture is taken out; its file stays in the folder photos.");
            });
        }
        Optional<Photo> edited = form.edited(photo.value(), "caption", "alternative", "note");
        return request.save(write -> {
            Photo changed = KeepPhoto.keep(write, Optional.of(shown), edited.orElseThrow())
                    .value();
            return Saved.to("/notes/" + changed.note()).saying("The picture is saved.");
        });
    }
}
