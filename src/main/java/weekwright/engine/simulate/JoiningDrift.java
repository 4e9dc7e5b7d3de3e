package weekwright.engine.simulate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import weekwright.engine.Inputs;
import weekwright.engine.Inputs.SupporterMonth;

/**
 * How much joining wanders from month to month (rule 80), learned from the months of the crew's own history where the settings give
 * no number: ln λ of all levels together is a random walk of standard deviation s a month, and a month in which n joined says of it ln n
 * with a variance of 1 / n (that of a Poisson number's logarithm); a month that a film drove says nothing (rule 123). s is one of five
 * values, before any month 0.05, 0.1, 0.2, 0.35 and 0.5 with chances of 6, 10, 2, 1 and 1 in 20 (trade judgement, no source), weighed by
 * how well it foretold each month from those before; where λ stands today given s is the Kalman filter's (local level; Kalman 1960, from
 * memory). Of that only what goes beyond the mean of all months is taken: that mean is drawn level by level ({@link LevelHistory}).
 * With fewer than four months it is 0.1.
 */
final class JoiningDrift {
    private static final double[] VALUES = {0.05, 0.1, 0.2, 0.35, 0.5};
    private static final double[] AT_FIRST = {0.3, 0.5, 0.1, 0.05, 0.05};
    private static final double USUAL = 0.1;
    private static final int ENOUGH_MONTHS = 4;
    private static final double LEAST_JOINED = 0.5;

    /** What a value of s has it: its weight, and by which middle and variance ln λ of today is off the mean of all months. */
    private record Given(double drift, double weight, double middle, double variance) {}

    private final List<Given> given = new ArrayList<>();
    private final long key = Streams.key(Streams.Purpose.JOIN_WANDER, "");
    private final long nowKey = Streams.key(Streams.Purpose.JOIN_NOW, "");
    /** How many months it is learned from, 0 where it is set or they are too few. */
    final int months;

    /** @param thisMonth the as-of month, which is not over */
    JoiningDrift(Inputs inputs, int thisMonth) {
        double set = inputs.model().joiningDrift();
        Map<Integer, Integer> joined = new HashMap<>();
        for (SupporterMonth row : set < 0 ? inputs.supporters() : List.<SupporterMonth>of()) {
            if (row.month() < thisMonth) {
                joined.merge(row.month(), row.joined(), Integer::sum);
            }
        }
        inputs.supporters().stream().filter(SupporterMonth::surge).forEach(row -> joined.remove(row.month()));
        months = joined.size() < ENOUGH_MONTHS ? 0 : joined.size();
        if (months == 0) {
            given.add(new Given(set < 0 ? USUAL : set, 1, 0, 0));
            return;
        }
        double sum = 0;
        double weights = 0;
        for (Map.Entry<Integer, Integer> one : joined.entrySet()) {
            double age = inputs.asOf() - FundsTable.middle(one.getKey());
            double weight = EffortRatio.ageWeight(age, inputs.model().supportersHalfLife());
            sum += weight * one.getValue();
            weights += weight;
        }
        double all = Math.max(LEAST_JOINED, sum);
        double[] weight = new double[VALUES.length];
        double best = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < VALUES.length; i++) {
            Given one = filter(VALUES[i], StrictMath.log(AT_FIRST[i]), joined, thisMonth);
            given.add(new Given(
                    one.drift(),
                    one.weight(),
                    one.middle() - StrictMath.log(all / weights),
                    StrictMath.max(0, one.variance() - 1 / all)));
            best = StrictMath.max(best, one.weight());
        }
        double total = 0;
        for (int i = 0; i < weight.length; i++) {
            weight[i] = StrictMath.exp(given.get(i).weight() - best);
            total += weight[i];
        }
        for (int i = 0; i < weight.length; i++) {
            Given one = given.get(i);
            given.set(i, new Given(one.drift(), weight[i] / total, one.middle(), one.variance()));
        }
    }

    private static Given filter(double drift, double weight, Map<Integer, Integer> joined, int thisMonth) {
        int first = joined.keySet().stream().mapToInt(month -> month).min().orElseThrow();
        double middle = 0;
        double variance = 0;
        double said = weight;
        for (int month = first; month < thisMonth; month++) {
            variance += month > first ? drift * drift : 0;
            Integer n = joined.get(month);
            if (n != null) {
                double count = StrictMath.max(LEAST_JOINED, n);
                double ofCount = 1 / count;
                double log = StrictMath.log(count);
                if (month == first) {
                    // the first month is what is known at first
                    middle = log;
                    variance = ofCount;
                } else {
                    double s = variance + ofCount;
                    double off = log - middle;
                    said -= (StrictMath.log(s) + off * off / s) / 2;
                    middle += variance / s * off;
                    variance -= variance * variance / s;
                }
            }
        }
        return new Given(drift, said, middle, variance);
    }

    /** The middle of what is believed of s. */
    double mean() {
        return given.stream().mapToDouble(one -> one.weight() * one.drift()).sum();
    }

    private Given of(long trialKey) {
        double u = Streams.uniform(trialKey, key, 0);
        int at = 0;
        for (double sum = given.get(0).weight(); at < given.size() - 1 && u > sum; ) {
            sum += given.get(++at).weight();
        }
        return given.get(at);
    }

    /** s of a trial. */
    double drift(long trialKey) {
        return of(trialKey).drift();
    }

    /** How many times the mean of all months the usual joining of today is, in a trial. */
    double now(long trialKey) {
        Given one = of(trialKey);
        return one.middle() == 0 && one.variance() == 0
                ? 1
                : StrictMath.exp(one.middle()
                        + StrictMath.sqrt(one.variance()) * Inverse.normal(Streams.uniform(trialKey, nowKey, 0)));
    }
}
