package weekwright.web.notes;

import java.util.Optional;
import weekwright.base.Id;
import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.notes.Draft;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.RemoveNote;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Changes a build note, or removes it. */
public final class NoteEditPage implements Page {
    /**
     * @param html what is typed, as a page; safe to stand in this one
     * @param draft to be taken up
     */
    public record View(
            Form form,
            NoteFields.Lists lists,
            String html,
            Optional<NoteDrafts.Offer> draft,
            String id,
            String title) {}

    @Override
    public View show(Request request) {
        Stored<Note> note = note(request);
        Optional<Id> id = Optional.of(note.value().id());
        Optional<Draft> draft = NoteDrafts.of(request, id);
        Form form = draft.isPresent() && NoteDrafts.isTakenUp(request)
                ? NoteDrafts.takenUp(request.form(""), draft.get())
                : NoteFields.filled(request, note);
        return request.read(read -> new View(
                form,
                NoteFields.lists(request, read, form),
                NoteFields.page(request, read, form),
                NoteDrafts.offer(request, id, note.version()),
                note.value().id().value(),
                note.value().title()));
    }

    private static Stored<Note> note(Request request) {
        return request.read(read -> NoteStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no note " + request.part("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<Note> note = note(request);
        if (form.act().equals("remove")) {
            form.ignoringFields();
            return request.save(write -> {
                int photos = RemoveNote.remove(write, new Shown(note.row(), form.version()), note.value());
                String with = photos == 0
                        ? ""
                        : " with " + Formats.count(photos, "picture") + "; the files stay in the folder photos";
                return Saved.to("/notes").saying("\"" + note.value().title() + "\" is removed" + with + ".");
            });
        }
        Optional<Answer> picture = TextPictures.answer(request);
        if (picture.isPresent()) {
            return picture.get();
        }
        Optional<Answer> unsaved =
                NoteDrafts.answer(request, Optional.of(note.value().id())).or(() -> NoteFields.unsaved(request));
        return unsaved.isPresent() ? unsaved.get() : NoteFields.change(request, note);
    }
}
