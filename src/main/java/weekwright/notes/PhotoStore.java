package weekwright.notes;

import weekwright.db.Table;

/** Where photos are kept: the table {@code photos}. */
public final class PhotoStore {
    public static final Table<Photo> TABLE = new Table<>("photos", Photo.class);

    private PhotoStore() {}
}
