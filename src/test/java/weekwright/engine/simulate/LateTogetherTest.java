package weekwright.engine.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.testkit.ProjectInputs.day;
import static weekwright.testkit.ProjectInputs.project;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;
import org.junit.jupiter.api.Test;
import weekwright.engine.Inputs;
import weekwright.engine.Inputs.Range;
import weekwright.engine.Inputs.Source;
import weekwright.engine.simulate.Streams.Purpose;
import weekwright.testkit.ProjectInputs;

/**
 * Rule 137: what is late, is late together. The figures are worked apart from the program, as sums over the 24 pairs of τ and κ² with
 * their weights: for one order of r and v the density of the normal distribution of variance τ² + κ² v + 1 / (12 days²) at r.
 */
class LateTogetherTest {
    private static ProjectInputs mill() {
        // the as-of day is 1 March 2027
        ProjectInputs project =
                project().person("ana", 8, 8, 8, 8, 8, 8, 8).cash(10_000_00, 0).chain("cure", "wheel");
        project.task("cure").days(200).task("wheel").exactly(8);
        return project;
    }

    private static Inputs.Material line(String id, Range lead, String ordered, String promised, String received) {
        return new Inputs.Material(
                id,
                "wheel",
                "",
                1,
                0,
                Range.ZERO,
                Source.BOUGHT,
                0,
                lead,
                0,
                day(ordered),
                day(promised),
                day(received),
                0,
                "");
    }

    /** 15 days instead of 10, three times in February. */
    private static ProjectInputs threeLate() {
        ProjectInputs project = mill();
        project.material(line("lime", Range.of(10), "2027-02-01", "", "2027-02-16"))
                .material(line("sand", Range.of(10), "2027-02-03", "", "2027-02-18"))
                .material(line("tiles", Range.of(10), "2027-02-08", "", "2027-02-23"))
                .material(line("oak", Range.of(100), "", "", ""));
        return project;
    }

    private static LateTogether of(ProjectInputs project) {
        return new Setup(project.inputs()).learned().late();
    }

    private static Luck expected(ProjectInputs project) {
        Luck luck = new Luck(new Setup(project.inputs()));
        luck.expect();
        return luck;
    }

    @Test
    void
            rule_137_three_orders_late_alike_make_those_of_all_others_longer_and_half_of_it_is_forgotten_in_three_months() {
        // mean of γ of February 0.395309, of March 2^(-1/3) of it: e^0.313757 = 1.3685570
        LateTogether late = of(threeLate());
        assertThat(late.came()).isEqualTo(3);
        assertThat(late.chance()).isCloseTo(0.9998915, within(5e-8));
        assertThat(late.times()).isCloseTo(1.3685570, within(5e-7));
        // of 100 days: ordered in March 137, in June 117 (e^(0.313757 / 2))
        Luck luck = expected(threeLate());
        assertThat(luck.lead[3]).isEqualTo(137);
        assertThat(luck.leadFrom(3, false, 0)).isEqualTo(137);
        assertThat(luck.leadFrom(3, false, 92)).isEqualTo(117);
    }

    @Test
    void rule_137_orders_that_came_as_written_make_it_less_likely_that_there_is_anything() {
        // before them one half, after three 0.1757736
        ProjectInputs project = mill();
        for (String on : List.of("01", "03", "08")) {
            project.material(line("lime-" + on, Range.of(10), "2027-01-" + on, "", day10("2027-01-" + on)));
        }
        assertThat(of(project).chance()).isCloseTo(0.1757736, within(5e-7));
        assertThat(of(project).times()).isEqualTo(1);
    }

    private static String day10(String date) {
        return LocalDate.parse(date).plusDays(10).toString();
    }

    @Test
    void rule_137_before_two_orders_were_given_out_or_where_it_is_switched_off_leads_are_as_written() {
        ProjectInputs project = mill();
        project.material(line("lime", Range.of(10), "2027-01-04", "", "2027-02-04"))
                .material(line("oak", Range.of(100), "", "", ""));
        // one order may be late by itself
        assertThat(of(project).any()).isFalse();
        ProjectInputs off = threeLate();
        off.model(off.model().leadsApart(true));
        assertThat(of(off).any()).isFalse();
        assertThat(of(off).times()).isEqualTo(1);
        Luck luck = new Luck(new Setup(off.inputs()));
        luck.draw(1, 0);
        assertThat(luck.lead[3]).isEqualTo(100);
        assertThat(luck.leadFrom(3, false, 30)).isEqualTo(100);
    }

    @Test
    void rule_137_what_is_out_for_long_says_that_it_takes_longer_and_what_was_promised_says_nothing() {
        double without = of(threeLate()).times();
        ProjectInputs project = threeLate();
        project.material(line("slates", Range.of(10), "2027-02-08", "2027-03-20", ""));
        assertThat(of(project).times()).isEqualTo(without);
        // out for 21 days instead of 10, in its month: r > ln 2.1
        project.material(line("nails", Range.of(10), "2027-02-08", "", ""));
        assertThat(of(project).times()).isCloseTo(1.4684618, within(5e-7));
        Luck luck = expected(project);
        // the promise stands: 40 days
        assertThat(luck.lead[4]).isEqualTo(40);
    }

    @Test
    void rule_137_what_is_the_crews_own_comes_late_with_nobody() {
        ProjectInputs project = threeLate();
        project.material(own("logs", "2026-05-04")).material(own("planks", ""));
        Luck luck = new Luck(new Setup(project.inputs()));
        luck.draw(1, 0);
        assertThat(luck.lead[4]).isEqualTo(400);
        assertThat(luck.leadFrom(5, false, 0)).isEqualTo(400);
        assertThat(of(project).came() + of(project).out()).isEqualTo(3);
    }

