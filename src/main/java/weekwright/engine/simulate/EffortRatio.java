package weekwright.engine.simulate;

import org.apache.commons.statistics.distribution.GammaDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * What the finished tasks say about the crew's effort ratio, actual over estimated hours: the normal–inverse-gamma posterior of β and
 * κ² in r ~ N(β, κ² v), where r = ln actual − (ln E − v / 2) and v is the task's own log variance (rules 11 to 14).
 *
 * <p>Prior: κ² ~ InvGamma(3, 2), mean 1; β given κ² ~ N(ln priorRatio, κ² / k0), k0 = 1 / 0.3². With age weight d and w = d / v:
 * k_n = k0 + Σw, β_n = (k0 ln priorRatio + Σ w r) / k_n, a_n = 3 + Σd / 2,
 * b_n = 2 + ½ (k0 (ln priorRatio − β_n)² + Σ w (r − β_n)²), the update of the conjugate normal model (Gelman et al., Bayesian Data
 * Analysis, section 3.3), its squares written centred so that nothing cancels.
 *
 * @param kn precision of β in units of κ²
 * @param betaN middle of β
 * @param an shape of κ²
 * @param bn scale of κ²
 * @param finished how many finished tasks entered
 */
public record EffortRatio(double kn, double betaN, double an, double bn, int finished) {
    /** The floor of v in learning and in drawing (rule 12). */
    public static final double LEAST_VARIANCE = 0.01;

    /** Days of a month where months are counted as a number (rule 14). */
    public static final double DAYS_A_MONTH = 30.4375;

    private static final double PRIOR_PRECISION = 1 / (0.3 * 0.3);
    private static final double PRIOR_SHAPE = 3;
    private static final double PRIOR_SCALE = 2;

    /** The log variance of a task's hours, ln(1 + (deviation / mean)²), at least 0.01. */
    public static double variance(double mean, double deviation) {
        return StrictMath.max(LEAST_VARIANCE, ThreePoint.logVariance(mean, deviation));
    }

    /** r of a finished task: ln actual − (ln E − v / 2). */
    public static double logRatio(double actual, double mean, double variance) {
        return StrictMath.log(actual) - ThreePoint.logMean(mean, variance);
    }

    /** The weight of what lies so many days back, 2^(−days / 30.4375 / half-life in months); a half-life of 0 weighs all alike. */
    public static double ageWeight(double days, double halfLifeMonths) {
        return halfLifeMonths > 0 ? StrictMath.pow(2, -days / DAYS_A_MONTH / halfLifeMonths) : 1;
    }

    /**
     * Whether a task that is done teaches the ratio: its hands' hours are over 0 and at least a tenth of the low estimate; below
     * that it was probably not logged (rule 15). Waits and dropped tasks never come here.
     */
    public static boolean counts(double actual, double low) {
        return actual > 0 && actual >= low / 10;
    }

    /**
     * The posterior.
     *
     * @param priorRatio middle of the ratio before anything is finished, 1 for none
     * @param logRatio r of each finished task
     * @param variance v of each, floored
     * @param ageWeight d of each
     */
    public static EffortRatio learn(double priorRatio, double[] logRatio, double[] variance, double[] ageWeight) {
        double prior = StrictMath.log(priorRatio);
        double kn = PRIOR_PRECISION;
        double sum = PRIOR_PRECISION * prior;
        double an = PRIOR_SHAPE;
        for (int j = 0; j < logRatio.length; j++) {
            double w = ageWeight[j] / variance[j];
            kn += w;
            sum += w * logRatio[j];
            an += ageWeight[j] / 2;
        }
        double betaN = sum / kn;
        double squares = PRIOR_PRECISION * (prior - betaN) * (prior - betaN);
        for (int j = 0; j < logRatio.length; j++) {
            double off = logRatio[j] - betaN;
            squares += ageWeight[j] / variance[j] * off * off;
        }
        return new EffortRatio(kn, betaN, an, PRIOR_SCALE + squares / 2, logRatio.length);
    }

    /** κ of a trial: the square root of the inverse-gamma quantile b_n / Γ⁻¹(1 − u; a_n), growing with u. */
    public double kappa(double u) {
        return StrictMath.sqrt(bn / GammaDistribution.of(an, 1).inverseCumulativeProbability(1 - u));
    }

    /** κ in trials. */
    QuantileTable kappas() {
        return QuantileTable.of("kappa", an, bn, this::kappa);
    }

    /** β of a trial with that κ: β_n + κ / √k_n · Φ⁻¹(u). */
    public double beta(double kappa, double u) {
        return betaN + kappa / StrictMath.sqrt(kn) * Inverse.normal(u);
    }

    /**
     * The ratio e^β that lies above a share p of what is believed: β alone is Student's t with 2 a_n degrees of freedom, middle β_n
     * and scale √(b_n / (a_n k_n)).
     */
    public double ratioQuantile(double p) {
        double t = TDistribution.of(2 * an).inverseCumulativeProbability(p);
        return StrictMath.exp(betaN + t * StrictMath.sqrt(bn / (an * kn)));
    }
}
