package weekwright.engine;

import java.util.Arrays;
import java.util.List;

/**
 * What the trials of a forecast came to, one number a trial, in primitive arrays {@code [thing][trial]}. Things stand in the
 * order of {@link Inputs}: stage, task, episode and material indices are positions in its lists.
 *
 * <p>Dates are epoch days; {@link #LATER} means "not before the horizon" and sorts after every date. Money is in minor units.
 * Unless it says otherwise a field belongs to the answer "held for funds" (rule 89: all fields but work-first landings, the
 * chances of going under, and the runway are held for funds).
 *
 * <p>The arrays are filled by {@link weekwright.engine.simulate.Simulation} and are not to be changed by readers; they are
 * public because there are some hundred thousand numbers to look at. A finished outcome may be read by any thread.
 */
public final class Outcome {
    /** Later than every date: has not happened before the horizon. */
    public static final int LATER = Integer.MAX_VALUE;

    /** Empty entry of an index array. */
    public static final int NOBODY = -1;

    /** What a slot came to. */
    public enum Slot {
        OWN,
        OTHER,
        BANK,
        STANDBY,
        EMPTY
    }

    /** Why a task waited or who did it, in the terms of {@link #heldBy}. */
    public enum Held {
        PERSON,
        CAMERA,
        COMPANY,
        EQUIPMENT,
        MATERIAL,
        FUNDS,
        WEATHER,
        SEASON,
        BOOKING,
        WAIT
    }

    /** A column of {@link #heldBy}: a kind and, where it has one, the id of the person, equipment, material or task, or the month. */
    public record Reason(Held kind, String what) {}

    /** What is kept of both funding answers. */
    public static final class Answer {
        /** First day worked or waited, by stage. */
        public final int[][] stageStart;
        /** Day on which the stage's last task was done; {@link Inputs#NONE} for a stage that has no task left to land. */
        public final int[][] stageLanding;
        /** Balance on the evenings of {@link Outcome#weeks}, without what is put by for tax. */
        public final long[][] cash;
        /** By month of {@link Outcome#months}: whether a day ended under the reserve. */
        public final boolean[][] underReserve;
        /** By month of {@link Outcome#months}: whether a day ended under zero. */
        public final boolean[][] underZero;
        /** First day that ended under the reserve or {@link #LATER}. */
        public final int[] firstUnderReserve;
        /** First day that ended under zero or {@link #LATER}. */
        public final int[] firstUnderZero;

        private Answer(int trials, int stages, int weeks, int months) {
            stageStart = new int[stages][trials];
            stageLanding = new int[stages][trials];
            cash = new long[weeks][trials];
            underReserve = new boolean[months][trials];
            underZero = new boolean[months][trials];
            firstUnderReserve = new int[trials];
            firstUnderZero = new int[trials];
        }
    }

    /** How many trials. */
    public final int trials;
    /** The as-of day. */
    public final int asOf;
    /** The first day that is not simulated. */
    public final int horizon;
    /** Dates of the simulated slots. */
    public final int[] slots;
    /** Sundays up to the horizon, from the as-of day on. */
    public final int[] weeks;
    /** Months from the as-of month to that of the last simulated day, as 12 * year + month - 1. */
    public final int[] months;
    /** The columns of {@link #heldBy}. */
    public final List<Reason> reasons;

    /** The crew's effort ratio drawn, e to the beta. */
    public final double[] effortRatio;
    /** Money is waited for. */
    public final Answer held;
    /** Orders go out on their day whatever the balance. */
    public final Answer workFirst;
    /** First day worked, or first day of the wait. */
    public final int[][] taskStart;
    /** Day on which the task was done. */
    public final int[][] taskLanding;
    /** Drawn person-minutes (of a wait: drawn days) of the whole task. */
    public final int[][] taskDrawn;
    /** Day on which the episode was cut. */
    public final int[][] episodeCut;
    /** Task whose told share was reached last, an index of {@link Inputs#tasks} or {@link #NOBODY}. */
    public final int[][] episodeLast;
    /** Ordinal of {@link Slot}, by slot. */
    public final byte[][] slot;
    /** Story minutes in the bank on the evenings of {@link #weeks}. */
    public final float[][] bank;
    /** Day on which the line was ordered. */
    public final int[][] orderDay;
    /** Day on which the task would have begun (or gone on) but for its lines. */
    public final int[][] needDay;
    /** Balance on the evenings of {@link #weeks} with the purchases not yet ordered on the as-of day left out. */
    public final long[][] unspent;
    /** What is put by for tax on the evenings of {@link #weeks}, over and above the balances (rule 135). */
    public final long[][] putBy;
    /** Supporters of all levels on the 1st of {@link #months}; those of the as-of month are the same in all trials. */
    public final int[][] supporters;
    /** Paid out in {@link #months}, net of fees, what is put by of it included; of the as-of month what is still to come. */
    public final long[][] paidOut;
    /** First day that ended under the reserve if pledges stopped today and nothing more were ordered, or {@link #LATER}. */
    public final int[] firstUnderWithoutPledges;
    /** Work first, by stage: deepest reserve - cash at the end of a day on which one of its lines was paid, at least 0. */
    public final long[][] stageShort;
    /** By stage and week: in how many trials that Sunday's cash without the stage's payments covered need and reserve. */
    public final int[][] stageCovered;
    /** By stage: mean cost of what is left to pay for its lines. */
    public final long[] stageNeed;
    /** By stage and {@link #reasons}: days, summed over the trials in which the stage landed after the as-of day. */
    public final long[][] heldBy;
    /** By task: trials in which it lies on the chain back from its stage's landing. */
    public final int[] critical;
    /** Per trial: tasks tried, stretches worked, orders sent, episodes published, charges made, slots left empty. */
    public final int[][] counts;

