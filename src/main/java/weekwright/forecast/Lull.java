package weekwright.forecast;

/**
 * Changes of the project that come in a row, while somebody types say: what the next one would throw away is not drawn. Times are those
 * of {@link System#nanoTime}. Not safe for use from several threads.
 */
final class Lull {
    /** Changes nearer together than this come in a row. */
    private static final long ROW_NANOS = 1_000_000_000L;
    /** As long as this nothing must have changed. */
    private static final long LULL_NANOS = 300_000_000L;
    /** Longer than this nobody waits for a row to end. */
    private static final long LONGEST_NANOS = 3_000_000_000L;

    private long changedAt;
    private boolean inRow;

    void changed(long now) {
        inRow = now - changedAt < ROW_NANOS;
        changedAt = now;
    }

    /** Nanoseconds to wait now, for one who has waited since then; 0 once the row has ended. */
    long left(long since, long now) {
        if (inRow) {
            long left = Math.min(LULL_NANOS - (now - changedAt), LONGEST_NANOS - (now - since));
            if (left > 0) {
                return left;
            }
            inRow = false;
        }
        return 0;
    }
}
