package weekwright.build;

import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Write;

/** Keeps what the crew writes on the day sheet of a task. */
public final class SaveDayWords {
    private SaveDayWords() {}

    /** @param shown the row that is changed; empty adds */
    public static void save(Write write, Optional<Shown> shown, DayWords row) throws Rejected, Stale {
        Problems problems = new Problems();
        References.check(write, DayWordsStore.TABLE.shape(), row, problems);
        Rejected.ifFaults(problems);
        if (shown.isPresent()) {
            DayWordsStore.TABLE.update(write, shown.get().row(), shown.get().version(), row);
        } else {
            DayWordsStore.TABLE.insert(write, row);
        }
    }
}