    /** The rows of {@link #counts}. */
    public enum Count {
        TRIES,
        STRETCHES,
        ORDERS,
        EPISODES,
        CHARGES,
        EMPTY_SLOTS
    }

    /** Room for an outcome of {@code trials} trials; all shapes follow from the inputs. */
    public Outcome(
            Inputs inputs, int trials, int horizon, int[] slots, int[] weeks, int[] months, List<Reason> reasons) {
        int stages = inputs.stages().size();
        int tasks = inputs.tasks().size();
        int episodes = inputs.episodes().size();
        int materials = inputs.materials().size();
        this.trials = trials;
        this.asOf = inputs.asOf();
        this.horizon = horizon;
        this.slots = slots.clone();
        this.weeks = weeks.clone();
        this.months = months.clone();
        this.reasons = List.copyOf(reasons);
        effortRatio = new double[trials];
        held = new Answer(trials, stages, weeks.length, months.length);
        workFirst = new Answer(trials, stages, weeks.length, months.length);
        taskStart = new int[tasks][trials];
        taskLanding = new int[tasks][trials];
        taskDrawn = new int[tasks][trials];
        episodeCut = new int[episodes][trials];
        episodeLast = new int[episodes][trials];
        slot = new byte[slots.length][trials];
        bank = new float[weeks.length][trials];
        orderDay = new int[materials][trials];
        needDay = new int[materials][trials];
        unspent = new long[weeks.length][trials];
        putBy = new long[weeks.length][trials];
        supporters = new int[months.length][trials];
        paidOut = new long[months.length][trials];
        firstUnderWithoutPledges = new int[trials];
        stageShort = new long[stages][trials];
        stageCovered = new int[stages][weeks.length];
        stageNeed = new long[stages];
        heldBy = new long[stages][reasons.size()];
        critical = new int[tasks];
        counts = new int[Count.values().length][trials];
    }

    /**
     * The smallest value that at least the share {@code q} of the trials does not exceed: the ceil(q * n)-th smallest (rule 7).
     *
     * @param q over 0, at most 1
     */
    public static int quantile(int[] perTrial, double q) {
        return quantiles(perTrial, q)[0];
    }

    /** As {@link #quantile(int[], double)}, several at once, in growing order. */
    public static int[] quantiles(int[] perTrial, double... q) {
        long[] values = new long[perTrial.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = perTrial[i];
        }
        return Arrays.stream(smallest(values, q)).mapToInt(x -> (int) x).toArray();
    }

    /** As {@link #quantiles(int[], double...)}. */
    public static long[] quantiles(long[] perTrial, double... q) {
        return smallest(perTrial.clone(), q);
    }

    /** As {@link #quantiles(int[], double...)}. */
    public static double[] quantiles(double[] perTrial, double... q) {
        long[] values = new long[perTrial.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = ordered(Double.doubleToLongBits(perTrial[i]));
        }
        return Arrays.stream(smallest(values, q))
                .mapToDouble(x -> Double.longBitsToDouble(ordered(x)))
                .toArray();
    }

    /** As {@link #quantiles(int[], double...)}. */
    public static double[] quantiles(float[] perTrial, double... q) {
        double[] values = new double[perTrial.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = perTrial[i];
        }
        return quantiles(values, q);
    }

    /** The bits of a double as a whole number that grows with it, and back. */
    private static long ordered(long bits) {
        return bits ^ ((bits >> 63) & Long.MAX_VALUE);
    }

    private static long[] smallest(long[] values, double... q) {
        int[] positions =
                Arrays.stream(q).mapToInt(x -> position(values.length, x)).toArray();
        return Smallest.at(values, positions);
    }

    /** Share of trials that have not happened before the horizon (rule 7). */
    public static double beyond(int[] perTrial) {
        int later = 0;
        for (int day : perTrial) {
            if (day == LATER) {
                later++;
            }
        }
        return (double) later / perTrial.length;
    }

    /** Index of the ceil(q * n)-th smallest of n; the small number keeps 0.8 * 10 from becoming 9. */
    static int position(int n, double q) {
        int k = (int) Math.ceil(q * n - 1e-9);
        return Math.max(1, Math.min(n, k)) - 1;
    }
}
