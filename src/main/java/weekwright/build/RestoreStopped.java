package weekwright.build;

import java.util.Optional;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Brings back a stopped day that was taken away. */
public final class RestoreStopped {
    private RestoreStopped() {}

    /** @return the row, or empty when it was never removed or stands again */
    public static Optional<Stored<Stopped>> restore(Write write, long row) {
        return StoppedStore.TABLE.restore(write, row);
    }
}
