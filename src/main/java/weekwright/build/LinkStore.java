package weekwright.build;

import java.util.List;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where links are kept: the table {@code links}. */
public final class LinkStore {
    public static final Table<Link> TABLE = new Table<>("links", Link.class);

    private LinkStore() {}

    /** What a task follows. */
    public static List<Stored<Link>> before(Read read, Id task) {
        return TABLE.where(read, "task", task.value());
    }

    /** What follows a task. */
    public static List<Stored<Link>> after(Read read, Id task) {
        return TABLE.where(read, "after", task.value());
    }
}
