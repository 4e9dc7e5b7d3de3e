package weekwright.engine;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.BinomialDistribution;

/** How far a forecast was from what happened. All in days, smaller is better. */
public final class Score {
    private static final double MIDDLE = 0.95;

    private Score() {}

    /** From and to, both within. */
    public record Span(int from, int to) {
        /** Whether a count lies in it. */
        public boolean holds(int count) {
            return from <= count && count <= to;
        }
    }

    /**
     * Continuous ranked probability score of a forecast given as values that are all as likely: E|X - y| - E|X - X'| / 2 (Gneiting
     * &amp; Raftery 2007, "Strictly proper scoring rules, prediction, and estimation", J. Am. Stat. Assoc. 102:359–378). Of one
     * value alone it is the distance.
     */
    public static double crps(double[] values, double happened) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double distance = 0;
        double apart = 0;
        int n = sorted.length;
        for (int i = 0; i < n; i++) {
            distance += Math.abs(sorted[i] - happened);
            apart += (2.0 * i - n + 1) * sorted[i];
        }
        return distance / n - apart / n / n;
    }

    /**
     * As {@link #crps} for what has not happened up to a day: of the integral of (F(x) - 1{x ≥ y})² the part before that day, which
     * is all that is known yet (threshold-weighted score, Gneiting &amp; Ranjan 2011, J. Bus. Econ. Stat. 29:411–422).
     */
    public static double crpsUpTo(double[] values, double day) {
        double[] cut = values.clone();
        for (int i = 0; i < cut.length; i++) {
            cut[i] = Math.min(cut[i], day);
        }
        return crps(cut, day);
    }

    /** Pinball loss of the quantile {@code q} said to be {@code said} (Koenker &amp; Bassett 1978, Econometrica 46:33–50). */
    public static double pinball(double q, double said, double happened) {
        return happened < said ? (1 - q) * (said - happened) : q * (happened - said);
    }

    /** So many of {@code n} hits are to be expected in 19 of 20 cases if each is a hit with chance {@code p}. */
    public static Span expectedHits(int n, double p) {
        BinomialDistribution hits = BinomialDistribution.of(n, p);
        double tail = (1 - MIDDLE) / 2;
        return new Span(hits.inverseCumulativeProbability(tail), hits.inverseCumulativeProbability(1 - tail));
    }
}
