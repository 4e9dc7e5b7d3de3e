package weekwright.forecast;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;

/**
 * What a set of futures keeps for being compared future by future with another set of the same luck; a tenth of a whole
 * {@link Outcome}. Not changed after it is made.
 *
 * @param inputs they were drawn from
 * @param landing by stage and future, held for funds
 * @param empty by future, how many of the twelve slots after the as-of day stayed empty
 * @param covered by stage, the chance that its materials are covered
 * @param runway as {@link Forecast.Cash#runway}
 * @param withoutPledges as {@link Forecast.Cash#runwayWithoutPledges}
 * @param underReserve chance that the cash ends a day under the reserve before the horizon, work first
 * @param paidOut by future, minor units paid out by the end of the twelfth month after this one
 */
record LeverSide(
        Inputs inputs,
        int[][] landing,
        byte[] empty,
        double[] covered,
        Optional<LocalDate> runway,
        Optional<LocalDate> withoutPledges,
        double underReserve,
        long[] paidOut) {

    /** This month and twelve more. */
    private static final int YEAR = 13;

    static LeverSide of(Inputs inputs, Outcome outcome) {
        int stages = inputs.stages().size();
        double[] covered = new double[stages];
        for (int s = 0; s < stages; s++) {
            covered[s] = share(
                    Arrays.stream(outcome.stageShort[s])
                            .filter(minor -> minor == 0)
                            .count(),
                    outcome.trials);
        }
        byte[] empty = new byte[outcome.trials];
        int counted = 0;
        for (int i = 0; i < outcome.slots.length && counted < ForecastMaker.NEXT_SLOTS; i++) {
            if (outcome.slots[i] > inputs.asOf()) {
                counted++;
                for (int trial = 0; trial < outcome.trials; trial++) {
                    empty[trial] += outcome.slot[i][trial] == Outcome.Slot.EMPTY.ordinal() ? 1 : 0;
                }
            }
        }
        long under = Arrays.stream(outcome.workFirst.firstUnderReserve)
                .filter(day -> day != Outcome.LATER)
                .count();
        return new LeverSide(
                inputs,
                outcome.held.stageLanding,
                empty,
                covered,
                ForecastMaker.lastDay(outcome.workFirst.firstUnderZero),
                ForecastMaker.lastDay(outcome.firstUnderWithoutPledges),
                share(under, outcome.trials),
                paidOut(outcome));
    }

    private static long[] paidOut(Outcome outcome) {
        long[] sums = new long[outcome.trials];
        for (int m = 0; m < Math.min(YEAR, outcome.paidOut.length); m++) {
            for (int trial = 0; trial < sums.length; trial++) {
                sums[trial] += outcome.paidOut[m][trial];
            }
        }
        return sums;
    }

    /** Mean over the futures, to the minor unit. */
    long paidOutMean() {
        return Math.round(Arrays.stream(paidOut).average().orElse(0));
    }

    private static double share(long some, int all) {
        return (double) some / all;
    }

    int futures() {
        return empty.length;
    }

    double emptySlots() {
        long sum = 0;
        for (byte one : empty) {
            sum += one;
        }
        return (double) sum / empty.length;
    }
}
