package weekwright.web.notes;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Writes a build note. */
public final class NotesNewPage implements Page {
    /** @param html what is typed, as a page; safe to stand in this one */
    public record View(Form form, NoteFields.Lists lists, String html) {}

    @Override
    public View show(Request request) {
        Map<String, String> proposed = new LinkedHashMap<>();
        proposed.put("date", request.today().toString());
        proposed.put(
                "author", request.person().map(person -> person.id().value()).orElse(""));
        proposed.put("visible", "crew");
        Form form = request.form("", proposed);
        return request.read(read -> new View(form, NoteFields.lists(request, read, form), NoteFields.page(form)));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        Optional<Answer> unsaved = NoteFields.unsaved(request.form());
        return unsaved.isPresent() ? unsaved.get() : NoteFields.add(request);
    }
}
