package weekwright.engine.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table against the distributions of commons-statistics that it was made from. */
class QuantileTableTest {
    @ParameterizedTest
    @CsvSource({"0.5, 0.5", "2.5, 1.5", "12, 3", "240.5, 24.5"})
    void rates_of_joining_read_from_the_table_have_the_right_chance(double shape, double rate) {
        LevelHistory level = new LevelHistory(shape, rate, 1, 19);
        QuantileTable table = new QuantileTable(level::joinRate);
        GammaDistribution gamma = GammaDistribution.of(shape, 1 / rate);
        for (double u = 0.001; u < 1; u += 0.001) {
            assertThat(gamma.cumulativeProbability(table.at(u))).isCloseTo(u, within(1e-4));
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 19", "4, 416", "60, 1100"})
    void shares_leaving_read_from_the_table_have_the_right_chance(double left, double stayed) {
        LevelHistory level = new LevelHistory(1, 1, left, stayed);
        QuantileTable table = new QuantileTable(level::leaveShare);
        BetaDistribution beta = BetaDistribution.of(left, stayed);
        for (double u = 0.001; u < 1; u += 0.001) {
            assertThat(beta.cumulativeProbability(table.at(u))).isCloseTo(u, within(1e-4));
        }
    }

    @ParameterizedTest
    @CsvSource({"3, 2", "12, 9", "400, 380"})
    void kappa_read_from_the_table_has_the_right_chance(double shape, double scale) {
        EffortRatio ratio = new EffortRatio(40, 0, shape, scale, 0);
        QuantileTable table = new QuantileTable(ratio::kappa);
        GammaDistribution gamma = GammaDistribution.of(shape, 1);
        for (double u = 0.001; u < 1; u += 0.001) {
            double kappa = table.at(u);
            assertThat(gamma.survivalProbability(scale / (kappa * kappa))).isCloseTo(u, within(1e-4));
        }
    }

    @Test
    void rule_9_numbers_read_from_the_table_grow_with_u() {
        QuantileTable table = new QuantileTable(new LevelHistory(0.5, 0.5, 1, 19)::joinRate);
        double before = 0;
        for (int i = 1; i < 100_000; i++) {
            double x = table.at(i / 100_000.0);
            assertThat(x >= before).isTrue();
            before = x;
        }
    }
}
