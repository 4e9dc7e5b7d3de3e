package weekwright.web.notes;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Write;
import weekwright.files.KeptFiles;
import weekwright.notes.KeepPhoto;
import weekwright.notes.Markdown;
import weekwright.notes.Note;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;

/**
 * Pictures within the text of a note. One that is let fall into the editor is kept as a file at once; the note's own line of it is
 * written when the note is kept, with the words of the text.
 */
final class TextPictures {
    private TextPictures() {}

    /** Keeps what was let fall into the text, and says what to write there; empty for other buttons. */
    static Optional<Answer> answer(Request request) throws IOException {
        FormReader form = request.form();
        if (!form.act().equals("picture")) {
            return Optional.empty();
        }
        List<SentPictures.Sent> good = SentPictures.read(request, form);
        List<SentPictures.Kept> kept = form.problems().hasFaults() ? List.of() : SentPictures.keep(request, form, good);
        if (form.problems().hasFaults()) {
            for (SentPictures.Kept one : kept) {
                Photos.files(request).remove(one.file());
            }
            String said = form.problems().faults().stream()
                    .map(Problem::sentence)
                    .map(Formats::sentence)
                    .collect(Collectors.joining(". ", "", "."));
            return Optional.of(json(422, "refused", said));
        }
        return Optional.of(json(
                200,
                "text",
                kept.stream().map(one -> "![](photos/" + one.file() + ")").collect(Collectors.joining("\n\n"))));
    }

    private static Answer json(int status, String name, String value) {
        byte[] bytes = new ObjectMapper()
                .createObjectNode()
                .put(name, value)
                .toString()
                .getBytes(StandardCharsets.UTF_8);
        return new Answer.Body(status, "application/json; charset=utf-8", bytes, Map.of());
    }

    /** Gives the note a line for each picture of its text that lies in the folder and has none yet. */
    static void keepLines(Request request, Write write, Note note) throws Rejected, Stale {
        KeptFiles files = new KeptFiles(request.project().folder().photos());
        Set<String> there = PhotoStore.TABLE.where(write, "note", note.id().value()).stream()
                .map(photo -> photo.value().file())
                .collect(Collectors.toSet());
        for (Markdown.Picture picture : Markdown.pictures(note.text())) {
            if (files.find(picture.file()).isPresent() && there.add(picture.file())) {
                KeepPhoto.keep(
                        write, Optional.empty(), new Photo(note.id(), picture.file(), "", picture.alternative()));
            }
        }
    }
}
