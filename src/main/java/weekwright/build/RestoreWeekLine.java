package weekwright.build;

import java.util.Optional;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Brings back a line that was taken off the week sheet. */
public final class RestoreWeekLine {
    private RestoreWeekLine() {}

    /** @return the line, or empty when it was never removed or stands again */
    public static Optional<Stored<WeekLine>> restore(Write write, long row) {
        return WeekLineStore.TABLE.restore(write, row);
    }
}
