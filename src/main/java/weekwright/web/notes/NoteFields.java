package weekwright.web.notes;

import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Id;
import weekwright.base.Shape;
import weekwright.base.Words;
import weekwright.build.ReferenceStore;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.EpisodeStore;
import weekwright.notes.DraftStore;
import weekwright.notes.Markdown;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.SaveNote;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Addresses;
import weekwright.web.parts.Choices;
import weekwright.web.parts.Remarks;

/** The form of a build note with its page view, for writing one and for changing one. */
final class NoteFields {
    /** A row for each task; more than any note names. */
    private static final int TASKS_MOST = 40;

    private static final String[] COLUMNS = {
        "title", "date", "author", "stage", "episode", "visible", "visible_from", "text"
    };

    private NoteFields() {}

    /**
     * What the fields are chosen from.
     *
     * @param rows the numbers of the rows for tasks
     */
    record Lists(
            List<Form.Choice> authors,
            List<Form.Choice> stages,
            List<Form.Choice> episodes,
            List<Form.Choice> tasks,
            List<Form.Choice> visible,
            List<Integer> rows) {}

    static Lists lists(Request request, Read read, Form form) {
        List<Integer> rows = new ArrayList<>();
        for (int i = 0; i == 0 || i < TASKS_MOST && form.values().containsKey("task." + i); i++) {
            rows.add(i);
        }
        return new Lists(
                request.crew().stream()
                        .map(member -> new Form.Choice(member.id().value(), member.name()))
                        .toList(),
                Choices.stages(read),
                EpisodeStore.TABLE.values(read).stream()
                        .map(one -> new Form.Choice(one.id().value(), Choices.title(one)))
                        .toList(),
                Choices.tasks(read, task -> task.dropped().isEmpty() || named(form, task.id())),
                Choices.words(
                        Note.Visible.class,
                        Map.of(
                                Note.Visible.CREW, "the crew only",
                                Note.Visible.SUPPORTERS, "supporters",
                                Note.Visible.EVERYONE, "everyone")),
                rows);
    }

    private static boolean named(Form form, Id task) {
        return form.values().entrySet().stream()
                .anyMatch(field ->
                        field.getKey().startsWith("task.") && field.getValue().contains(task.value()));
    }

    /** The form of a note that stands, each of its tasks in a row and an empty row after them. */
    static Form filled(Request request, Stored<Note> note) {
        Form form = request.form("", note);
        if (request.wasRefused("")) {
            return form;
        }
        Map<String, List<String>> values = new LinkedHashMap<>(form.values());
        values.putAll(rows(note.value().tasks().list().stream().map(Id::new).toList()));
        values.put("visible", List.of(Codec.word(note.value().visibleOrDefault())));
        return new Form(form.csrf(), form.answerKey(), form.version(), values, form.errors());
    }

    /** What stands in the field of the text, as a page. */
    static String page(Request request, Read read, Form form) {
        return page(request, read, form.value("text"));
    }

    private static String page(Request request, Read read, String text) {
        return Photos.inPlace(
                request,
                Markdown.html(text, Addresses.links(read), request.settings().quotes()));
    }

    /** What a button asks for that saves nothing: the page view of what is typed, or another row for a task. */
    static Optional<Answer> unsaved(Request request) {
        FormReader form = request.form();
        return switch (form.act()) {
            case "show" -> Optional.of(new Answer.Again(Map.of(), ""));
            case "task" -> Optional.of(another(form));
            case "log" -> Optional.of(fromLog(request, form));
            case "page" ->
                Optional.of(Answer.body(
                        "text/html; charset=utf-8",
                        request.read(read -> page(request, read, form.text("text")))
                                .getBytes(StandardCharsets.UTF_8)));
            default -> Optional.empty();
        };
    }

