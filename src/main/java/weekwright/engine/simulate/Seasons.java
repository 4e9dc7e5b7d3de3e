package weekwright.engine.simulate;

import java.util.ArrayList;
import java.util.List;

/** The distinct seasons of the tasks, and on which days each is open. */
final class Seasons {
    private final Calendar calendar;
    private final List<Integer> keys = new ArrayList<>();
    private final List<int[]> open = new ArrayList<>();

    Seasons(Calendar calendar) {
        this.calendar = calendar;
    }

    /** The number of a season from-to (month * 100 + day, 0 for no bound), -1 for none. */
    int of(int from, int to) {
        if (from == 0 && to == 0) {
            return -1;
        }
        int key = from * 10_000 + to;
        if (!keys.contains(key)) {
            keys.add(key);
            open.add(calendar.nextOpen(from, to));
        }
        return keys.indexOf(key);
    }

    /** By day, the bits of the seasons that are closed, see {@link #bit}. */
    long[] closed() {
        long[] closed = new long[calendar.days];
        for (int season = 0; season < open.size(); season++) {
            for (int day = 0; day < closed.length; day++) {
                closed[day] |= open.get(season)[day] == day ? 0 : bit(season);
            }
        }
        return closed;
    }

    /** The bit of a season, which may be that of others too; none for no season. */
    static long bit(int season) {
        return season < 0 ? 0 : 1L << season % Long.SIZE;
    }

    /** By season and day: the first open day on or after it, the number of days if none. */
    int[][] nextOpen() {
        return open.toArray(int[][]::new);
    }
}
