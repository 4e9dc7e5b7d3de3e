package weekwright.notes;

import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.References;
import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Keeps a picture of a note; adds or changes its line. The file is there before. */
public final class KeepPhoto {
    private KeepPhoto() {}

    /** @param shown the row that is changed; empty adds */
    public static Stored<Photo> keep(Write write, Optional<Shown> shown, Photo photo) throws Rejected, Stale {
        Problems problems = new Problems();
        NoteRules.check(photo, problems);
        References.check(write, PhotoStore.TABLE.shape(), photo, problems);
        boolean twice = PhotoStore.TABLE.where(write, "note", photo.note().value()).stream()
                .filter(other -> shown.map(s -> s.row() != other.row()).orElse(true))
                .anyMatch(other -> other.value().file().equals(photo.file()));
        if (twice) {
            problems.fault("note", photo.note().value(), "has this picture already", "choose another note");
        }
        NoteStore.TABLE
                .find(write, photo.note())
                .ifPresent(note -> NoteRules.seenWithWords(note.value(), photo, problems));
        Faults.refuse(problems);
        return shown.isPresent()
                ? PhotoStore.TABLE.update(write, shown.get().row(), shown.get().version(), photo)
                : PhotoStore.TABLE.insert(write, photo);
    }
}