    /** What is typed, with the log of the form's day or week after it. */
    private static Answer fromLog(Request request, FormReader form) {
        LocalDate day = form.read("date", LocalDate.class).orElse(request.today());
        boolean week = form.text("span").equals("week");
        LogText.Start start = fromLog(request, day, week, form.ticked("money"));
        if (start.text().isEmpty()) {
            return new Answer.Again(
                    Map.of(), "Nothing is logged for " + (week ? "that week" : Formats.dayMonthLong(day)) + " yet.");
        }
        Map<String, List<String>> instead = new LinkedHashMap<>();
        String typed = form.text("text");
        instead.put("text", List.of(typed.isEmpty() ? start.text() : typed + "\n\n" + start.text()));
        if (tasks(form).isEmpty()) {
            instead.putAll(rows(start.tasks()));
        }
        return new Answer.Again(instead, "The log stands in the text now; change it as you like.");
    }

    /** The log of a day, or of its week from Monday on. */
    static LogText.Start fromLog(Request request, LocalDate day, boolean week, boolean money) {
        LocalDate from = week ? day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)) : day;
        Formats formats = request.formats();
        return request.read(read -> LogText.of(read, from, week ? from.plusDays(6) : day, money, formats));
    }

    /** Rows for tasks, and an empty one. */
    static Map<String, List<String>> rows(List<Id> tasks) {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        int most = Math.min(tasks.size(), TASKS_MOST - 1);
        for (int i = 0; i < most; i++) {
            rows.put("task." + i, List.of(tasks.get(i).value()));
        }
        rows.put("task." + most, List.of());
        return rows;
    }

    /** Every field as it was typed, for a draft. */
    static Map<String, List<String>> typed(FormReader form) {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        for (String column : COLUMNS) {
            fields.put(column, form.texts(column));
        }
        for (int i = 0; i < TASKS_MOST && form.has("task." + i); i++) {
            fields.put("task." + i, form.texts("task." + i));
        }
        return fields;
    }

    static Answer add(Request request) throws Exception {
        FormReader form = request.form();
        Words tasks = tasks(form);
        Optional<Note> read = form.record(Note.class, Map.of("id", "new", "tasks", tasks.text()), COLUMNS);
        return request.save(write -> {
            Note note = Shape.of(Note.class)
                    .with(read.orElseThrow(), "id", ReferenceStore.unusedId(write, NoteStore.TABLE.name(), "note"));
            SaveNote.Saved kept = SaveNote.save(write, Optional.empty(), note);
            TextPictures.keepLines(request, write, note);
            request.person().ifPresent(person -> DraftStore.drop(write, person.id(), Optional.empty()));
            return Saved.to("/notes/" + note.id()).saying("The note is kept." + Remarks.said(kept.remarks()));
        });
    }

    static Answer change(Request request, Stored<Note> old) throws Exception {
        FormReader form = request.form();
        Words tasks = tasks(form);
        Optional<Note> edited = form.edited(old.value(), COLUMNS)
                .map(note -> Shape.of(Note.class).with(note, "tasks", tasks));
        return request.save(write -> {
            SaveNote.Saved kept =
                    SaveNote.save(write, Optional.of(new Shown(old.row(), form.version())), edited.orElseThrow());
            TextPictures.keepLines(request, write, kept.note().value());
            request.person()
                    .ifPresent(person -> DraftStore.drop(
                            write, person.id(), Optional.of(old.value().id())));
            return Saved.to("/notes/" + old.value().id()).saying("The note is saved." + Remarks.said(kept.remarks()));
        });
    }

    private static Answer another(FormReader form) {
        int rows = 0;
        while (rows < TASKS_MOST - 1 && form.has("task." + rows)) {
            rows++;
        }
        return new Answer.Again(Map.of("task." + rows, List.of()), "");
    }

    /** The tasks of all rows; one that is named twice is taken once. The fields of "Take the log" are read over. */
    private static Words tasks(FormReader form) {
        form.text("span");
        form.ticked("money");
        Map<String, String> tasks = new LinkedHashMap<>();
        for (int i = 0; i < TASKS_MOST; i++) {
            form.read("task." + i, Id.class).ifPresent(id -> tasks.putIfAbsent(id.folded(), id.value()));
        }
        return new Words(List.copyOf(tasks.values()));
    }
}
