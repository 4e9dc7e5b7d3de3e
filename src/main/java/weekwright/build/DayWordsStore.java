package weekwright.build;

import java.util.Optional;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where the words of day sheets are kept: the table {@code day_words}. */
public final class DayWordsStore {
    public static final Table<DayWords> TABLE = new Table<>("day_words", DayWords.class);

    private DayWordsStore() {}

    /** Those of a task. */
    public static Optional<Stored<DayWords>> of(Read read, Id task) {
        return TABLE.where(read, "task", task.value()).stream().findFirst();
    }
}
