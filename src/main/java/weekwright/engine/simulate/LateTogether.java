package weekwright.engine.simulate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import weekwright.engine.Inputs;
import weekwright.engine.Inputs.Material;
import weekwright.engine.Inputs.Source;

/**
 * What is late, is late together (rule 137): roads, timber and trades have good and bad months for everybody. The lead of an order given
 * out in month m is e^γ(m) times what its line and its supplier (rule 124) say; γ is 0 in the long run, wanders, forgets half of itself in
 * three months, and has the standard deviation τ: γ(m + 1) = ρ γ(m) + τ √(1 − ρ²) z, ρ = 2^(−1/3).
 *
 * <p>It is learned from all orders that came: r = ln days − (ln likely − v / 2) − β of the supplier, r ~ N(γ of its month, κ² v + 1 / (12
 * days²)), the last part for whole days. Orders that are out say that they take more than the days gone. τ is one of six values, before
 * anything came 0 with a chance of one half and else 0.1 to 0.5 alike (trade judgement, no source). Lines of no supplier share a κ² of
 * 1/2, 1, 2 or 4, weighed before as the effort ratio's inverse gamma of 3 and 2. Each pair (τ, κ²) is weighed by how well it foretold the
 * orders one after the other; γ given the pair is the Kalman filter's (Kalman 1960; what is out by matching the two moments of the cut
 * normal distribution, Minka 2001, both from memory) and drawn backwards from the as-of month for the months in which orders are out.
 * Before two orders were given out, all is as it was written down.
 */
public final class LateTogether {
    private static final double HALF_FORGOTTEN_MONTHS = 3;
    private static final double KEPT = StrictMath.pow(2, -1 / HALF_FORGOTTEN_MONTHS);
    private static final double[] TAU = {0, 0.1, 0.2, 0.3, 0.4, 0.5};
    private static final double NONE_AT_FIRST = 0.5;
    private static final double[] KAPPA_SQUARED = {0.5, 1, 2, 4};
    private static final double SAME_DAY = 0.5;
    /** One order may be late by itself. */
    private static final int LEAST_ORDERS = 2;

    private static final double WHOLE_DAYS = 1 / 12.0;
    /** Where the tail of the normal distribution is taken by its series. */
    private static final double TAIL = -6;

    private static final double ROOT_OF_TWO_PI = StrictMath.sqrt(2 * StrictMath.PI);

    /** An order: its month, what it says of γ and how surely; {@code out} says that it is more than that. */
    private record Order(int month, double says, double variance, double rounding, boolean byKappa, boolean out) {}

    /** What holds given one pair of τ and κ²: γ by month as filtered, before ({@code ahead}) and after the orders of the month. */
    private static final class Pair {
        final double tau;
        final double kappa;
        double weight;
        final double[] middle;
        final double[] variance;
        final double[] aheadMiddle;
        final double[] aheadVariance;

        Pair(double tau, double kappa, int months) {
            this.tau = tau;
            this.kappa = kappa;
            middle = new double[months];
            variance = new double[months];
            aheadMiddle = new double[months];
            aheadVariance = new double[months];
        }
    }

    private final int first;
    private final int now;
    /** First month of which γ is drawn: of the oldest order that is out, else the as-of month. */
    private final int from;

    private final int came;
    private final int given;
    private final List<Pair> pairs = new ArrayList<>();
    private final long pairKey = Streams.key(Streams.Purpose.LATE_STRENGTH, "");
    private final long key = Streams.key(Streams.Purpose.LATE_TOGETHER, "");

    /** @param purchases of the same inputs */
    public LateTogether(Inputs inputs, Purchases purchases) {
        this(inputs.materials(), inputs.asOf(), purchases, inputs.model().leadsApart());
    }

