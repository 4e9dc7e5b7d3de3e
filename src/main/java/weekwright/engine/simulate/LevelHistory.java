package weekwright.engine.simulate;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.GammaDistribution;

/**
 * What a pledge level's months say about how many join (λ a month) and which share of those there on the 1st leaves (c a month):
 * conjugate posteriors whose months count less the older they are (rules 76 to 79).
 *
 * <p>λ ~ Gamma(0.5 + Σ d joined, rate 0.5 + Σ d) and c ~ Beta(1 + Σ d left, 19 + Σ d (start − left)), d = 2^(−age / half-life), the
 * age from the middle of the month to the as-of day. The priors are Gamma(0.5, 0.5 months) and Beta(1, 19). A level without any row has
 * nobody, λ = 0.
 *
 * @param joinShape shape of λ, 0 if the level has no row
 * @param joinRate rate of λ, in months
 * @param leaveLeft first parameter of c
 * @param leaveStayed second parameter of c
 */
public record LevelHistory(double joinShape, double joinRate, double leaveLeft, double leaveStayed) {
    private static final double PRIOR_JOINED = 0.5;
    private static final double PRIOR_MONTHS = 0.5;
    private static final double PRIOR_LEFT = 1;
    private static final double PRIOR_STAYED = 19;

    /** A level without any row. */
    public static final LevelHistory NONE = new LevelHistory(0, PRIOR_MONTHS, PRIOR_LEFT, PRIOR_STAYED);

    /**
     * Learns from whole months. Each row's start is trusted, whatever the rows before it say (rule 79).
     *
     * @param start supporters on the 1st of each month
     * @param joined in each month
     * @param left in each month, of those there on the 1st
     * @param surge months that one film drove: they say nothing of λ (rule 123)
     * @param weight d of each month, {@link EffortRatio#ageWeight} of the days from its middle to the as-of day
     */
    public static LevelHistory learn(int[] start, int[] joined, int[] left, boolean[] surge, double[] weight) {
        double shape = PRIOR_JOINED;
        double rate = PRIOR_MONTHS;
        double gone = PRIOR_LEFT;
        double stayed = PRIOR_STAYED;
        for (int i = 0; i < start.length; i++) {
            double counts = surge[i] ? 0 : weight[i];
            shape += counts * joined[i];
            rate += counts;
            gone += weight[i] * StrictMath.min(left[i], start[i]);
            stayed += weight[i] * StrictMath.max(0, start[i] - left[i]);
        }
        return new LevelHistory(shape, rate, gone, stayed);
    }

    /** λ of a trial, people a month. */
    public double joinRate(double u) {
        return joinShape > 0 ? GammaDistribution.of(joinShape, 1 / joinRate).inverseCumulativeProbability(u) : 0;
    }

    /** λ in trials; null for a level that nobody joins. */
    QuantileTable joinRates() {
        return joinShape > 0 ? QuantileTable.of("joining", joinShape, joinRate, this::joinRate) : null;
    }

    /** c in trials. */
    QuantileTable leaveShares() {
        return QuantileTable.of("leaving", leaveLeft, leaveStayed, this::leaveShare);
    }

    /** c of a trial, a share a month. */
    public double leaveShare(double u) {
        return BetaDistribution.of(leaveLeft, leaveStayed).inverseCumulativeProbability(u);
    }

    /**
     * The factor by which λ goes on from one month to the next, e^(drift Φ⁻¹(u)): a random walk of ln λ (rule 80).
     *
     * @param drift standard deviation of a month's step, 0 for none
     */
    public static double drift(double drift, double u) {
        return drift > 0 ? StrictMath.exp(drift * Inverse.normal(u)) : 1;
    }

    /** c of a month with so many empty slots, min(1, c × factor^slots) (rule 81). */
    public static double leaveShare(double c, double emptyFactor, int emptySlots) {
        return emptySlots == 0 ? c : StrictMath.min(1, c * StrictMath.pow(emptyFactor, emptySlots));
    }

    /** How many join in a share of a month: Poisson(λ × share). */
    public static int joined(double lambda, double monthShare, double u) {
        return Inverse.poisson(lambda * monthShare, u);
    }

    /**
     * How many of n leave in a share f of a month: Binomial(n, 1 − (1 − c)^f) (rules 76, 77).
     *
     * @param n there on the 1st and not gone yet
     * @param monthShare 1 for a whole month
     */
    public static int left(int n, double c, double monthShare, double u) {
        double share = monthShare == 1 ? c : -StrictMath.expm1(monthShare * StrictMath.log1p(-c));
        return Inverse.binomial(n, share, u);
    }
}
