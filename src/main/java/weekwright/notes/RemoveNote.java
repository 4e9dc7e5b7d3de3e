package weekwright.notes;

import java.util.List;
import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Removes a build note with the lines of its pictures; the pictures' files stay. */
public final class RemoveNote {
    private RemoveNote() {}

    /** @return how many pictures it had */
    public static int remove(Write write, Shown shown, Note note) throws Stale {
        List<Stored<Photo>> photos =
                PhotoStore.TABLE.where(write, "note", note.id().value());
        for (Stored<Photo> photo : photos) {
            PhotoStore.TABLE.delete(write, photo.row(), photo.version());
        }
        NoteStore.TABLE.delete(write, shown.row(), shown.version());
        return photos.size();
    }
}