    /**
     * @param asOf what is ordered or received later is left out
     * @param purchases of the same lines
     * @param apart whether nothing is learned of it
     */
    public LateTogether(List<Material> lines, int asOf, Purchases purchases, boolean apart) {
        List<Order> orders = new ArrayList<>();
        now = month(asOf);
        int oldest = now;
        int oldestOut = now;
        int received = 0;
        int counted = 0;
        boolean unnamed = false;
        for (Material line : apart ? List.<Material>of() : lines) {
            boolean out = line.received() == Inputs.NONE || line.received() > asOf;
            if (line.source() == Source.OWN
                    || line.ordered() == Inputs.NONE
                    || line.ordered() > asOf
                    || !(line.leadDays().mean() > 0)
                    || (out && line.promised() != Inputs.NONE)) {
                continue;
            }
            int month = month(line.ordered());
            oldest = Math.min(oldest, month);
            oldestOut = out ? Math.min(oldestOut, month) : oldestOut;
            if (!out || asOf > line.ordered()) {
                orders.add(order(line, (out ? asOf : line.received()) - line.ordered(), out, purchases));
            }
            counted++;
            received += out ? 0 : 1;
            unnamed |= !out && purchases.supplier(line.supplier()) < 0;
        }
        came = received;
        given = counted;
        first = oldest;
        from = oldestOut;
        if (any()) {
            orders.sort((a, b) -> Integer.compare(a.month(), b.month()));
            for (double squared : unnamed ? KAPPA_SQUARED : new double[] {1}) {
                for (double tau : TAU) {
                    // a density of the logarithm of κ², whose steps are alike
                    double before = StrictMath.pow(squared, -3) * StrictMath.exp(-2 / squared);
                    pairs.add(pair(tau, StrictMath.sqrt(squared), before, orders));
                }
            }
            double best = pairs.stream().mapToDouble(pair -> pair.weight).max().orElseThrow();
            pairs.forEach(pair -> pair.weight = StrictMath.exp(pair.weight - best));
            double all = pairs.stream().mapToDouble(pair -> pair.weight).sum();
            pairs.forEach(pair -> pair.weight /= all);
        }
    }

    private static Order order(Material line, int days, boolean out, Purchases purchases) {
        double mean = line.leadDays().mean();
        double deviation = line.leadDays().deviation();
        double taken = Math.max(SAME_DAY, days);
        int supplier = purchases.supplier(line.supplier());
        double says = EffortRatio.logRatio(taken, mean, ThreePoint.logVariance(mean, deviation));
        double v = EffortRatio.variance(mean, deviation);
        if (supplier >= 0) {
            EffortRatio known = purchases.suppliers().get(supplier).ratio();
            says -= known.betaN();
            v *= known.bn() / (known.an() - 1);
        }
        return new Order(month(line.ordered()), says, v, WHOLE_DAYS / (taken * taken), supplier < 0, out);
    }

    /** Filters γ through the months; its weight is the logarithm of what the orders say for the pair, with what was held before. */
    private Pair pair(double tau, double kappa, double before, List<Order> orders) {
        Pair pair = new Pair(tau, kappa, now - first + 1);
        pair.weight = StrictMath.log(before)
                + StrictMath.log(tau > 0 ? (1 - NONE_AT_FIRST) / (TAU.length - 1) : NONE_AT_FIRST);
        double a = 0;
        double p = tau * tau;
        int next = 0;
        for (int k = 0; k < pair.middle.length; k++) {
            if (k > 0) {
                a *= KEPT;
                p = KEPT * KEPT * p + (1 - KEPT * KEPT) * tau * tau;
            }
            pair.aheadMiddle[k] = a;
            pair.aheadVariance[k] = p;
            for (; next < orders.size() && orders.get(next).month() == first + k; next++) {
                Order one = orders.get(next);
                double s = p + one.variance() * (one.byKappa() ? kappa * kappa : 1) + one.rounding();
                if (one.out()) {
                    double z = (a - one.says()) / StrictMath.sqrt(s);
                    double below = z < TAIL ? 0 : Inverse.normalBelow(z);
                    double height = StrictMath.exp(-z * z / 2) / ROOT_OF_TWO_PI;
                    double pull = z < TAIL ? -z - 1 / z : height / below;
                    pair.weight += z < TAIL ? -z * z / 2 - StrictMath.log(-z * ROOT_OF_TWO_PI) : StrictMath.log(below);
                    a += p / StrictMath.sqrt(s) * pull;
                    p -= p * p / s * pull * (pull + z);
                } else {
                    double off = one.says() - a;
                    pair.weight -= (StrictMath.log(s) + off * off / s) / 2;
                    a += p / s * off;
                    p -= p * p / s;
                }
            }
            pair.middle[k] = a;
            pair.variance[k] = p;
        }
        return pair;
    }

