package weekwright.engine.simulate;

/**
 * Numbers from a low, likely and high value. Mean (low + 4 likely + high) / 6 and standard deviation (high − low) / 6 (Malcolm,
 * Roseboom, Clark &amp; Fazar 1959, "Application of a technique for research and development program evaluation", Operations
 * Research 7:646–669); the shape is lognormal with that mean and standard deviation.
 */
public final class ThreePoint {
    /** Where the survival function is left for its tail formula: Φ(−6) is about 1e-9. */
    private static final double TAIL = 6;

    private ThreePoint() {}

    public static double mean(double low, double likely, double high) {
        return (low + 4 * likely + high) / 6;
    }

    public static double deviation(double low, double high) {
        return (high - low) / 6;
    }

    /** The variance of the logarithm, ln(1 + (deviation / mean)²). */
    public static double logVariance(double mean, double deviation) {
        double ratio = deviation / mean;
        return StrictMath.log1p(ratio * ratio);
    }

    /** The mean of the logarithm of a lognormal number with this mean, ln mean − v / 2 (rule 11). */
    public static double logMean(double mean, double logVariance) {
        return StrictMath.log(mean) - logVariance / 2;
    }

    /**
     * A lognormal number given that it is more than h, by inverting the survival function: with z_h = (ln h − μ) / σ,
     * z = −Φ⁻¹(u Φ(−z_h)). For z_h over 6 the tail formula ln T = ln h − σ ln(u) / z_h (rule 19), since Φ(−z_h) then loses its
     * digits; both fall as u grows, so that u is first turned to 1 − u and the number grows with u.
     *
     * @param mu mean of the logarithm
     * @param sigma standard deviation of the logarithm, 0 gives max(e^μ, h)
     * @param h at least 0
     */
    public static double lognormalBeyond(double mu, double sigma, double h, double u) {
        if (!(h > 0)) {
            return StrictMath.exp(mu + sigma * Inverse.normal(u));
        }
        if (!(sigma > 0)) {
            return StrictMath.max(StrictMath.exp(mu), h);
        }
        double over = 1 - u;
        double zh = (StrictMath.log(h) - mu) / sigma;
        if (zh > TAIL) {
            return h * StrictMath.exp(-sigma * StrictMath.log(over) / zh);
        }
        double z = -Inverse.normal(over * Inverse.normalBelow(-zh));
        return StrictMath.max(h, StrictMath.exp(mu + sigma * z));
    }

    /** Whole days: nearest, halves up, never under 0 (rule 10). */
    public static int wholeDays(double days) {
        return StrictMath.max(0, (int) Math.floor(days + 0.5));
    }
}
