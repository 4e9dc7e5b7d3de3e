package weekwright.web.notes;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import weekwright.db.Stored;
import weekwright.files.csv.NoteFile;
import weekwright.notes.Note;
import weekwright.notes.PhotoStore;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.Request;

/** One note as its file, to be changed outside and read back. */
public final class NoteText implements Fragment {
    @Override
    public Answer answer(Request request) {
        Note note = NotePage.note(request).value();
        String text = request.read(read -> NoteFile.write(
                note,
                PhotoStore.TABLE.where(read, "note", note.id().value()).stream()
                        .map(Stored::value)
                        .toList()));
        String name = NoteFile.names(List.of(note)).get(0);
        return new Answer.Body(
                200,
                "text/markdown;charset=utf-8",
                text.getBytes(StandardCharsets.UTF_8),
                Map.of("Content-Disposition", "attachment; filename=\"" + name + "\""));
    }
}
