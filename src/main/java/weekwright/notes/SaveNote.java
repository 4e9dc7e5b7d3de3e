package weekwright.notes;

import java.util.List;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.DateRules;
import weekwright.build.Faults;
import weekwright.build.References;
import weekwright.build.SettingsStore;
import weekwright.build.Shown;
import weekwright.build.TaskStore;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Keeps a build note; adds or changes it. */
public final class SaveNote {
    private SaveNote() {}

    /** The note as it was kept, and what was odd but possible. */
    public record Saved(Stored<Note> note, List<Problem> remarks) {}

    /** @param shown the row that is changed; empty adds */
    public static Saved save(Write write, Optional<Shown> shown, Note note) throws Rejected, Stale {
        Problems problems = new Problems();
        NoteRules.check(note, problems);
        NoteRules.textWithWords(note, problems);
        References.check(write, NoteStore.TABLE.shape(), note, problems);
        for (String task : note.tasks().list()) {
            if (TaskStore.TABLE.find(write, new Id(task)).isEmpty()) {
                problems.fault("tasks", task, "is no task of this project", "choose one of the list");
            }
        }
        DateRules.check(
                NoteStore.TABLE.shape(),
                note,
                SettingsStore.get(write).project().started(),
                problems);
        if (shown.isPresent()) {
            NoteRules.seenWithWords(
                    note,
                    PhotoStore.TABLE.where(write, "note", note.id().value()).stream()
                            .map(Stored::value)
                            .toList(),
                    problems);
        }
        boolean twin = NoteStore.TABLE.where(write, "date", note.date().toString()).stream()
                .filter(other -> shown.map(s -> s.row() != other.row()).orElse(true))
                .anyMatch(other -> other.value().title().equalsIgnoreCase(note.title()));
        if (twin) {
            problems.remark(
                    "title", note.title(), "is the title of another note of that day too", "both notes are kept");
        }
        Faults.refuse(problems);
        return new Saved(
                shown.isPresent()
                        ? NoteStore.TABLE.update(
                                write, shown.get().row(), shown.get().version(), note)
                        : NoteStore.TABLE.insert(write, note),
                problems.remarks());
    }
}
