package weekwright.engine.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TaskEffortTest {
    private static final PiecesLog NOTHING = PiecesLog.of(new int[0], new int[0]);
    /** A uniform of one half: the middle of every draw. */
    private static final double MIDDLE = 0.5;

    @Test
    void rule_11_with_ratio_one_the_hours_have_the_mean_and_spread_of_the_estimate() {
        TaskEffort effort = TaskEffort.estimated(300, 600, 1200, 0, 0);
        double sum = 0;
        double squares = 0;
        int n = 200_000;
        for (int i = 0; i < n; i++) {
            double x = effort.left(0, 1, (i + 0.5) / n);
            sum += x;
            squares += x * x;
        }
        assertThat(sum / n).isCloseTo(650, within(0.01));
        assertThat(Math.sqrt(squares / n - sum / n * sum / n)).isCloseTo(150, within(0.1));
        assertThat(effort.expectedLeft(0)).isCloseTo(650, within(1e-9));
        assertThat(effort.expectedLeft(Math.log(1.3))).isCloseTo(845, within(1e-9));
    }

    @Test
    void rule_11_beta_and_kappa_enter_as_m_plus_beta_plus_kappa_root_v_z() {
        TaskEffort effort = TaskEffort.estimated(300, 600, 1200, 0, 0);
        double v = Math.log(1 + Math.pow(150 / 650.0, 2));
        double z = Inverse.normal(0.8);
        assertThat(effort.left(0.3, 1.5, 0.8))
                .isCloseTo(Math.exp(Math.log(650) - v / 2 + 0.3 + 1.5 * Math.sqrt(v) * z), within(1e-9));
    }

    @Test
    void rule_12_an_estimate_without_a_range_still_spreads_by_a_tenth() {
        TaskEffort effort = TaskEffort.estimated(600, 600, 600, 0, 0);
        double upper = effort.left(0, 1, Inverse.normalBelow(1));
        double lower = effort.left(0, 1, Inverse.normalBelow(-1));
        assertThat(Math.log(upper / lower) / 2).isCloseTo(0.1, within(1e-9));
    }

    @Test
    void rule_17_a_fixed_camera_adds_its_percent() {
        assertThat(TaskEffort.estimated(300, 600, 1200, 15, 0).left(0.1, 1, 0.3))
                .isCloseTo(1.15 * TaskEffort.estimated(300, 600, 1200, 0, 0).left(0.1, 1, 0.3), within(1e-9));
    }

    @Test
    void rule_19_hours_logged_beyond_the_estimate_leave_something_to_do() {
        for (double logged : new double[] {1, 300, 650, 1500, 6000, 60_000}) {
            TaskEffort effort = TaskEffort.estimated(300, 600, 1200, 0, logged);
            for (double u = 0.01; u < 1; u += 0.01) {
                assertThat(effort.left(0.2, 1, u)).isGreaterThan(0);
            }
            assertThat(effort.expectedLeft(0.2)).isEqualTo(effort.left(0.2, 1, MIDDLE));
        }
    }

    @Test
    void rule_20_said_left_is_the_new_likely_value_without_beta() {
        TaskEffort effort = TaskEffort.said(300, 600, 1200, 240, 0);
        // 240 / 600 of the range: mean 260; the ratio has no say
        assertThat(effort.expectedLeft(0.7)).isCloseTo(260, within(1e-9));
        assertThat(effort.left(0.7, 1, 0.4)).isEqualTo(effort.left(0, 1, 0.4));
        assertThat(effort.left(0, 2, 0.9)).isGreaterThan(effort.left(0, 1, 0.9));
    }

    @Test
    void rule_20_hours_logged_since_wear_down_what_was_said() {
        TaskEffort effort = TaskEffort.said(300, 600, 1200, 240, 120);
        double v = EffortRatio.variance(650, 150);
        double total = ThreePoint.lognormalBeyond(Math.log(260) - v / 2, Math.sqrt(v), 120, 0.3);
        assertThat(effort.left(0, 1, 0.3)).isCloseTo(total - 120, within(1e-9));
        assertThat(TaskEffort.said(300, 600, 1200, 240, 2000).left(0, 1, 0.5)).isGreaterThan(0);
    }

    @Test
    void rule_20_nothing_left_of_a_task_that_is_not_done_reads_as_a_quarter_of_an_hour() {
        assertThat(TaskEffort.said(600, 600, 600, 0, 0).expectedLeft(0)).isCloseTo(15, within(1e-9));
    }

    /** Totals and units of the unit curve (Crawford), computed from a n^(ln r / ln 2); unit values of an operations text are named. */
    @ParameterizedTest
    @CsvSource({
        "80, 2, 0.8000, 1.800",
        "80, 3, 0.7021, 2.502",
        "80, 4, 0.6400, 3.142",
        "80, 5, 0.5956, 3.738",
        "80, 8, 0.5120, 5.346",
        "80, 10, 0.4765, 6.315",
        "80, 16, 0.4096, 8.920",
        "80, 20, 0.3812, 10.485",
        "80, 50, 0.2838, 20.122",
        "80, 100, 0.2271, 32.651",
        "85, 10, 0.5828, 7.116",
        "85, 20, 0.4954, 12.402",
        "85, 100, 0.3397, 43.754",
        "90, 5, 0.7830, 4.339",
        "90, 20, 0.6342, 14.608",
        "90, 100, 0.4966, 58.141"
    })
    void rule_18_pieces_follow_the_unit_curve(double rate, int n, double unit, double total) {
        assertThat(PiecesLog.unitSum(n, n, rate)).isCloseTo(unit, within(0.00006));
        assertThat(PiecesLog.unitSum(1, n, rate)).isCloseTo(total, within(0.0006));
    }

    @Test
    void rule_18_published_values_of_the_unit_curve() {
        // an operations text, table 7S.1: 90 % and n = 20 gives .634, 85 % and n = 10 gives .583
        assertThat(PiecesLog.unitSum(20, 20, 90)).isCloseTo(0.634, within(0.0005));
        assertThat(PiecesLog.unitSum(10, 10, 85)).isCloseTo(0.583, within(0.0005));
        // AFIT-R package learningCurve, article: first unit 100, unit 125 at .80, .85, .90; total of 125 at .85
        assertThat(100 * PiecesLog.unitSum(125, 125, 80)).isCloseTo(21.13225, within(0.000005));
        assertThat(100 * PiecesLog.unitSum(125, 125, 85)).isCloseTo(32.23647, within(0.000005));
        assertThat(100 * PiecesLog.unitSum(125, 125, 90)).isCloseTo(48.00243, within(0.000005));
        assertThat(100 * PiecesLog.unitSum(1, 125, 85)).isCloseTo(5201.085, within(0.0005));
    }

    @Test
    void rule_25_learning_100_takes_the_same_for_each() {
        assertThat(PiecesLog.unitSum(3, 7, 100)).isEqualTo(5);
    }

    @Test
    void rule_18_one_deviate_serves_all_pieces() {
        double one = TaskEffort.piecesEstimated(30, 60, 120, 0, 1, 90, NOTHING).left(0.1, 1.2, 0.83);
        double twenty =
                TaskEffort.piecesEstimated(30, 60, 120, 0, 20, 90, NOTHING).left(0.1, 1.2, 0.83);
        assertThat(twenty / one).isCloseTo(14.608, within(0.0006));
    }

    @Test
    void rule_22_one_or_two_pieces_logged_leave_the_rest_as_estimated_with_beta() {
        PiecesLog log = PiecesLog.of(new int[] {400, 700}, new int[] {1, 1});
        TaskEffort effort = TaskEffort.piecesEstimated(30, 60, 120, 15, 10, 80, log);
        double whole =
                TaskEffort.piecesEstimated(30, 60, 120, 15, 10, 80, NOTHING).left(0.2, 1, 0.6);
        assertThat(effort.left(0.2, 1, 0.6) / whole).isCloseTo((6.3154 - 1.8) / 6.3154, within(1e-5));
    }

    @Test
    void rule_22_from_the_third_piece_the_log_gives_the_curve() {
        // 40 of 60 pegs logged exactly on the curve 50 k^(log2 0.9): the estimate of 30 for the first no longer matters
        int done = 40;
        int[] minutes = new int[done];
        int[] pieces = new int[done];
        double truth = 0;
        for (int k = 1; k <= 60; k++) {
            double each = 5000 * Math.pow(k, Math.log(0.9) / Math.log(2));
            if (k <= done) {
                minutes[k - 1] = (int) Math.round(each);
                pieces[k - 1] = 1;
            } else {
                truth += each;
            }
        }
        PiecesLog log = PiecesLog.of(minutes, pieces);
        EffortRatio ratio = EffortRatio.learn(1.15, new double[0], new double[0], new double[0]);
        TaskEffort effort = TaskEffort.piecesFitted(2000, 3000, 4000, 0, 60, 100, log, ratio);
        assertThat(effort.left(0, 1, MIDDLE) / truth).isCloseTo(1, within(0.05));
        assertThat(effort.left(3, 9, MIDDLE)).isEqualTo(effort.left(0, 1, MIDDLE));
        assertThat(effort.left(0, 1, 0.9) / effort.left(0, 1, 0.1)).isBetween(1.05, 1.5);
    }

    @Test
    void rule_22_the_fit_is_the_conjugate_normal_regression() {
        // three pieces of 100, 90, 80; checked by a fine grid over A and s, independent of the closed form
        PiecesLog log = PiecesLog.of(new int[] {100, 90, 80}, new int[] {1, 1, 1});
        EffortRatio ratio = new EffortRatio(25, 0.1, 4, 3, 3);
        double mean = (60 + 4 * 90 + 150) / 6.0;
        double v = EffortRatio.variance(mean, 15);
        double priorA = Math.log(mean) - v / 2 + 0.1;
        double varianceA = v + 1 / 25.0;
        double priorS = Math.log(0.9) / Math.log(2);
        double total = 0;
        double sumA = 0;
        double sumS = 0;
        for (double a = priorA - 1.5; a < priorA + 1.5; a += 0.004) {
            for (double s = priorS - 0.6; s < priorS + 0.6; s += 0.004) {
                double lnDensity = -Math.pow(a - priorA, 2) / varianceA / 2 - Math.pow(s - priorS, 2) / 0.01 / 2;
                double[] y = {Math.log(100), Math.log(90), Math.log(80)};
                for (int k = 1; k <= 3; k++) {
                    lnDensity -= Math.pow(y[k - 1] - a - s * Math.log(k) / Math.log(2), 2) / 0.0225 / 2;
                }
                double density = Math.exp(lnDensity);
                total += density;
                sumA += a * density;
                sumS += s * density;
            }
        }
        double a = sumA / total;
        double s = sumS / total;
        // one piece left: its middle is e^(A + 2 s)
        TaskEffort effort = TaskEffort.piecesFitted(60, 90, 150, 0, 4, 90, log, ratio);
        assertThat(effort.left(0, 1, MIDDLE)).isCloseTo(Math.exp(a + 2 * s), within(0.01));
    }

    @Test
    void rule_23_an_entry_with_several_pieces_gives_each_its_share_of_the_hours_since_the_last() {
        PiecesLog log = PiecesLog.of(new int[] {60, 30, 90, 45, 20}, new int[] {1, 0, 3, 0, 0});
        assertThat(log.minutesOfPiece()).containsExactly(60, 40, 40, 40);
        assertThat(log.minutesSince()).isEqualTo(65);
        assertThat(log.done()).isEqualTo(4);
    }

    @Test
    void rule_23_hours_since_the_last_piece_count_towards_the_next_of_which_a_quarter_remains() {
        PiecesLog fresh = PiecesLog.of(new int[] {400, 400}, new int[] {1, 1});
        PiecesLog some = PiecesLog.of(new int[] {400, 400, 100}, new int[] {1, 1, 0});
        PiecesLog much = PiecesLog.of(new int[] {400, 400, 9000}, new int[] {1, 1, 0});
        double left =
                TaskEffort.piecesEstimated(400, 400, 400, 0, 5, 100, fresh).left(0, 1, MIDDLE);
        assertThat(TaskEffort.piecesEstimated(400, 400, 400, 0, 5, 100, some).left(0, 1, MIDDLE))
                .isCloseTo(left - 100, within(1e-9));
        assertThat(TaskEffort.piecesEstimated(400, 400, 400, 0, 5, 100, much).left(0, 1, MIDDLE))
                .isCloseTo(left * 2 / 3 + 15, within(1e-9));
    }

    @Test
    void rule_24_all_pieces_logged_but_not_done_leave_a_quarter_of_an_hour() {
        PiecesLog all = PiecesLog.of(new int[] {50, 50, 50}, new int[] {1, 1, 1});
        EffortRatio ratio = EffortRatio.learn(1.15, new double[0], new double[0], new double[0]);
        assertThat(TaskEffort.piecesFitted(30, 60, 90, 0, 3, 90, all, ratio).left(0.5, 2, 0.99))
                .isCloseTo(15, within(1e-12));
        assertThat(TaskEffort.piecesEstimated(30, 60, 90, 0, 3, 90, all).expectedLeft(0.5))
                .isCloseTo(15, within(1e-12));
    }

    @Test
    void rule_121_a_task_without_hours_takes_those_of_one_of_the_crews_finished_tasks() {
        TaskEffort effort = TaskEffort.guessed(new double[] {900, 100, 400}, 0);
        assertThat(effort.left(1, 3, 0.1)).isEqualTo(100);
        assertThat(effort.left(0, 1, 0.5)).isEqualTo(400);
        assertThat(effort.left(0, 1, 0.99)).isEqualTo(900);
        assertThat(TaskEffort.guessed(new double[] {900, 100, 400}, 300).left(0, 1, 0.2))
                .isEqualTo(100);
    }

    @Test
    void rule_121_without_finished_tasks_twelve_hours_times_or_over_two_and_a_half() {
        TaskEffort effort = TaskEffort.guessed(new double[0], 0);
        assertThat(effort.left(1, 3, 0.5)).isCloseTo(720, within(1e-9));
        assertThat(effort.left(0, 1, Inverse.normalBelow(1))).isCloseTo(1800, within(1e-9));
        assertThat(effort.left(0, 1, Inverse.normalBelow(-1))).isCloseTo(288, within(1e-9));
    }
}
