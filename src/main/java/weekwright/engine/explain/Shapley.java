package weekwright.engine.explain;

/**
 * Splits a difference over causes so that the parts sum to it exactly and no order of the causes is preferred: each cause's mean
 * contribution over all orders in which the causes could have happened (Shapley 1953, "A value for n-person games", Contributions to
 * the Theory of Games II, Princeton, 307-317).
 */
public final class Shapley {
    private Shapley() {}

    /**
     * The parts.
     *
     * @param value by mixture: bit k is set where cause k has happened; 2^n of them
     * @return n parts whose sum is {@code value[2^n - 1] - value[0]}
     */
    public static double[] parts(double[] value) {
        int n = Integer.numberOfTrailingZeros(value.length);
        if (value.length != 1 << n) {
            throw new IllegalArgumentException(value.length + " values are no power of two");
        }
        double[] weight = new double[n];
        for (int size = 0; size < n; size++) {
            // size! (n - size - 1)! / n!
            double w = 1.0 / n;
            for (int k = 1; k <= size; k++) {
                w *= (double) k / (n - k);
            }
            weight[size] = w;
        }
        double[] parts = new double[n];
        for (int mask = 0; mask < value.length; mask++) {
            for (int cause = 0; cause < n; cause++) {
                if ((mask >> cause & 1) == 0) {
                    parts[cause] += weight[Integer.bitCount(mask)] * (value[mask | 1 << cause] - value[mask]);
                }
            }
        }
        return parts;
    }
}
