package weekwright.engine.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.DiscreteDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The oracle is commons-statistics-distribution 1.3. */
class InverseTest {
    private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);

    @Test
    void normal_quantiles_agree_with_commons_statistics_in_the_middle_and_both_tails() {
        for (int i = 1; i < 10_000; i++) {
            double u = i / 10_000.0;
            assertThat(Inverse.normal(u)).isCloseTo(NORMAL.inverseCumulativeProbability(u), within(1e-13));
        }
        for (int power = 4; power <= 300; power++) {
            double u = Math.pow(10, -power);
            double z = NORMAL.inverseCumulativeProbability(u);
            assertThat(Inverse.normal(u) / z).isCloseTo(1, within(1e-13));
        }
        for (int power = 4; power <= 15; power++) {
            double u = 1 - Math.pow(10, -power);
            assertThat(Inverse.normal(u)).isCloseTo(NORMAL.inverseCumulativeProbability(u), within(1e-11));
        }
    }

    @ParameterizedTest
    @CsvSource({"0.5, 0", "0.975, 1.959963984540054", "0.9, 1.2815515655446004", "0.99, 2.3263478740408408"})
    void normal_quantiles_of_the_tables(double u, double z) {
        // standard normal table values to 16 digits, from memory
        assertThat(Inverse.normal(u)).isCloseTo(z, within(1e-14));
        assertThat(Inverse.normal(1 - u)).isCloseTo(-z, within(1e-14));
    }

    @Test
    void normal_quantiles_never_fall_as_u_grows() {
        double before = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < 2_000_000; i++) {
            double z = Inverse.normal((i + 0.5) / 2_000_000);
            assertThat(z >= before).isTrue();
            before = z;
        }
    }

    @Test
    void the_normal_distribution_function_agrees_with_commons_statistics_in_both_tails() {
        for (double z = -37; z <= 8; z += 0.001) {
            double expected = NORMAL.cumulativeProbability(z);
            assertThat(Inverse.normalBelow(z) / expected).isCloseTo(1, within(z > -8 ? 2e-14 : 5e-13));
        }
        assertThat(Inverse.normalBelow(0)).isEqualTo(0.5);
        assertThat(Inverse.normalBelow(-60)).isZero();
        assertThat(Inverse.normalBelow(60)).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.3, 1, 4.5, 12, 63.5, 64, 65.2, 180, 1000, 25_000})
    void poisson_numbers_agree_with_commons_statistics(double mean) {
        assertSameAs(PoissonDistribution.of(mean), u -> Inverse.poisson(mean, u));
    }

    @ParameterizedTest
    @CsvSource({
        "1, 0.5",
        "7, 0.05",
        "150, 0.03",
        "150, 0.97",
        "400, 0.25",
        "1000, 0.5",
        "20000, 0.004",
        "3000, 0.999",
        "60, 0.9999999"
    })
    void binomial_numbers_agree_with_commons_statistics(int n, double chance) {
        assertSameAs(BinomialDistribution.of(n, chance), u -> Inverse.binomial(n, chance, u));
    }

    private interface Draw {
        int at(double u);
    }

    /** k is right if F(k − 1) < u ≤ F(k), with room for the rounding of the oracle's own F. */
    private static void assertSameAs(DiscreteDistribution oracle, Draw draw) {
        double room = 1e-10;
        for (int i = 0; i < 4000; i++) {
            double u = (i + 0.5) / 4000;
            assertBetween(oracle, draw.at(u), u, room);
        }
        for (int power = 4; power <= 9; power++) {
            assertBetween(oracle, draw.at(Math.pow(10, -power)), Math.pow(10, -power), room);
            assertBetween(oracle, draw.at(1 - Math.pow(10, -power)), 1 - Math.pow(10, -power), room);
        }
    }

    private static void assertBetween(DiscreteDistribution oracle, int k, double u, double room) {
        assertThat(oracle.cumulativeProbability(k)).isGreaterThanOrEqualTo(u - room);
        if (k > 0) {
            assertThat(oracle.cumulativeProbability(k - 1)).isLessThan(u + room);
        }
    }

    @Test
    void rule_9_counts_move_one_way_with_their_parameters() {
        for (double u : new double[] {1e-9, 0.01, 0.2, 0.5, 0.77, 0.99, 1 - 1e-9}) {
            int before = 0;
            for (double mean = 0; mean < 200; mean += 0.05) {
                int k = Inverse.poisson(mean, u);
                assertThat(k).isGreaterThanOrEqualTo(before);
                before = k;
            }
            before = 0;
            for (int n = 0; n < 900; n++) {
                int k = Inverse.binomial(n, 0.13, u);
                assertThat(k).isBetween(before, before + 1);
                before = k;
            }
            before = 0;
            for (int i = 0; i <= 1000; i++) {
                int k = Inverse.binomial(300, i / 1000.0, u);
                assertThat(k).isGreaterThanOrEqualTo(before);
                before = k;
            }
        }
    }

    @Test
    void edges_of_counts() {
        double least = 0x1.0p-53;
        double most = 1 - 0x1.0p-53;
        assertThat(Inverse.poisson(0, most)).isZero();
        assertThat(Inverse.poisson(5, least)).isZero();
        assertThat(Inverse.poisson(5, most)).isBetween(25, 60);
        assertThat(Inverse.binomial(0, 0.5, 0.5)).isZero();
        assertThat(Inverse.binomial(10, 0, most)).isZero();
        assertThat(Inverse.binomial(10, 1, least)).isEqualTo(10);
        assertThat(Inverse.binomial(10, 1.5, least)).isEqualTo(10);
        assertThat(Inverse.binomial(10, 0.5, most)).isEqualTo(10);
    }

    @Test
    void logarithms_of_factorials_join_at_the_end_of_the_table() {
        double sum = 0;
        for (int n = 1; n < 400; n++) {
            sum += Math.log(n);
            assertThat(Inverse.lnFactorial(n)).isCloseTo(sum, within(1e-11));
        }
    }
}
