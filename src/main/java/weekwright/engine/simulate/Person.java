package weekwright.engine.simulate;

/** One of the people of a day, named or not: how long he is there and what of it is used. An object for the reason of {@link TaskState}. */
final class Person {
    private static final int MOST_LATE = 48;

    /** His bit in sets of people. */
    final int bit;
    /** Place in the order "fewest trades, then crew list", larger is better. */
    final int preference;
    /** Pay for an hour in minor units. */
    final long pay;
    /** Minutes stated: on a day of work in one go all of them are given (rules 120, 127). */
    int stated;

    int leaving;
    int used;
    /** Of what is used, minutes that are only kept for the crew's own lines. */
    int kept;

    private static final int NOT_TAKEN = 1 << 20;

    /** When in the order of today's work he was first taken; the smaller the higher the rank of that task. */
    int taken;
    /** How many stretches today could not be worked from the morning on, from when they could, and how long they were. */
    private int lateCount;

    private final int[] lateFrom = new int[MOST_LATE];
    private final int[] lateMinutes = new int[MOST_LATE];

    Person(Crowd crowd, int p) {
        bit = 1 << p;
        preference = crowd.preference[p];
        pay = crowd.pay[p];
    }

    /** Comes for the day. */
    void open(int minutes, int statedMinutes) {
        leaving = minutes;
        stated = statedMinutes;
        used = 0;
        kept = 0;
        lateCount = 0;
        taken = NOT_TAKEN;
    }

    int left() {
        return leaving - used;
    }

    /** Minutes that he can give to what became possible at minute {@code e}. */
    int available(int e) {
        int minutes = leaving - used;
        if (e == 0) {
            return minutes;
        }
        minutes = Math.min(minutes, leaving - e);
        return lateCount == 0 ? minutes : besideLate(e, minutes);
    }

    /** As {@link #available} for somebody who has worked already today on what was not possible from the morning on. */
    private int besideLate(int e, int most) {
        int minutes = Math.min(most, leaving - e - usedFrom(e));
        for (int k = 0; k < lateCount; k++) {
            if (lateFrom[k] < e) {
                minutes = Math.min(minutes, leaving - lateFrom[k] - usedFrom(lateFrom[k]));
            }
        }
        return minutes;
    }

    /** Minutes used on what could not be worked before minute {@code e}. */
    private int usedFrom(int e) {
        int sum = 0;
        for (int k = 0; k < lateCount; k++) {
            sum += lateFrom[k] >= e ? lateMinutes[k] : 0;
        }
        return sum;
    }

    /** Minutes used are such on what became possible at minute {@code e} after the morning. */
    void late(int minutes, int e) {
        if (minutes > 0 && lateCount < MOST_LATE) {
            lateFrom[lateCount] = e;
            lateMinutes[lateCount++] = minutes;
        }
    }

    /** What can be used at most of what he has stated. */
    int most() {
        return Math.max(stated, leaving);
    }
}
