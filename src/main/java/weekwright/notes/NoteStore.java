package weekwright.notes;

import weekwright.db.Table;

/** Where notes are kept: the table {@code notes}. */
public final class NoteStore {
    public static final Table<Note> TABLE = new Table<>("notes", Note.class);

    private NoteStore() {}
}