    private static Inputs.Material own(String id, String since) {
        return new Inputs.Material(
                id,
                "wheel",
                "",
                1,
                0,
                Range.ZERO,
                Source.OWN,
                0,
                Range.of(400),
                0,
                day(since),
                Inputs.NONE,
                Inputs.NONE,
                0,
                "");
    }

    @Test
    void rule_137_the_futures_of_an_order_spread_as_what_is_believed() {
        // each pair's γ of March is normal; the shares under three of its values, from the sum over the pairs
        Luck luck = new Luck(new Setup(threeLate().inputs()));
        int trials = 4000;
        int[] days = new int[trials];
        for (int trial = 0; trial < trials; trial++) {
            luck.draw(1, trial);
            days[trial] = luck.leadFrom(3, false, 0);
        }
        // 4,000 draws: the standard error of a share is at most 0.008
        assertThat(shareUpTo(days, 119)).isCloseTo(0.267, within(0.025));
        assertThat(shareUpTo(days, 139)).isCloseTo(0.539, within(0.025));
        assertThat(shareUpTo(days, 169)).isCloseTo(0.831, within(0.025));
    }

    private static double shareUpTo(int[] days, int most) {
        return Arrays.stream(days).filter(one -> one <= most).count() / (double) days.length;
    }

    @Test
    void rule_137_orders_of_one_month_are_late_in_the_same_futures() {
        ProjectInputs project = threeLate();
        project.material(line("elm", Range.of(100), "", "", ""));
        Luck luck = new Luck(new Setup(project.inputs()));
        for (int trial = 0; trial < 50; trial++) {
            luck.draw(1, trial);
            // both written as 100 days without a range, so that nothing but the month moves them
            assertThat(luck.leadFrom(4, false, 40)).isEqualTo(luck.leadFrom(3, false, 40));
        }
    }

    @Test
    void rule_137_the_true_lateness_of_today_lies_anywhere_in_what_is_drawn_for_it() {
        // as CalibrationTest: truths drawn from what is held before, orders of eight months, those not there yet known
        // to be out
        int worlds = 1000;
        int[] places = new int[10];
        for (int world = 0; world < worlds; world++) {
            double tau = u(world, "none", 0) < 0.5 ? 0 : 0.1 * (1 + (int) (5 * u(world, "tau", 0)));
            double kappa = Math.sqrt(kappaSquared(u(world, "kappa", 0)));
            ProjectInputs project = mill();
            double kept = Math.pow(2, -1 / 3.0);
            double gamma = tau * z(world, "gamma", 0);
            for (int month = 0; month < 9; month++) {
                gamma = month == 0 ? gamma : kept * gamma + tau * Math.sqrt(1 - kept * kept) * z(world, "gamma", month);
                LocalDate first = LocalDate.of(2026, 7, 1).plusMonths(month);
                for (int k = 0; k < 2 && month < 8; k++) {
                    LocalDate ordered = first.plusDays(3 + 12 * k);
                    int days = (int) Math.round(Math.max(
                            1, 40 * Math.exp(gamma - 0.005 + kappa * 0.1 * z(world, "own" + k, month))));
                    LocalDate came = ordered.plusDays(days);
                    boolean out = came.isAfter(LocalDate.parse(ProjectInputs.TODAY));
                    project.material(
                            line("m" + month + k, range(40, 0.1), ordered.toString(), "", out ? "" : came.toString()));
                }
            }
            Inputs inputs = project.inputs();
            LateTogether late = new LateTogether(inputs, new Purchases(inputs));
            double[] times = new double[12];
            int below = 0;
            int same = 0;
            for (int trial = 0; trial < 99; trial++) {
                late.draw(Streams.trialKey(world, trial), times);
                double now = times[LateTogether.month(day(ProjectInputs.TODAY)) - late.from()];
                below += now < Math.exp(gamma) ? 1 : 0;
                same += now == Math.exp(gamma) ? 1 : 0;
            }
            // where there is nothing common, both are 1: any place among the equals
            places[(below + (int) (u(world, "place", 0) * (same + 1))) / 10]++;
        }
        double expected = worlds / 10.0;
        double chiSquare = Arrays.stream(places)
                .mapToDouble(seen -> (seen - expected) * (seen - expected) / expected)
                .sum();
        assertThat(chiSquare)
                .as(Arrays.toString(places))
                .isLessThan(ChiSquaredDistribution.of(9).inverseSurvivalProbability(1e-6));
    }

    /** A range whose logarithm's standard deviation is nearly that. */
    private static Range range(double mean, double deviation) {
        return new Range(mean * (1 - 3 * deviation), mean, mean * (1 + 3 * deviation));
    }

    private static double kappaSquared(double u) {
        double[] squared = {0.5, 1, 2, 4};
        double all = Arrays.stream(squared)
                .map(x -> Math.pow(x, -3) * Math.exp(-2 / x))
                .sum();
        double sum = 0;
        for (double x : squared) {
            sum += Math.pow(x, -3) * Math.exp(-2 / x) / all;
            if (u < sum) {
                return x;
            }
        }
        return 4;
    }

    private static double z(int world, String what, int index) {
        return Inverse.normal(u(world, what, index));
    }

    private static double u(int world, String what, int index) {
        return Streams.uniform(Streams.trialKey(91, world), Streams.key(Purpose.TASK_HOURS, what), index);
    }
}
