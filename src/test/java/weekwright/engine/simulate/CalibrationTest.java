package weekwright.engine.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import weekwright.engine.simulate.Streams.Purpose;

/**
 * What is learned, against truths drawn from the prior: the truth's place in the posterior must be uniform (Cook, Gelman &amp; Rubin
 * 2006, "Validation of software for Bayesian models using posterior quantiles", J. Comput. Graph. Stat. 15:675–692). Fixed seed; a
 * false alarm of one in a million were it free.
 */
class CalibrationTest {
    private static final int WORLDS = 6000;
    private static final int BINS = 20;

    @Test
    void the_true_effort_ratio_lies_anywhere_in_what_is_learned() {
        int[] ofBeta = new int[BINS];
        int[] ofKappa = new int[BINS];
        EffortRatio prior = EffortRatio.learn(1.15, new double[0], new double[0], new double[0]);
        for (int world = 0; world < WORLDS; world++) {
            double kappa = prior.kappa(u(world, "kappa", 0));
            double beta = prior.beta(kappa, u(world, "beta", 0));
            int tasks = 1 + world % 25;
            double[] r = new double[tasks];
            double[] v = new double[tasks];
            double[] weight = new double[tasks];
            for (int j = 0; j < tasks; j++) {
                v[j] = 0.01 + 0.09 * u(world, "v", j);
                r[j] = beta + kappa * Math.sqrt(v[j]) * Inverse.normal(u(world, "r", j));
                weight[j] = 1;
            }
            EffortRatio learned = EffortRatio.learn(1.15, r, v, weight);
            double scale = Math.sqrt(learned.bn() / (learned.an() * learned.kn()));
            count(ofBeta, TDistribution.of(2 * learned.an()).cumulativeProbability((beta - learned.betaN()) / scale));
            count(ofKappa, GammaDistribution.of(learned.an(), 1).survivalProbability(learned.bn() / (kappa * kappa)));
        }
        assertUniform(ofBeta);
        assertUniform(ofKappa);
    }

    @Test
    void a_tasks_true_hours_lie_anywhere_in_what_is_drawn_for_it() {
        // the next task of a crew that is learned from twelve: its place among 400 draws, one of them for each place
        int[] places = new int[BINS];
        EffortRatio prior = EffortRatio.learn(1.15, new double[0], new double[0], new double[0]);
        for (int world = 0; world < WORLDS / 3; world++) {
            double kappa = prior.kappa(u(world, "kappa", 1));
            double beta = prior.beta(kappa, u(world, "beta", 1));
            double[] r = new double[12];
            double[] v = new double[12];
            double[] weight = new double[12];
            for (int j = 0; j < 12; j++) {
                v[j] = 0.02 + 0.05 * u(world, "v2", j);
                r[j] = beta + kappa * Math.sqrt(v[j]) * Inverse.normal(u(world, "r2", j));
                weight[j] = 1;
            }
            EffortRatio learned = EffortRatio.learn(1.15, r, v, weight);
            TaskEffort task = TaskEffort.estimated(300, 600, 1500, 0, 0);
            double truth = task.left(beta, kappa, u(world, "own", 0));
            int below = 0;
            for (int draw = 0; draw < 199; draw++) {
                double drawnKappa = learned.kappa(u(world, "draw kappa", draw));
                double drawnBeta = learned.beta(drawnKappa, u(world, "draw beta", draw));
                below += task.left(drawnBeta, drawnKappa, u(world, "draw own", draw)) < truth ? 1 : 0;
            }
            places[below * BINS / 200]++;
        }
        assertUniform(places);
    }

    @Test
    void true_rates_of_joining_and_leaving_lie_anywhere_in_what_is_learned() {
        int[] ofRate = new int[BINS];
        int[] ofShare = new int[BINS];
        LevelHistory prior = LevelHistory.learn(new int[0], new int[0], new int[0], new boolean[0], new double[0]);
        for (int world = 0; world < WORLDS; world++) {
            double lambda = prior.joinRate(u(world, "rate", 0));
            double c = prior.leaveShare(u(world, "share", 0));
            int months = 1 + world % 18;
            int[] start = new int[months];
            int[] joined = new int[months];
            int[] left = new int[months];
            double[] weight = new double[months];
            int n = 40;
            for (int m = 0; m < months; m++) {
                start[m] = n;
                joined[m] = LevelHistory.joined(lambda, 1, u(world, "joined", m));
                left[m] = LevelHistory.left(n, c, 1, u(world, "left", m));
                weight[m] = 1;
                n += joined[m] - left[m];
            }
            LevelHistory learned = LevelHistory.learn(start, joined, left, new boolean[start.length], weight);
            count(
                    ofRate,
                    GammaDistribution.of(learned.joinShape(), 1 / learned.joinRate())
                            .cumulativeProbability(lambda));
            count(
                    ofShare,
                    BetaDistribution.of(learned.leaveLeft(), learned.leaveStayed())
                            .cumulativeProbability(c));
        }
        assertUniform(ofRate);
        assertUniform(ofShare);
    }

    private static double u(int world, String what, int index) {
        return Streams.uniform(Streams.trialKey(77, world), Streams.key(Purpose.TASK_HOURS, what), index);
    }

    private static void count(int[] bins, double place) {
        bins[Math.min(BINS - 1, (int) (place * BINS))]++;
    }

    private static void assertUniform(int[] bins) {
        double expected = Arrays.stream(bins).sum() / (double) BINS;
        double chiSquare = Arrays.stream(bins)
                .mapToDouble(seen -> (seen - expected) * (seen - expected) / expected)
                .sum();
        assertThat(chiSquare)
                .as(Arrays.toString(bins))
                .isLessThan(ChiSquaredDistribution.of(BINS - 1).inverseSurvivalProbability(1e-6));
    }
}
