package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** Scores against worked values. */
class ScoreTest {
    @Test
    void the_ranked_score_of_five_values_is_the_worked_one() {
        // 18, 19, 20, 21, 24 and 22: mean distance 12/5 = 2.4, mean distance of pairs 56/25 = 2.24, 2.4 - 1.12 = 1.28
        assertThat(Score.crps(new double[] {24, 18, 19, 21, 20}, 22)).isEqualTo(1.28, within(1e-9));
    }

    @Test
    void the_ranked_score_of_one_value_is_the_distance() {
        assertThat(Score.crps(new double[] {20}, 27)).isEqualTo(7, within(1e-9));
    }

    @Test
    void the_ranked_score_of_many_normal_values_is_the_closed_form() {
        // s [z (2 Phi(z) - 1) + 2 phi(z) - 1 / sqrt(pi)]; N(20, 3) and 25: 3.4264 (Gneiting, Raftery, Westveld &
        // Goldman 2005,
        // "Calibrated probabilistic forecasting using ensemble model output statistics", Mon. Weather Rev. 133,
        // equation 5)
        NormalDistribution normal = NormalDistribution.of(20, 3);
        double[] values = new double[4000];
        for (int i = 0; i < values.length; i++) {
            values[i] = normal.inverseCumulativeProbability((i + 0.5) / values.length);
        }
        assertThat(Score.crps(values, 25)).isEqualTo(3.4264, within(0.002));
        assertThat(Score.crps(values, 20)).isEqualTo(3 * 0.2337, within(0.002));
    }

    @Test
    void what_has_not_happened_yet_is_scored_up_to_today_alone() {
        // 18 and 26, not happened on 22: between 18 and 22 half was said to have happened: 4 * 0.5^2 = 1
        assertThat(Score.crpsUpTo(new double[] {18, 26}, 22)).isEqualTo(1, within(1e-9));
        assertThat(Score.crpsUpTo(new double[] {25, 26}, 22)).isZero();
    }

    @Test
    void pinball_loss_is_the_worked_one() {
        // y < Q: (1 - q) (Q - y), else q (y - Q); q 0.8, said 23: 22 costs 0.20, 27 costs 3.20
        assertThat(Score.pinball(0.8, 23, 22)).isEqualTo(0.2, within(1e-9));
        assertThat(Score.pinball(0.8, 23, 27)).isEqualTo(3.2, within(1e-9));
    }

    @Test
    void nineteen_in_twenty_counts_of_hits_are_those_of_binomial_tables() {
        // 95 % acceptance for p = 0.8; exact binomial distribution
        assertThat(Score.expectedHits(20, 0.8)).isEqualTo(new Score.Span(12, 19));
        assertThat(Score.expectedHits(50, 0.8)).isEqualTo(new Score.Span(34, 45));
        assertThat(Score.expectedHits(100, 0.8)).isEqualTo(new Score.Span(72, 88));
        assertThat(Score.expectedHits(200, 0.8)).isEqualTo(new Score.Span(149, 171));
        assertThat(Score.expectedHits(1000, 0.8)).isEqualTo(new Score.Span(775, 824));
        assertThat(Score.expectedHits(100, 0.5)).isEqualTo(new Score.Span(40, 60));
        assertThat(Score.expectedHits(20, 0.8).holds(11)).isFalse();
        assertThat(Score.expectedHits(20, 0.8).holds(12)).isTrue();
    }
}
