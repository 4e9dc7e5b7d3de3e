package weekwright.engine.simulate;

import java.util.Arrays;

/**
 * The people of one day: how long each is there, how much of it is used, and who works on what (rules 37 and 38). Hours within a
 * day may be arranged freely, but all that became possible at minute e of the day or later has together at most (leaving - e) of each
 * person.
 */
final class People {
    /** Nobody starts on less (rules 38, 39). */
    static final int HALF_HOUR = 30;

    private final Setup setup;
    private final Luck luck;
    private final int count;
    /** Stated minutes of the day: on a day of work in one go all of them are given (rules 120, 127). */
    private final int[] stated;

    /** By week line of the crew: minutes kept for it. */
    private final int[] reserved;

    final int[] leaving;
    final int[] used;
    /** Who is there at all today. */
    int there;
    /** Who has half an hour left. */
    int free;
    /** By person: when in the order of today's work he was first taken; the smaller the higher the rank of that task. */
    final int[] taken;

    private int takings;
    /** Of each person, how many stretches today could not be worked from the morning on, from when they could, and how long they were. */
    private final int[] lateCount;

    private final int[] lateFrom;
    private final int[] lateMinutes;
    private static final int MOST_LATE = 48;

    /** What {@link #choose} found. */
    int chosen;

    int clock;

    People(Setup setup, Luck luck) {
        this.setup = setup;
        this.luck = luck;
        count = setup.crowd.count;
        leaving = new int[count];
        stated = new int[count];
        reserved = new int[setup.own.count];
        used = new int[count];
        taken = new int[count];
        lateCount = new int[count];
        lateFrom = new int[count * MOST_LATE];
        lateMinutes = new int[count * MOST_LATE];
    }

    /** Opens a day; the unnamed hands of a gathering are added by {@link #gather}. */
    void open(int day) {
        int named = setup.crowd.named;
        there = 0;
        free = 0;
        takings = 0;
        int at = day * named;
        int turnout = setup.turnout.at(day);
        for (int p = 0; p < named; p++) {
            int whole = setup.calendar.minutes[at + p];
            int minutes = (whole * luck.turnout[turnout + p] + Turnout.WHOLE / 2) / Turnout.WHOLE;
            if (day == 0 && setup.calendar.worked[p] > 0) {
                whole = Math.max(0, whole - setup.calendar.worked[p]);
                minutes = Math.max(0, minutes - setup.calendar.worked[p]);
            }
            stated[p] = Math.max(whole, minutes);
            leaving[p] = minutes;
            used[p] = 0;
            lateCount[p] = 0;
            taken[p] = Integer.MAX_VALUE;
            if (minutes > 0) {
                there |= 1 << p;
                free |= minutes >= HALF_HOUR ? 1 << p : 0;
            }
        }
    }

    /** Unnamed hands come for the day. */
    void gather(int hands, int minutes) {
        int from = setup.crowd.named;
        for (int p = from; p < Math.min(count, from + hands); p++) {
            leaving[p] = minutes;
            stated[p] = minutes;
            used[p] = 0;
            lateCount[p] = 0;
            taken[p] = Integer.MAX_VALUE;
            there |= leaving[p] > 0 ? 1 << p : 0;
            free |= leaving[p] >= HALF_HOUR ? 1 << p : 0;
        }
    }

    int left(int p) {
        return leaving[p] - used[p];
    }

    /** Minutes that a person can give to what became possible at minute {@code e}. */
    int available(int p, int e) {
        int minutes = leaving[p] - used[p];
        if (e == 0) {
            return minutes;
        }
        minutes = Math.min(minutes, leaving[p] - e);
        return lateCount[p] == 0 ? minutes : besideLate(p, e, minutes);
    }

    /** As {@link #available} for somebody who has worked already today on what was not possible from the morning on. */
    private int besideLate(int p, int e, int most) {
        int minutes = Math.min(most, leaving[p] - e - usedFrom(p, e));
        for (int k = p * MOST_LATE; k < p * MOST_LATE + lateCount[p]; k++) {
            if (lateFrom[k] < e) {
                minutes = Math.min(minutes, leaving[p] - lateFrom[k] - usedFrom(p, lateFrom[k]));
            }
        }
        return minutes;
    }

    /** Minutes used on what could not be worked before minute {@code e}. */
    private int usedFrom(int p, int e) {
        int sum = 0;
        for (int k = p * MOST_LATE; k < p * MOST_LATE + lateCount[p]; k++) {
            sum += lateFrom[k] >= e ? lateMinutes[k] : 0;
        }
        return sum;
    }

    /** As {@link #available} of the hours that he has stated. */
    int availableStated(int p, int e) {
        return available(p, e) + stated[p] - leaving[p];
    }

    /** Uses minutes of a person on what became possible at minute {@code e}. */
    void use(int p, int minutes, int e) {
        use(p, minutes);
        if (e > 0 && minutes > 0 && lateCount[p] < MOST_LATE) {
            int k = p * MOST_LATE + lateCount[p]++;
            lateFrom[k] = e;
            lateMinutes[k] = minutes;
        }
    }

    void use(int p, int minutes) {
        used[p] += minutes;
        if (taken[p] == Integer.MAX_VALUE) {
            taken[p] = takings++;
        }
        if (leaving[p] - used[p] < HALF_HOUR) {
            free &= ~(1 << p);
        }
    }

    /** Minutes left of those that a person has stated. */
    int statedLeft(int p) {
        return Math.max(stated[p], leaving[p]) - used[p];
    }

