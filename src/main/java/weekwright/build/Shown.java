package weekwright.build;

import weekwright.db.Stored;

/** A row as somebody was shown it: an edit or a removal is refused when the row has moved on since. */
public record Shown(long row, long version) {
    public static Shown of(Stored<?> stored) {
        return new Shown(stored.row(), stored.version());
    }
}
