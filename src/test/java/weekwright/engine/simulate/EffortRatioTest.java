package weekwright.engine.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.GammaDistribution;
import org.junit.jupiter.api.Test;

class EffortRatioTest {
    private static final double[] NONE = {};

    @Test
    void rule_11_one_hour_over_the_middle_of_the_estimate_is_a_ratio_of_one() {
        // E = 10, sd = 2: v = ln 1.04, the middle of the estimate is 10 / sqrt(1.04)
        double v = EffortRatio.variance(10, 2);
        assertThat(v).isCloseTo(Math.log(1.04), within(1e-15));
        assertThat(EffortRatio.logRatio(10 / Math.sqrt(1.04), 10, v)).isCloseTo(0, within(1e-15));
        assertThat(EffortRatio.logRatio(20 / Math.sqrt(1.04), 10, v)).isCloseTo(Math.log(2), within(1e-15));
    }

    @Test
    void rule_12_the_variance_is_at_least_a_hundredth() {
        assertThat(EffortRatio.variance(10, 0)).isEqualTo(0.01);
        assertThat(EffortRatio.variance(10, 1)).isEqualTo(0.01);
        assertThat(EffortRatio.variance(10, 1.01)).isGreaterThan(0.01);
    }

    @Test
    void rule_13_without_finished_tasks_the_prior_stands() {
        EffortRatio ratio = EffortRatio.learn(1.15, NONE, NONE, NONE);
        assertThat(ratio.kn()).isCloseTo(1 / 0.09, within(1e-12));
        assertThat(ratio.betaN()).isCloseTo(Math.log(1.15), within(1e-15));
        assertThat(ratio.an()).isEqualTo(3);
        assertThat(ratio.bn()).isEqualTo(2);
        assertThat(ratio.finished()).isZero();
        assertThat(EffortRatio.learn(1, NONE, NONE, NONE).betaN()).isZero();
    }

    @Test
    void rule_13_two_finished_tasks_worked_by_hand() {
        // priorRatio 1, so the prior's middle is 0; w = 1 / 0.05 = 20 and 0.5 / 0.1 = 5; k0 = 100/9
        // kn = 325/9, betaN = (20 * 0.3 - 5 * 0.1) / (325/9) = 49.5/325, an = 3.75
        // bn = 2 + (20 * 0.09 + 5 * 0.01 - kn betaN^2) / 2
        EffortRatio ratio =
                EffortRatio.learn(1, new double[] {0.3, -0.1}, new double[] {0.05, 0.1}, new double[] {1, 0.5});
        assertThat(ratio.kn()).isCloseTo(325 / 9.0, within(1e-12));
        assertThat(ratio.betaN()).isCloseTo(49.5 / 325, within(1e-15));
        assertThat(ratio.an()).isEqualTo(3.75);
        assertThat(ratio.bn()).isCloseTo(2 + (1.85 - 325 / 9.0 * Math.pow(49.5 / 325, 2)) / 2, within(1e-13));
    }

    @Test
    void rule_13_the_posterior_does_not_depend_on_the_order_in_which_tasks_came_and_updates_chain() {
        // conjugacy: shifting all r and the prior's middle by ln 1.15 shifts beta alone (prior ratio 1.15 against 1)
        double shift = Math.log(1.15);
        double[] r = {0.3, -0.1, 0.7};
        double[] moved = {0.3 + shift, -0.1 + shift, 0.7 + shift};
        double[] v = {0.05, 0.1, 0.02};
        double[] d = {1, 0.5, 0.8};
        EffortRatio plain = EffortRatio.learn(1, r, v, d);
        EffortRatio shifted = EffortRatio.learn(1.15, moved, v, d);
        assertThat(shifted.betaN()).isCloseTo(plain.betaN() + shift, within(1e-14));
        assertThat(shifted.bn()).isCloseTo(plain.bn(), within(1e-13));
        assertThat(shifted.kn()).isEqualTo(plain.kn());
    }

