package weekwright.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;
import weekwright.files.csv.NoteFile;
import weekwright.notes.KeepPhoto;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;
import weekwright.notes.SaveNote;

/**
 * Reads build notes back that were changed outside as files, or written there: a note that is there gets a new version where
 * anything differs, one that is not is added. Pictures that a file does not name stay.
 */
public final class TakeNotes {
    private TakeNotes() {}

    /** How many were changed and added, and how many stood there as they are. */
    public record Done(int changed, int added, int same) {}

    /**
     * @param texts of the files by their names
     * @param isThere whether a picture of that name lies in the project's folder
     * @throws Rejected with the faults of all files; nothing is kept then
     */
    public static Done take(Write write, Map<String, String> texts, Predicate<String> isThere) throws Rejected, Stale {
        Problems problems = new Problems();
        Map<String, NoteFile.Result> read = new LinkedHashMap<>();
        Map<String, String> named = new LinkedHashMap<>();
        texts.forEach((file, text) -> {
            NoteFile.Result result = NoteFile.read(file, text, problems);
            read.put(file, result);
            result.note().ifPresent(note -> {
                String other = named.putIfAbsent(note.id().folded(), file);
                if (other != null) {
                    problems.add(
                            Problem.fault("id", note.id().value(), "stands in " + other + " too", "send one of them")
                                    .at(file, 0));
                }
            });
        });
        int changed = 0;
        int added = 0;
        for (Map.Entry<String, NoteFile.Result> entry : read.entrySet()) {
            if (entry.getValue().note().isEmpty()) {
                continue;
            }
            Note note = entry.getValue().note().get();
            Optional<Stored<Note>> standing = NoteStore.TABLE.find(write, note.id());
            try {
                boolean differs = take(write, note, entry.getValue().photos(), standing, isThere);
                changed += differs && standing.isPresent() ? 1 : 0;
                added += standing.isEmpty() ? 1 : 0;
            } catch (Rejected e) {
                e.problems().forEach(problem -> problems.add(problem.at(entry.getKey(), 0)));
            }
        }
        Rejected.ifFaults(problems);
        return new Done(changed, added, texts.size() - changed - added);
    }

    private static boolean take(
            Write write, Note note, List<Photo> photos, Optional<Stored<Note>> standing, Predicate<String> isThere)
            throws Rejected, Stale {
        boolean differs = false;
        if (standing.isEmpty()) {
            SaveNote.save(write, Optional.empty(), note);
        }
        List<Stored<Photo>> kept =
                new ArrayList<>(PhotoStore.TABLE.where(write, "note", note.id().value()));
        for (Photo photo : photos) {
            Optional<Stored<Photo>> old = kept.stream()
                    .filter(one -> one.value().file().equals(photo.file()))
                    .findFirst();
            if (old.map(one -> one.value().equals(photo)).orElse(false)) {
                continue;
            }
            if (old.isEmpty() && !isThere.test(photo.file())) {
                throw new Rejected(Problem.fault(
                        "photo",
                        photo.file(),
                        "is not in photos/",
                        "add the picture on the note's page, or take the line out"));
            }
            KeepPhoto.keep(write, old.map(Shown::of), photo);
            differs = true;
        }
        if (standing.isPresent() && !standing.get().value().equals(note)) {
            SaveNote.save(write, standing.map(Shown::of), note);
            differs = true;
        }
        return differs;
    }
}
