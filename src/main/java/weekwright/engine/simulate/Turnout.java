package weekwright.engine.simulate;

import java.util.Arrays;
import weekwright.engine.Inputs;

/**
 * How much of the stated hours reaches the build (rule 120), in 1/1024 by person and week. A run of three simulated weeks is a run of
 * three past ones, so that an illness stays a spell; with fewer than eight weeks to tell of, one share a trial from N(0.8, 0.15²)
 * (trade judgement, no source), between a fifth and six fifths.
 */
final class Turnout {
    /** All stated hours. */
    static final int WHOLE = 1024;

    private static final int RUN_WEEKS = 3;
    private static final int ENOUGH_WEEKS = 8;
    private static final double PRIOR_MEAN = 0.8;
    private static final double PRIOR_DEVIATION = 0.15;
    private static final double LEAST = 0.2;
    private static final double MOST = 1.2;

    private final int people;
    /** First simulated week that is not on a Monday belongs to week 0; weeks count from the Monday before the as-of day. */
    private final int firstWeek;

    private final int weeks;
    /** By day, position of its shares in the drawn table. */
    private final int[] at;

    /** Past weeks by person; null for the prior, one entry for a fixed share. */
    private final int[][] past;

    private final long[] key;

    Turnout(Inputs inputs, Calendar calendar) {
        people = inputs.crew().size();
        int asOf = calendar.asOf;
        firstWeek = week(asOf);
        weeks = week(asOf + Math.max(0, calendar.days - 1)) - firstWeek + 1;
        at = new int[calendar.days];
        for (int day = 0; day < at.length; day++) {
            at[day] = (week(asOf + day) - firstWeek) * people;
        }
        past = new int[people][];
        key = new long[people];
        double fixed = inputs.model().turnout();
        for (int p = 0; p < people; p++) {
            String id = inputs.crew().get(p).id();
            key[p] = Streams.key(Streams.Purpose.TURNOUT, id);
            int[] told = told(inputs, id);
            past[p] = fixed >= 0 ? new int[] {share(fixed)} : told.length >= ENOUGH_WEEKS ? told : null;
        }
    }

    private static int[] told(Inputs inputs, String crew) {
        return inputs.turnout().stream()
                .filter(row -> row.crew().equals(crew))
                .flatMap(row -> row.weeks().stream())
                .mapToInt(Turnout::share)
                .toArray();
    }

    /** What is learned of a person. */
    static Learned.TurnoutOf of(Inputs inputs, String crew) {
        double fixed = inputs.model().turnout();
        int[] told = told(inputs, crew);
        if (fixed >= 0) {
            return new Learned.TurnoutOf(crew, fixed, 0, true);
        }
        if (told.length < ENOUGH_WEEKS) {
            return new Learned.TurnoutOf(crew, PRIOR_MEAN, 0, false);
        }
        double mean = Arrays.stream(told).average().orElseThrow() / WHOLE;
        return new Learned.TurnoutOf(crew, mean, told.length, false);
    }

    private static int share(double value) {
        return (int) StrictMath.round(value * WHOLE);
    }

    /** The number of the week of a date, Monday to Sunday. */
    private static int week(int date) {
        return Math.floorDiv(date + 3, 7);
    }

    /** Entries of {@link #draw}. */
    int size() {
        return people * weeks;
    }

    /** Position of a day's shares in the drawn table, one entry a person from there on. */
    int at(int day) {
        return at[day];
    }

    /** Draws the shares of all weeks. */
    void draw(long trialKey, int[] into) {
        for (int p = 0; p < people; p++) {
            int[] told = past[p];
            if (told == null) {
                double z = Inverse.normal(Streams.uniform(trialKey, key[p], 0));
                fill(into, p, share(StrictMath.min(MOST, StrictMath.max(LEAST, PRIOR_MEAN + PRIOR_DEVIATION * z))));
            } else if (told.length < RUN_WEEKS) {
                fill(into, p, told[0]);
            } else {
                for (int w = 0; w < weeks; ) {
                    int run = Math.floorDiv(firstWeek + w, RUN_WEEKS);
                    int from = (int) (Streams.uniform(trialKey, key[p], run) * (told.length - RUN_WEEKS + 1));
                    for (int k = Math.floorMod(firstWeek + w, RUN_WEEKS); k < RUN_WEEKS && w < weeks; k++, w++) {
                        into[w * people + p] = told[from + k];
                    }
                }
            }
        }
    }

    /** Sets the expected shares: each person's mean. */
    void expect(int[] into) {
        for (int p = 0; p < people; p++) {
            fill(into, p, mean(p));
        }
    }

    /** A person's mean share. */
    int mean(int p) {
        if (past[p] == null) {
            return share(PRIOR_MEAN);
        }
        long sum = 0;
        for (int week : past[p]) {
            sum += week;
        }
        return (int) ((sum + past[p].length / 2) / past[p].length);
    }

    private void fill(int[] into, int p, int share) {
        for (int w = 0; w < weeks; w++) {
            into[w * people + p] = share;
        }
    }
}