    @Test
    void rule_14_a_task_finished_a_half_life_ago_weighs_half() {
        assertThat(EffortRatio.ageWeight(0, 18)).isEqualTo(1);
        assertThat(EffortRatio.ageWeight(18 * 30.4375, 18)).isCloseTo(0.5, within(1e-15));
        assertThat(EffortRatio.ageWeight(36 * 30.4375, 18)).isCloseTo(0.25, within(1e-15));
        assertThat(EffortRatio.ageWeight(5000, 0)).isEqualTo(1);
    }

    @Test
    void rule_15_a_tenth_of_the_low_estimate_counts_and_less_was_not_logged() {
        assertThat(EffortRatio.counts(60, 600)).isTrue();
        assertThat(EffortRatio.counts(59, 600)).isFalse();
        assertThat(EffortRatio.counts(0, 0)).isFalse();
        assertThat(EffortRatio.counts(5000, 600)).isTrue();
    }

    @Test
    void kappa_is_the_root_of_an_inverse_gamma_number_and_grows_with_its_uniform() {
        EffortRatio ratio = new EffortRatio(40, 0.2, 5.5, 4.1, 5);
        double before = 0;
        double mean = 0;
        int n = 20_000;
        for (int i = 0; i < n; i++) {
            double u = (i + 0.5) / n;
            double kappa = ratio.kappa(u);
            assertThat(kappa).isGreaterThan(before);
            before = kappa;
            mean += kappa * kappa / n;
            // P(kappa^2 <= x) = P(Gamma(a, 1) >= b / x)
            assertThat(GammaDistribution.of(5.5, 1).survivalProbability(4.1 / (kappa * kappa)))
                    .isCloseTo(u, within(1e-7));
        }
        // mean of InvGamma(a, b) is b / (a - 1)
        assertThat(mean).isCloseTo(4.1 / 4.5, within(2e-3));
    }

    @Test
    void the_stated_range_of_the_ratio_is_the_one_that_trials_draw() {
        EffortRatio ratio = new EffortRatio(40, 0.2, 5.5, 4.1, 5);
        double p90 = ratio.ratioQuantile(0.9);
        double p10 = ratio.ratioQuantile(0.1);
        int under10 = 0;
        int under90 = 0;
        int n = 400;
        for (int i = 0; i < n; i++) {
            double kappa = ratio.kappa((i + 0.5) / n);
            for (int j = 0; j < n; j++) {
                double beta = ratio.beta(kappa, (j + 0.5) / n);
                under10 += Math.exp(beta) <= p10 ? 1 : 0;
                under90 += Math.exp(beta) <= p90 ? 1 : 0;
            }
        }
        assertThat(under10 / (double) (n * n)).isCloseTo(0.1, within(0.002));
        assertThat(under90 / (double) (n * n)).isCloseTo(0.9, within(0.002));
        assertThat(ratio.ratioQuantile(0.5)).isCloseTo(Math.exp(0.2), within(1e-9));
    }

    @Test
    void many_finished_tasks_find_the_true_ratio() {
        int n = 400;
        double[] r = new double[n];
        double[] v = new double[n];
        double[] d = new double[n];
        long key = Streams.key(Streams.Purpose.TASK_HOURS, "truth");
        for (int j = 0; j < n; j++) {
            v[j] = 0.02 + 0.08 * (j % 5) / 4;
            r[j] = Math.log(1.4)
                    + 1.2 * Math.sqrt(v[j]) * Inverse.normal(Streams.uniform(Streams.trialKey(1, j), key, 0));
            d[j] = 1;
        }
        EffortRatio ratio = EffortRatio.learn(1.15, r, v, d);
        // five standard errors, kappa / sqrt(kn)
        assertThat(ratio.betaN()).isCloseTo(Math.log(1.4), within(5 * 1.2 / Math.sqrt(ratio.kn())));
        assertThat(ratio.kappa(0.5)).isCloseTo(1.2, within(5 * 1.2 / Math.sqrt(2 * n)));
    }
}
