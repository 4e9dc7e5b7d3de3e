package weekwright.forecast;

import java.util.Arrays;

/**
 * Spearman's rank correlation with one variable that is held fixed: Pearson's of the ranks, equal values sharing their mean
 * rank (Spearman 1904). A value of {@link Integer#MAX_VALUE} ranks as the largest.
 */
final class Correlation {
    private final double[] fixed;

    Correlation(int[] fixed) {
        this.fixed = centredRanks(fixed);
    }

    /** Between -1 and 1; 0 where one of the two does not vary. */
    double with(int[] other) {
        double[] ranks = centredRanks(other);
        double product = 0;
        double one = 0;
        double two = 0;
        for (int i = 0; i < ranks.length; i++) {
            product += fixed[i] * ranks[i];
            one += fixed[i] * fixed[i];
            two += ranks[i] * ranks[i];
        }
        return one == 0 || two == 0 ? 0 : product / Math.sqrt(one * two);
    }

    private static double[] centredRanks(int[] values) {
        int n = values.length;
        long[] sorted = new long[n];
        for (int i = 0; i < n; i++) {
            sorted[i] = ((long) values[i] << 32) | i;
        }
        Arrays.sort(sorted);
        double[] ranks = new double[n];
        for (int from = 0; from < n; ) {
            int to = from;
            while (to < n && sorted[to] >> 32 == sorted[from] >> 32) {
                to++;
            }
            double rank = (from + to - 1) / 2.0 - (n - 1) / 2.0;
            for (int i = from; i < to; i++) {
                ranks[(int) sorted[i]] = rank;
            }
            from = to;
        }
        return ranks;
    }
}
