package weekwright.engine.plan;

import java.util.Arrays;
import weekwright.engine.simulate.FixedWork;

/**
 * The serial schedule generation scheme (Kelley 1963; Kolisch 1996, European Journal of Operational Research 90:320-333): takes tasks
 * from a list in which each stands after all it follows, and starts each on the first day on which what it follows is over and the
 * equipment is free for all its days. Among its schedules is always a best one for any measure that grows with the landings.
 *
 * <p>Free equipment is kept by day, four kinds to a {@code long}: 15 bits each and one above that stays set while enough is left.
 * Cost: tasks × (days looked at + links). One per thread.
 */
final class SerialBuilder {
    private static final int KINDS = 4;
    private static final int BITS = 16;
    private static final int MOST = (1 << (BITS - 1)) - 1;
    private static final long GUARDS = 0x8000_8000_8000_8000L;

    final int count;
    final int[] days;
    /** Links into task t: positions inStart[t] to inStart[t + 1] - 1. */
    private final int[] inStart;

    private final int[] inFrom;
    private final int[] inWait;
    private final int groups;
    private final long[][] need;
    private final long[] all;
    private final long[][] free;
    private int touched;

    /** @param backwards with time turned round: what follows comes first, so that a list is built from its end to the left */
    SerialBuilder(FixedWork work, boolean backwards) {
        days = work.days();
        count = days.length;
        int[] from = backwards ? work.to() : work.from();
        int[] to = backwards ? work.from() : work.to();
        int links = from.length;
        inStart = new int[count + 1];
        for (int t : to) {
            inStart[t + 1]++;
        }
        for (int t = 0; t < count; t++) {
            inStart[t + 1] += inStart[t];
        }
        inFrom = new int[links];
        inWait = new int[links];
        int[] fill = inStart.clone();
        int longest = 1;
        for (int l = 0; l < links; l++) {
            inFrom[fill[to[l]]] = from[l];
            inWait[fill[to[l]]++] = work.waitDays()[l];
            longest += work.waitDays()[l];
        }
        for (int d : days) {
            longest += d;
        }
        int kinds = work.quantity().length;
        groups = (kinds + KINDS - 1) / KINDS;
        need = new long[groups][count];
        all = new long[groups];
        free = new long[groups][longest];
        for (int q = 0; q < kinds; q++) {
            int shift = q % KINDS * BITS;
            all[q / KINDS] |= (long) Math.min(MOST, work.quantity()[q]) << shift;
            for (int t = 0; t < count; t++) {
                need[q / KINDS][t] |= (long) Math.min(MOST, work.need()[q][t]) << shift;
            }
        }
        for (int g = 0; g < groups; g++) {
            Arrays.fill(free[g], all[g] | GUARDS);
        }
    }

    /**
     * Builds a schedule.
     *
     * @param list all tasks, each after all it follows
     * @param start filled with first days from 0
     * @return the day on which everything is over
     */
    int build(int[] list, int[] start) {
        for (int g = 0; g < groups; g++) {
            Arrays.fill(free[g], 0, touched, all[g] | GUARDS);
        }
        int end = 0;
        for (int t : list) {
            int day = 0;
            for (int i = inStart[t]; i < inStart[t + 1]; i++) {
                int before = inFrom[i];
                day = Math.max(day, start[before] + days[before] + inWait[i]);
            }
            day = place(t, day);
            start[t] = day;
            end = Math.max(end, day + days[t]);
        }
        touched = end;
        return end;
    }

    private int place(int t, int earliest) {
        int day = earliest;
        for (int g = 0; g < groups; g++) {
            long wanted = need[g][t];
            if (wanted == 0) {
                continue;
            }
            int fits = firstFit(free[g], wanted, day, days[t]);
            if (fits != day && g > 0) {
                // another kind of equipment moved it: all are looked at again from there
                day = fits;
                g = -1;
            } else {
                day = fits;
            }
        }
        for (int g = 0; g < groups; g++) {
            long wanted = need[g][t];
            for (int d = day; wanted != 0 && d < day + days[t]; d++) {
                free[g][d] -= wanted;
            }
        }
        return day;
    }

    private static int firstFit(long[] free, long wanted, int earliest, int length) {
        int day = earliest;
        int d = day + length - 1;
        while (d >= day) {
            if ((free[d] - wanted & GUARDS) == GUARDS) {
                d--;
            } else {
                day = d + 1;
                d = day + length - 1;
            }
        }
        return day;
    }
}
