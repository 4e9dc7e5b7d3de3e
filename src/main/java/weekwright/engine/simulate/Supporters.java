package weekwright.engine.simulate;

import java.util.Arrays;

/**
 * Who joins and who leaves in the months of one trial (rules 76 to 81). Who joins depends on luck alone, so it is drawn once for both
 * funding answers; who leaves depends on how many are there and on the empty slots too, and is drawn again only where these differ.
 */
final class Supporters {
    private final Setup setup;
    private final Luck luck;
    private final int levels;
    /** Factor by which the leaving share grows with so many empty slots in a month. */
    private final double[] emptyFactor;

    private final double[] joining;
    /** Months from the as-of month on for which {@link #joined} holds. */
    private int known;
    /** By month and level. */
    private final int[] joined;
    /** By month and level, λ of the month. */
    private final double[] rate;

    /** By month and level, what the last draw of those who leave was asked for and what it said. */
    private final int[] askedThere;

    private final int[] askedEmpty;
    private final int[] left;

    Supporters(Setup setup, Luck luck) {
        this.setup = setup;
        this.luck = luck;
        levels = setup.funds.levels;
        emptyFactor = new double[setup.calendar.slots.length + 1];
        for (int k = 0; k < emptyFactor.length; k++) {
            emptyFactor[k] = StrictMath.pow(setup.inputs.publishing().emptyLeaving(), k);
        }
        int all = setup.calendar.months.length * levels;
        joining = new double[levels];
        joined = new int[all];
        rate = new double[all];
        askedThere = new int[all];
        askedEmpty = new int[all];
        left = new int[all];
    }

    /** Before the first day of a trial. */
    void begin() {
        known = 0;
        System.arraycopy(luck.joining, 0, joining, 0, levels);
        Arrays.fill(askedThere, -1);
    }

    /** How many join a level in a month; the as-of month is month 0 and only what is left of it counts. */
    int joined(int month, int level) {
        for (; known <= month; known++) {
            draw(known);
        }
        return joined[month * levels + level];
    }

    private void draw(int month) {
        double drift = luck.joiningDrift;
        for (int i = 0; i < levels; i++) {
            if (month > 0 && drift > 0) {
                joining[i] *= LevelHistory.drift(drift, u(month, i, 2));
            }
            rate[month * levels + i] = joining[i];
            joined[month * levels + i] = LevelHistory.joined(joining[i], share(month), u(month, i, 3));
        }
    }

    /** How many of those there on the 1st and not gone yet leave a level in a month with so many empty slots. */
    int left(int month, int level, int there, int empty) {
        int k = month * levels + level;
        if (askedThere[k] != there || askedEmpty[k] != empty) {
            askedThere[k] = there;
            askedEmpty[k] = empty;
            double c = luck.leaving[level];
            c = empty == 0 ? c : StrictMath.min(1, c * emptyFactor[empty]);
            left[k] = LevelHistory.left(there, c, share(month), u(month, level, 4));
        }
        return left[k];
    }

    /**
     * Who comes in a month with surges that bring so many months of usual joining, beside those of {@link #joined}.
     *
     * @param months usual months' worth
     */
    int joinedBySurge(int month, int level, double months) {
        joined(month, level);
        return Inverse.poisson(
                rate[month * levels + level] * months,
                Streams.uniform(luck.trialKey, setup.funds.surges.joinedKey[level], setup.calendar.months[month]));
    }

    /** How many of those who came with a surge leave in a month; {@code age} tells apart who came when. */
    int newcomersLeft(int month, int level, int there, int age, int empty) {
        if (there == 0) {
            return 0;
        }
        double c = StrictMath.min(1, luck.leaving[level] * emptyFactor[empty]);
        // addressed by month and the month in which they came
        long index = setup.calendar.months[month] * (long) Surges.NEW_MONTHS + age;
        return LevelHistory.left(
                there,
                Surges.newcomersLeave(c),
                share(month),
                Streams.uniform(luck.trialKey, setup.funds.surges.leftKey[level], index));
    }

    private double share(int month) {
        return month == 0 ? setup.funds.restOfMonth : 1;
    }

    private double u(int month, int level, int what) {
        return Streams.uniform(luck.trialKey, setup.funds.key[level][what], setup.calendar.months[month]);
    }
}
