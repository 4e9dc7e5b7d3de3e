package weekwright.engine.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.GammaDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LevelHistoryTest {
    @Test
    void rule_78_without_whole_months_the_priors_stand() {
        LevelHistory level = LevelHistory.learn(new int[0], new int[0], new int[0], new boolean[0], new double[0]);
        assertThat(level).isEqualTo(new LevelHistory(0.5, 0.5, 1, 19));
    }

    @Test
    void rule_78_a_level_without_any_row_gains_nobody() {
        assertThat(LevelHistory.NONE.joinRate(0.999999)).isZero();
    }

    @Test
    void counts_and_shares_update_as_in_the_textbooks() {
        // Gamma(10, 2) and counts 6, 2, 2, 1 give Gamma(21, 6): Johnson, Ott & Dogucu, Bayes Rules!, ch. 5; here with
        // prior
        // Gamma(0.5, 0.5) the same counts give Gamma(11.5, 4.5)
        LevelHistory level = LevelHistory.learn(
                new int[] {100, 100, 100, 100},
                new int[] {6, 2, 2, 1},
                new int[] {1, 0, 1, 1},
                new boolean[4],
                new double[] {1, 1, 1, 1});
        assertThat(level.joinShape()).isEqualTo(11.5);
        assertThat(level.joinRate()).isEqualTo(4.5);
        // Beta(1, 1) and 3 of 100 give Beta(4, 98) by the same rule; here Beta(1, 19) and 3 of 400
        assertThat(level.leaveLeft()).isEqualTo(4);
        assertThat(level.leaveStayed()).isEqualTo(416);
    }

    @Test
    void quantiles_of_the_textbook_posteriors() {
        // Gamma(21, 6): 95 % interval 2.1666 to 5.1481, mean 3.5 (the posterior of Bayes Rules!, ch. 5)
        LevelHistory level = new LevelHistory(21, 6, 438, 544);
        assertThat(level.joinRate(0.025)).isCloseTo(2.1666, within(0.00005));
        assertThat(level.joinRate(0.975)).isCloseTo(5.1481, within(0.00005));
        // Beta(438, 544): 95 % interval .4151 to .4772 (Gelman et al., Bayesian Data Analysis, section 2.4)
        assertThat(level.leaveShare(0.025)).isCloseTo(0.4151, within(0.00005));
        assertThat(level.leaveShare(0.975)).isCloseTo(0.4772, within(0.00005));
    }

    @Test
    void drawn_rates_follow_the_posterior_of_commons_statistics() {
        LevelHistory level = new LevelHistory(11.5, 4.5, 4, 416);
        for (double u = 0.05; u < 1; u += 0.05) {
            assertThat(GammaDistribution.of(11.5, 1 / 4.5).cumulativeProbability(level.joinRate(u)))
                    .isCloseTo(u, within(1e-7));
            assertThat(BetaDistribution.of(4, 416).cumulativeProbability(level.leaveShare(u)))
                    .isCloseTo(u, within(1e-6));
        }
    }

    @Test
    void recent_months_weigh_more() {
        LevelHistory level = LevelHistory.learn(
                new int[] {40, 60}, new int[] {8, 20}, new int[] {2, 4}, new boolean[2], new double[] {0.25, 1});
        assertThat(level).isEqualTo(new LevelHistory(22.5, 1.75, 1 + 0.5 + 4, 19 + 0.25 * 38 + 56));
    }

    @Test
    void rule_79_each_rows_start_is_trusted() {
        // 40 + 8 - 2 is 46, but the next row says 60; more left than were there counts as all
        LevelHistory level = LevelHistory.learn(
                new int[] {40, 60, 3}, new int[] {8, 0, 0}, new int[] {2, 0, 5}, new boolean[3], new double[] {1, 1, 1
                });
        assertThat(level.leaveStayed()).isEqualTo(19 + 38 + 60);
        assertThat(level.leaveLeft()).isEqualTo(1 + 2 + 3);
    }

    @Test
    void rule_80_the_rate_walks_by_a_tenth_a_month() {
        double squares = 0;
        int n = 20_000;
        for (int i = 0; i < n; i++) {
            double step = Math.log(LevelHistory.drift(0.1, (i + 0.5) / n));
            squares += step * step;
        }
        assertThat(Math.sqrt(squares / n)).isCloseTo(0.1, within(1e-4));
        assertThat(LevelHistory.drift(0.1, 0.5)).isEqualTo(1);
        assertThat(LevelHistory.drift(0, 0.99)).isEqualTo(1);
    }

    @Test
    void rule_81_empty_slots_multiply_the_share_that_leaves_up_to_all() {
        assertThat(LevelHistory.leaveShare(0.04, 1.5, 0)).isEqualTo(0.04);
        assertThat(LevelHistory.leaveShare(0.04, 1.5, 2)).isCloseTo(0.09, within(1e-15));
        assertThat(LevelHistory.leaveShare(0.04, 10, 3)).isEqualTo(1);
        assertThat(LevelHistory.leaveShare(0.04, 1, 5)).isEqualTo(0.04);
    }

    @Test
    void rule_77_the_rest_of_a_month_draws_its_share() {
        for (double u = 0.05; u < 1; u += 0.05) {
            assertThat(LevelHistory.joined(12, 0.25, u)).isEqualTo(Inverse.poisson(3, u));
            assertThat(LevelHistory.left(200, 0.19, 0.5, u)).isEqualTo(Inverse.binomial(200, 1 - Math.sqrt(0.81), u));
            assertThat(LevelHistory.left(200, 0.19, 1, u)).isEqualTo(Inverse.binomial(200, 0.19, u));
        }
    }

    /** Net of one pledge at the rates of the arithmetic table: 8 % of the service, then 2.9 % + 0.30 of the processor. */
    @ParameterizedTest
    @CsvSource({"500, 415", "1000, 861", "10000, 8880"})
    void rule_83_net_of_one_charge(long amount, long net) {
        // common practice, no source; both fees together, rounded once (rounded apart they agree at these amounts)
        assertThat(Charge.of(amount, 10.9, 30, 0).net(1)).isBetween(net - 1, net + 1);
        assertThat(Charge.of(amount, 10.9, 30, 0).net(1)).isEqualTo(Math.round(amount * 0.891 - 30));
    }

    @Test
    void rule_83_many_charges_are_rounded_once() {
        // 400 pledges of 3.00 at 2.9 % + 0.30 cost 154.80 of fees when rounded once, 156.00 when rounded each
        assertThat(Charge.of(300, 2.9, 30, 0).net(400)).isEqualTo(400 * 300 - 15480);
    }

    @Test
    void rule_83_halves_go_up_and_nothing_is_owed_for_a_pledge_smaller_than_its_fee() {
        // 1 at 50 % is a half
        assertThat(Charge.of(1, 50, 0, 0).net(1)).isEqualTo(1);
        assertThat(Charge.of(1, 50, 0, 0).net(3)).isEqualTo(2);
        assertThat(Charge.of(20, 10, 30, 0).net(500)).isZero();
        assertThat(Charge.of(1000, 0, 0, 0).net(0)).isZero();
    }

    @Test
    void rule_83_declined_charges_pay_neither_pledge_nor_fixed_fee() {
        // 200 (1 - 0.03) (5.00 (1 - 0.06) - 0.25) = 863.30
        assertThat(Charge.of(500, 6, 25, 3).net(200)).isEqualTo(86330);
    }

    @Test
    void rule_83_a_very_large_charge_is_still_exact() {
        assertThat(Charge.of(10_000_000, 0.001, 0, 0.001).net(2_000_000_000)).isEqualTo(19_999_600_002_000_000L);
    }

    @Test
    void rule_86_other_months_are_whole_ones_since_the_first_row_at_most_24() {
        int asOf = day("2026-11-25");
        int[] dates = {day("2026-08-20"), day("2026-09-05"), day("2026-09-30"), day("2026-11-02")};
        long[] amounts = {-500, -2000, 700, -9999};
        assertThat(MoneyDraws.otherMonths(asOf, day("2026-08-15"), dates, amounts))
                .containsExactly(-1300, 0);
        assertThat(MoneyDraws.otherMonths(asOf, day("2026-08-01"), dates, amounts))
                .containsExactly(-500, -1300, 0);
        assertThat(MoneyDraws.otherMonths(asOf, day("2020-01-10"), dates, amounts))
                .hasSize(24);
        assertThat(MoneyDraws.otherMonths(asOf, day("2026-11-03"), dates, amounts))
                .isEmpty();
    }

    @Test
    void rule_86_each_month_is_drawn_as_often_as_any_other() {
        long[] sorted = MoneyDraws.sorted(new long[] {300, -700, 0, 0});
        int[] seen = new int[3];
        for (int i = 0; i < 4000; i++) {
            long drawn = MoneyDraws.drawMonth(sorted, (i + 0.5) / 4000);
            seen[drawn < 0 ? 0 : drawn == 0 ? 1 : 2]++;
        }
        assertThat(seen).containsExactly(1000, 2000, 1000);
        assertThat(MoneyDraws.drawMonth(new long[0], 0.5)).isZero();
    }

    @Test
    void rule_87_a_regular_item_spreads_by_its_percent_and_never_past_0() {
        assertThat(MoneyDraws.drawRegular(-40_000, 0, 0.01)).isEqualTo(-40_000);
        assertThat(MoneyDraws.drawRegular(-40_000, 10, Inverse.normalBelow(1))).isEqualTo(-44_000);
        assertThat(MoneyDraws.drawRegular(-40_000, 10, Inverse.normalBelow(-1))).isEqualTo(-36_000);
        assertThat(MoneyDraws.drawRegular(10_000, 80, 0.001)).isZero();
        assertThat(MoneyDraws.drawRegular(-10_000, 80, 0.001)).isZero();
    }

    @Test
    void rule_61_a_lines_cost_and_its_deposit_are_rounded_half_up_once() {
        // 3 pieces with 15 % waste at 10.10: 34.845 is 34.85
        assertThat(MoneyDraws.lineCost(3, 15, 1010)).isEqualTo(3485);
        // 30 % of 4850.00 down, the usual deposit; 3395.00 on arrival
        assertThat(MoneyDraws.deposit(485_000, 30)).isEqualTo(145_500);
        assertThat(MoneyDraws.lineCost(0.5, 0, 1)).isEqualTo(1);
    }

    private static int day(String date) {
        return (int) LocalDate.parse(date).toEpochDay();
    }
}