    /** Whether enough orders came or are out to say anything. */
    public boolean any() {
        return given >= LEAST_ORDERS;
    }

    /** How many orders came that it is learned from. */
    public int came() {
        return came;
    }

    /** How many orders are out without a day promised: that they are not there yet is learned from too. */
    public int out() {
        return given - came;
    }

    /** How likely it is that there is anything common. */
    public double chance() {
        return pairs.stream()
                .filter(pair -> pair.tau > 0)
                .mapToDouble(pair -> pair.weight)
                .sum();
    }

    /** How many times as long as line and supplier say an order takes that is given out now: e to the mean of γ, else 1. */
    public double times() {
        return StrictMath.exp(mean(now));
    }

    /** The mean of γ of the as-of month or one after it; of one before it as filtered up to that month. */
    private double mean(int month) {
        int k = Math.min(month, now) - first;
        double kept = month > now ? StrictMath.pow(KEPT, month - now) : 1;
        double sum = 0;
        for (Pair pair : pairs) {
            sum += pair.weight * pair.middle[k];
        }
        return kept * sum;
    }

    /** The first month that {@link #draw} and {@link #expect} fill in, as year × 12 + month − 1. */
    int from() {
        return from;
    }

    /** Fills in e to the mean of γ, month by month from {@link #from} on. */
    void expect(double[] times) {
        for (int i = 0; i < times.length; i++) {
            times[i] = StrictMath.exp(mean(from + i));
        }
    }

    /**
     * Draws e^γ of a trial, month by month from {@link #from} on.
     *
     * @return κ of the lines of no known supplier
     */
    double draw(long trialKey, double[] times) {
        double u = Streams.uniform(trialKey, pairKey, 0);
        int at = 0;
        for (double sum = pairs.get(0).weight; at < pairs.size() - 1 && u > sum; ) {
            sum += pairs.get(++at).weight;
        }
        Pair pair = pairs.get(at);
        if (!(pair.tau > 0)) {
            Arrays.fill(times, 1);
            return pair.kappa;
        }
        double atNow = gamma(trialKey, now, pair.middle[now - first], pair.variance[now - first]);
        double gamma = atNow;
        times[now - from] = StrictMath.exp(gamma);
        for (int month = now - 1; month >= from; month--) {
            int k = month - first;
            double gain = pair.variance[k] * KEPT / pair.aheadVariance[k + 1];
            gamma = gamma(
                    trialKey,
                    month,
                    pair.middle[k] + gain * (gamma - pair.aheadMiddle[k + 1]),
                    pair.variance[k] - gain * gain * pair.aheadVariance[k + 1]);
            times[month - from] = StrictMath.exp(gamma);
        }
        gamma = atNow;
        double step = (1 - KEPT * KEPT) * pair.tau * pair.tau;
        for (int i = now - from + 1; i < times.length; i++) {
            gamma = gamma(trialKey, from + i, KEPT * gamma, step);
            times[i] = StrictMath.exp(gamma);
        }
        return pair.kappa;
    }

    private double gamma(long trialKey, int month, double middle, double variance) {
        return middle
                + StrictMath.sqrt(StrictMath.max(0, variance)) * Inverse.normal(Streams.uniform(trialKey, key, month));
    }

    /** Year × 12 + month − 1 of a date. */
    static int month(int date) {
        LocalDate day = LocalDate.ofEpochDay(date);
        return 12 * day.getYear() + day.getMonthValue() - 1;
    }
}