    /** Somebody stays for what has to be done today, as long as he has stated at most: turnout does not shorten it (rule 120). */
    void stay(int p, int minutes) {
        int until = Math.min(Math.max(stated[p], leaving[p]), used[p] + minutes);
        if (until > leaving[p]) {
            leaving[p] = until;
            there |= 1 << p;
            if (leaving[p] - used[p] >= HALF_HOUR) {
                free |= 1 << p;
            }
        }
    }

    /** Keeps minutes of a person for a week line of the crew until {@link #release}. */
    void reserve(int line, int p, int minutes) {
        use(p, minutes);
        reserved[line] = minutes;
    }

    /** Frees what is kept for a week line; how many minutes that were. */
    int release(int line, int p) {
        int minutes = reserved[line];
        if (minutes > 0) {
            giveBack(p, minutes);
            reserved[line] = 0;
        }
        return minutes;
    }

    /** Gives back minutes set aside in the morning. */
    void giveBack(int p, int minutes) {
        used[p] -= minutes;
        if (leaving[p] - used[p] >= HALF_HOUR) {
            free |= 1 << p;
        }
    }

    /**
     * Chooses up to {@code hands} people out of a set: who worked on it last, then most hours left today, then fewest trades, then
     * the order of the crew; each has half an hour. Sets {@link #chosen} and {@link #clock}, the least of their minutes.
     *
     * @param first taken before all others (people whose own week line says so)
     * @return how many were found
     */
    int choose(int candidates, int hands, int lastOn, int first, int e) {
        int rest = candidates & free;
        if (e == 0 && first == 0) {
            return chooseSince(rest, hands, lastOn);
        }
        chosen = 0;
        clock = Integer.MAX_VALUE;
        int n = 0;
        while (n < hands && rest != 0) {
            int best = -1;
            int bestKey = -1;
            int bestMinutes = 0;
            for (int bits = rest; bits != 0; bits &= bits - 1) {
                int p = Integer.numberOfTrailingZeros(bits);
                int minutes = available(p, e);
                if (minutes < HALF_HOUR) {
                    rest &= ~(1 << p);
                    continue;
                }
                int key = ((first >>> p & 1) << 30)
                        | ((lastOn >>> p & 1) << 29)
                        | (left(p) << 8)
                        | setup.crowd.preference[p];
                if (key > bestKey) {
                    bestKey = key;
                    best = p;
                    bestMinutes = minutes;
                }
            }
            if (best < 0) {
                break;
            }
            chosen |= 1 << best;
            rest &= ~(1 << best);
            clock = Math.min(clock, bestMinutes);
            n++;
        }
        return n;
    }

    /** As {@link #choose} for what was possible from the morning on: all who are free have half an hour for it. */
    private int chooseSince(int candidates, int hands, int lastOn) {
        int n = Integer.bitCount(candidates);
        if (n <= hands) {
            chosen = candidates;
        } else {
            int before = candidates & lastOn;
            int more = hands - Integer.bitCount(before);
            chosen = more >= 0 ? before : 0;
            int rest = more >= 0 ? candidates & ~before : before;
            for (int k = more >= 0 ? more : hands; k > 0; k--) {
                int best = 1 << longestLeft(rest);
                chosen |= best;
                rest &= ~best;
            }
            n = hands;
        }
        clock = Integer.MAX_VALUE;
        for (int bits = chosen; bits != 0; bits &= bits - 1) {
            clock = Math.min(clock, left(Integer.numberOfTrailingZeros(bits)));
        }
        return n;
    }

    private int longestLeft(int candidates) {
        int best = -1;
        int bestKey = -1;
        for (int bits = candidates; bits != 0; bits &= bits - 1) {
            int p = Integer.numberOfTrailingZeros(bits);
            int key = (left(p) << 8) | setup.crowd.preference[p];
            if (key > bestKey) {
                bestKey = key;
                best = p;
            }
        }
        return best;
    }

    /** Of a set, the one with most hours left who has {@code least} minutes from minute {@code e} on; -1 if none. */
    int mostLeft(int candidates, int least, int e) {
        int best = -1;
        for (int bits = candidates & there; bits != 0; bits &= bits - 1) {
            int p = Integer.numberOfTrailingZeros(bits);
            if (available(p, e) >= least && (best < 0 || left(p) > left(best))) {
                best = p;
            }
        }
        return best;
    }

    /** Of a set, the one who was taken first today (by the task of highest rank); -1 if none of them is there. */
    int takenFirst(int candidates) {
        int best = -1;
        for (int bits = candidates & there; bits != 0; bits &= bits - 1) {
            int p = Integer.numberOfTrailingZeros(bits);
            if (best < 0 || taken[p] < taken[best]) {
                best = p;
            }
        }
        return best;
    }

    /** The latest used minute of a set. */
    int latest(int set) {
        int latest = 0;
        for (int bits = set; bits != 0; bits &= bits - 1) {
            latest = Math.max(latest, used[Integer.numberOfTrailingZeros(bits)]);
        }
        return latest;
    }

    /** When the last of a set leaves today, 0 for nobody. */
    int longestDay(int set) {
        int longest = 0;
        for (int bits = set; bits != 0; bits &= bits - 1) {
            longest = Math.max(longest, leaving[Integer.numberOfTrailingZeros(bits)]);
        }
        return longest;
    }

    /** The longest day that all of a set ever have together, an upper bound: the least of their longest days. */
    int longestTogether(int set) {
        int least = Integer.MAX_VALUE;
        for (int bits = set; bits != 0; bits &= bits - 1) {
            int p = Integer.numberOfTrailingZeros(bits);
            least = Math.min(least, p < setup.crowd.named ? setup.calendar.longest[p] : leaving[p]);
        }
        return least;
    }

    /** For tests: nobody has used more than he has. */
    @Override
    public String toString() {
        return "leaving " + Arrays.toString(leaving) + " used " + Arrays.toString(used);
    }
}
