package weekwright.engine.simulate;

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
    /** Named people first, then the unnamed hands of gatherings. */
    private final Person[] person;

    private final int named;
    /** By week line of the crew: minutes kept for it. */
    private final int[] reserved;

    /** Who is there at all today. */
    int there;
    /** Who has half an hour left. */
    int free;

    private int takings;

    /** What {@link #choose} found. */
    int chosen;

    int clock;

    People(Setup setup, Luck luck) {
        this.setup = setup;
        this.luck = luck;
        named = setup.crowd.named;
        person = new Person[setup.crowd.count];
        for (int p = 0; p < person.length; p++) {
            person[p] = new Person(setup.crowd, p);
        }
        reserved = new int[setup.own.count];
    }

    /** Opens a day; the unnamed hands of a gathering are added by {@link #gather}. */
    void open(int day) {
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
            come(person[p], minutes, Math.max(whole, minutes));
        }
    }

    private void come(Person one, int minutes, int stated) {
        one.open(minutes, stated);
        there |= minutes > 0 ? one.bit : 0;
        free |= minutes >= HALF_HOUR ? one.bit : 0;
    }

    /** Unnamed hands come for the day. */
    void gather(int hands, int minutes) {
        for (int p = named; p < Math.min(person.length, named + hands); p++) {
            come(person[p], minutes, minutes);
        }
    }

    int left(int p) {
        return person[p].left();
    }

    /** Minutes that a person can give to what became possible at minute {@code e}. */
    int available(int p, int e) {
        return person[p].available(e);
    }

    /** As {@link #available} of the hours that he has stated. */
    int availableStated(int p, int e) {
        return person[p].available(e) + person[p].stated - person[p].leaving;
    }

    /** Pay for an hour of a person in minor units. */
    long pay(int p) {
        return person[p].pay;
    }

    /** Uses minutes of a person on what became possible at minute {@code e}. */
    void use(int p, int minutes, int e) {
        use(p, minutes);
        if (e > 0) {
            person[p].late(minutes, e);
        }
    }

    void use(int p, int minutes) {
        Person one = person[p];
        one.used += minutes;
        one.taken = Math.min(one.taken, takings++);
        free &= one.left() < HALF_HOUR ? ~one.bit : -1;
    }

    /** Minutes left of those that a person has stated. */
    int statedLeft(int p) {
        return person[p].most() - person[p].used;
    }

    /** Somebody stays for what has to be done today, as long as he has stated at most: turnout does not shorten it (rule 120). */
    void stay(int p, int minutes) {
        Person one = person[p];
        int until = Math.min(one.most(), one.used + minutes);
        if (until > one.leaving) {
            one.leaving = until;
            there |= one.bit;
            if (one.left() >= HALF_HOUR) {
                free |= one.bit;
            }
        }
    }

    /** Keeps minutes of a person for a week line of the crew until {@link #release}. */
    void reserve(int line, int p, int minutes) {
        use(p, minutes);
        person[p].kept += minutes;
        reserved[line] = minutes;
    }

    /** Minutes kept for a week line. */
    int reserved(int line) {
        return reserved[line];
    }

    /** Frees what is kept for a week line; how many minutes that were. */
    int release(int line, int p) {
        int minutes = reserved[line];
        if (minutes > 0) {
            giveBack(p, minutes);
            person[p].kept -= minutes;
            reserved[line] = 0;
        }
        return minutes;
    }

    /** Gives back minutes set aside in the morning. */
    void giveBack(int p, int minutes) {
        Person one = person[p];
        one.used -= minutes;
        if (one.left() >= HALF_HOUR) {
            free |= one.bit;
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
            Person best = null;
            int bestKey = -1;
            int bestMinutes = 0;
            for (int bits = rest; bits != 0; bits &= bits - 1) {
                Person one = person[Integer.numberOfTrailingZeros(bits)];
                int minutes = one.available(e);
                if (minutes < HALF_HOUR) {
                    rest &= ~one.bit;
                    continue;
                }
                int key = ((first & one.bit) != 0 ? 1 << 30 : 0)
                        | ((lastOn & one.bit) != 0 ? 1 << 29 : 0)
                        | (one.left() << 8)
                        | one.preference;
                if (key > bestKey) {
                    bestKey = key;
                    best = one;
                    bestMinutes = minutes;
                }
            }
            if (best == null) {
                break;
            }
            chosen |= best.bit;
            rest &= ~best.bit;
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
                int best = longestLeft(rest);
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
        int best = 0;
        int bestKey = -1;
        for (int bits = candidates; bits != 0; bits &= bits - 1) {
            Person one = person[Integer.numberOfTrailingZeros(bits)];
            int key = (one.left() << 8) | one.preference;
            if (key > bestKey) {
                bestKey = key;
                best = one.bit;
            }
        }
        return best;
    }

    /** Of a set, the one with most hours left who has {@code least} minutes from minute {@code e} on; -1 if none. */
    int mostLeft(int candidates, int least, int e) {
        int best = -1;
        int most = 0;
        for (int bits = candidates & there; bits != 0; bits &= bits - 1) {
            int p = Integer.numberOfTrailingZeros(bits);
            Person one = person[p];
            if (one.available(e) >= least && (best < 0 || one.left() > most)) {
                best = p;
                most = one.left();
            }
        }
        return best;
    }

    /** Of a set, the one who was taken first today (by the task of highest rank); -1 if none of them is there. */
    int takenFirst(int candidates) {
        int first = Integer.MAX_VALUE;
        for (int bits = candidates & there; bits != 0; bits &= bits - 1) {
            int p = Integer.numberOfTrailingZeros(bits);
            first = Math.min(first, person[p].taken << 5 | p);
        }
        return first == Integer.MAX_VALUE ? -1 : first & 31;
    }

    /** The latest used minute of a set; what is only kept for a line may lie after it. */
    int latest(int set) {
        int latest = 0;
        for (int bits = set; bits != 0; bits &= bits - 1) {
            Person one = person[Integer.numberOfTrailingZeros(bits)];
            latest = Math.max(latest, one.used - one.kept);
        }
        return latest;
    }

    /** When the last of a set leaves today, 0 for nobody. */
    int longestDay(int set) {
        int longest = 0;
        for (int bits = set; bits != 0; bits &= bits - 1) {
            longest = Math.max(longest, person[Integer.numberOfTrailingZeros(bits)].leaving);
        }
        return longest;
    }

    /** The longest day that all of a set ever have together, an upper bound: the least of their longest days. */
    int longestTogether(int set) {
        int least = Integer.MAX_VALUE;
        for (int bits = set; bits != 0; bits &= bits - 1) {
            int p = Integer.numberOfTrailingZeros(bits);
            least = Math.min(least, p < named ? setup.calendar.longest[p] : person[p].leaving);
        }
        return least;
    }
}
