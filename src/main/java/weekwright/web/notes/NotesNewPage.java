package weekwright.web.notes;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Reading;
import weekwright.base.Refused;
import weekwright.notes.Draft;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Writes a build note; with {@code ?day=} or {@code ?week=} and a date after its address it begins with the log. */
public final class NotesNewPage implements Page {
    /**
     * @param html what is typed, as a page; safe to stand in this one
     * @param draft to be taken up
     */
    public record View(Form form, NoteFields.Lists lists, String html, Optional<NoteDrafts.Offer> draft) {}

    @Override
    public View show(Request request) {
        Form form = form(request);
        return request.read(read -> new View(
                form,
                NoteFields.lists(request, read, form),
                NoteFields.page(request, read, form),
                NoteDrafts.offer(request, Optional.empty(), 0)));
    }

    private static Form form(Request request) {
        Optional<Draft> draft = NoteDrafts.of(request, Optional.empty());
        if (draft.isPresent() && NoteDrafts.isTakenUp(request)) {
            return NoteDrafts.takenUp(request.form(""), draft.get());
        }
        boolean week = !request.query("week").isEmpty();
        Optional<LocalDate> day = day(request.query(week ? "week" : "day"));
        Map<String, String> proposed = new LinkedHashMap<>();
        proposed.put("date", day.orElse(request.today()).toString());
        proposed.put(
                "author", request.person().map(person -> person.id().value()).orElse(""));
        proposed.put("visible", "crew");
        Form form = request.form("", proposed);
        if (day.isEmpty() || request.wasRefused("")) {
            return form;
        }
        LogText.Start start = NoteFields.fromLog(request, day.get(), week, false);
        Map<String, List<String>> values = new LinkedHashMap<>(form.values());
        values.put("text", List.of(start.text()));
        values.putAll(NoteFields.rows(start.tasks()));
        return new Form(form.csrf(), form.answerKey(), form.version(), values, form.errors());
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return text.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Codec.of(LocalDate.class).parse(text, Reading.file(2)));
        } catch (Refused refused) {
            return Optional.empty();
        }
    }

    @Override
    public Answer submit(Request request) throws Exception {
        Optional<Answer> picture = TextPictures.answer(request);
        if (picture.isPresent()) {
            return picture.get();
        }
        Optional<Answer> unsaved = NoteDrafts.answer(request, Optional.empty()).or(() -> NoteFields.unsaved(request));
        return unsaved.isPresent() ? unsaved.get() : NoteFields.add(request);
    }
}
