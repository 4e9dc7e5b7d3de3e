package weekwright.engine.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.engine.Inputs;

class ThreePointTest {
    /** Rows of a published three-point network of 14 activities (a textbook question in open circulation, te to two decimals). */
    @ParameterizedTest
    @CsvSource({
        "5, 5, 7, 5.33", "1, 2, 5, 2.33", "5, 5, 5, 5.00", "4, 8, 13, 8.17", "1, 10, 17, 9.67", "1, 5, 7, 4.67",
                "2, 6, 9, 5.83",
        "4, 4, 6, 4.33", "2, 7, 10, 6.67", "2, 4, 7, 4.17", "6, 10, 13, 9.83", "2, 6, 6, 5.33", "2, 2, 3, 2.17",
                "7, 7, 12, 7.83"
    })
    void means_of_the_published_network(double low, double likely, double high, double printed) {
        assertThat(ThreePoint.mean(low, likely, high)).isCloseTo(printed, within(0.005));
    }

    @Test
    void variance_of_the_published_networks_critical_path() {
        // A-C-E-H-I-K-M-N; printed 50.83 days, variance 11.194, standard deviation 3.346
        double[][] path = {{5, 5, 7}, {5, 5, 5}, {1, 10, 17}, {4, 4, 6}, {2, 7, 10}, {6, 10, 13}, {2, 2, 3}, {7, 7, 12}
        };
        double mean = 0;
        double variance = 0;
        for (double[] task : path) {
            mean += ThreePoint.mean(task[0], task[1], task[2]);
            variance += Math.pow(ThreePoint.deviation(task[0], task[2]), 2);
        }
        assertThat(mean).isCloseTo(50.83, within(0.005));
        assertThat(variance).isCloseTo(11.194, within(0.0005));
        assertThat(Math.sqrt(variance)).isCloseTo(3.346, within(0.0005));
        // printed P(<= 55) 0.8944 comes from z rounded to 1.25; the unrounded value is 0.8935
        assertThat(Inverse.normalBelow((55 - mean) / Math.sqrt(variance))).isCloseTo(0.8935, within(0.00005));
    }

    @Test
    void rule_11_the_drawn_number_has_the_mean_and_the_standard_deviation_of_the_estimate() {
        double sum = 0;
        double squares = 0;
        int n = 400_000;
        Spread spread = spread(4, 8, 15);
        for (int i = 0; i < n; i++) {
            double x = spread.draw((i + 0.5) / n);
            sum += x;
            squares += x * x;
        }
        assertThat(sum / n).isCloseTo(51 / 6.0, within(1e-4));
        assertThat(Math.sqrt(squares / n - sum / n * sum / n)).isCloseTo(11 / 6.0, within(1e-3));
    }

    @Test
    void rule_26_no_spread_is_the_value_itself_and_zero_is_zero() {
        assertThat(spread(7, 7, 7).draw(0.93)).isEqualTo(7);
        assertThat(spread(0, 0, 0).draw(0.93)).isZero();
        assertThat(spread(7, 7, 7).drawBeyond(3, 0.5)).isEqualTo(7);
    }

    private static Spread spread(double low, double likely, double high) {
        return Spread.of(new Inputs.Range(low, likely, high));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.49, 0", "0.5, 1", "1.499, 1", "1.5, 2", "2.5, 3", "-3, 0"})
    void rule_10_drawn_days_are_whole_halves_up_never_under_0(double days, int whole) {
        assertThat(ThreePoint.wholeDays(days)).isEqualTo(whole);
    }

    @Test
    void rule_19_a_draw_given_more_than_h_agrees_with_commons_statistics() {
        double mu = 2.2;
        double sigma = 0.4;
        LogNormalDistribution oracle = LogNormalDistribution.of(mu, sigma);
        for (double h : new double[] {1, 5, 9, 14, 30, 60}) {
            for (double u = 0.01; u < 1; u += 0.01) {
                double expected = oracle.inverseSurvivalProbability((1 - u) * oracle.survivalProbability(h));
                assertThat(ThreePoint.lognormalBeyond(mu, sigma, h, u) / expected)
                        .isCloseTo(1, within(1e-10));
            }
        }
    }

    @Test
    void rule_19_far_beyond_the_estimate_the_tail_formula_goes_on_where_the_exact_one_stops() {
        double mu = 2;
        double sigma = 0.2;
        double h = Math.exp(mu + 7 * sigma);
        // ln T = ln h - sigma ln(u) / z_h, u falling: 1 - 0.75 gives the upper quarter
        assertThat(ThreePoint.lognormalBeyond(mu, sigma, h, 0.75))
                .isCloseTo(h * Math.exp(-0.2 * Math.log(0.25) / 7), within(1e-9));
        double far = Math.exp(mu + 60 * sigma);
        assertThat(ThreePoint.lognormalBeyond(mu, sigma, far, 0.5))
                .isGreaterThan(far)
                .isLessThan(1.01 * far);
        // at the join the two differ by less than 5 % (the next term of the series is 1 / z_h^2)
        double join = Math.exp(mu + 6 * sigma);
        double under = ThreePoint.lognormalBeyond(mu, sigma, join * (1 - 1e-9), 0.5) / join - 1;
        double over = ThreePoint.lognormalBeyond(mu, sigma, join * (1 + 1e-9), 0.5) / join - 1;
        assertThat(over / under).isCloseTo(1, within(0.05));
    }

    @Test
    void rule_19_a_draw_given_more_than_h_grows_with_u_and_never_falls_under_h() {
        for (double h : new double[] {0, 1, 8, 20, 200}) {
            double before = 0;
            for (double u = 0.0005; u < 1; u += 0.0005) {
                double x = ThreePoint.lognormalBeyond(2, 0.3, h, u);
                assertThat(x).isGreaterThanOrEqualTo(h).isGreaterThanOrEqualTo(before);
                before = x;
            }
        }
    }
}
