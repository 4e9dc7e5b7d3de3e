package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.testkit.ProjectInputs.project;

import java.util.Arrays;
import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.Run;

/**
 * Whole simulations against answers that can be written down. Seeds are fixed; the room left is five standard errors of a share, a
 * false alarm of about one in two million for each value compared.
 */
class ClosedFormsTest {
    private static final int TRIALS = 20_000;
    private static final double ROOM = 5 * Math.sqrt(0.25 / TRIALS);

    @Test
    void one_task_lands_by_the_predictive_distribution_of_its_hours() {
        // beta and kappa drawn from the prior: ln T is Student's t with 6 degrees of freedom about m, scale
        // sqrt(2/3 (0.09 + v)); eight hours a day, every day
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8);
        project.task("a").hours(40, 80, 180);
        int[] landing = Run.of(project, TRIALS).outcome().taskLanding[0];
        double mean = (40 + 320 + 180) / 6.0;
        double v = Math.log(1 + Math.pow(140 / 6.0 / mean, 2));
        double m = Math.log(mean) - v / 2;
        TDistribution t = TDistribution.of(6);
        double scale = Math.sqrt(2 / 3.0 * (0.09 + v));
        for (int days = 4; days <= 30; days++) {
            double expected = t.cumulativeProbability((Math.log(8 * days) - m) / scale);
            assertThat(by(landing, days - 1)).isCloseTo(expected, within(ROOM));
        }
    }

    @Test
    void one_task_of_a_crew_whose_ratio_is_known_lands_by_the_lognormal_distribution() {
        // a thousand finished tasks, half of them one deviation over and half under the middle of the estimate: beta
        // is 0
        // and kappa is 1 to about two hundredths
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8);
        double v = Math.log(1 + Math.pow(140 / 6.0 / 90, 2));
        for (int i = 0; i < 1000; i++) {
            double hours = Math.exp(Math.log(90) - v / 2 + (i % 2 == 0 ? 1 : -1) * Math.sqrt(v));
            project.task("done-" + i)
                    .hours(40, 80, 180)
                    .logged("2027-02-20", "ana", hours)
                    .done("2027-02-28");
        }
        project.task("a").hours(40, 80, 180);
        Run run = Run.of(project, 10_000);
        int[] landing = run.outcome().taskLanding[run.task("a")];
        LogNormalDistribution lognormal = LogNormalDistribution.of(Math.log(90) - v / 2, Math.sqrt(v));
        for (int days = 5; days <= 25; days++) {
            // a hundredth more for what is still not known of kappa
            assertThat(by(landing, days - 1)).isCloseTo(lognormal.cumulativeProbability(8 * days), within(ROOM + 0.01));
        }
    }

    @Test
    void a_chain_of_waits_lands_by_the_convolution_of_their_days() {
        ProjectInputs project = project().chain("a", "b", "c");
        project.task("a").days(4, 7, 16).task("b").days(1, 3, 9).task("c").days(5, 5, 12);
        int[] landing = Run.of(project, TRIALS).outcome().taskLanding[2];
        double[] sum = convolve(convolve(days(4, 7, 16), days(1, 3, 9)), days(5, 5, 12));
        double below = 0;
        for (int day = 0; day < 60; day++) {
            below += sum[day];
            assertThat(by(landing, day)).isCloseTo(below, within(ROOM));
        }
    }

    @Test
    void two_parallel_waits_end_by_a_day_with_the_square_of_the_chance_of_one() {
        ProjectInputs project = project();
        project.task("a").stage("cast").days(4, 7, 16).task("b").stage("cast").days(4, 7, 16);
        Run run = Run.of(project, TRIALS);
        double[] one = days(4, 7, 16);
        double below = 0;
        for (int day = 0; day < 30; day++) {
            below += one[day];
            assertThat(by(run.outcome().taskLanding[0], day)).isCloseTo(below, within(ROOM));
            assertThat(by(run.outcome().held.stageLanding[0], day)).isCloseTo(below * below, within(ROOM));
        }
    }

    /**
     * Identical independent activities of 80/100/120 days into one milestone: printed 50 %, 25 %, 6.25 % for 1, 2, 4 (S. Bhat 2015,
     * "Merge bias in schedule risk: example", triangular). The lognormal shape puts the middle 0.2 % under the mean, hence the room.
     */
    @Test
    void merge_bias_of_the_published_example() {
        for (int n : new int[] {1, 2, 4}) {
            ProjectInputs project = project().horizonMonths(60);
            for (int i = 0; i < n; i++) {
                project.task("a" + i).stage("milestone").days(800, 1000, 1200);
            }
            int[] landing = Run.of(project, 8000).outcome().held.stageLanding[0];
            assertThat(by(landing, 1000)).isCloseTo(Math.pow(0.5, n), within(0.025));
        }
    }

    @Test
    void supporters_income_has_the_mean_and_variance_of_a_poisson_number_of_uncertain_rate() {
        // 24 months of 10 joining, all weighing alike: lambda ~ Gamma(240.5, 24.5); nobody was there to leave
        ProjectInputs project = project().horizonMonths(2).level("hand", 1, false);
        Inputs.Model model = project.model();
        project.model(new Inputs.Model(1, model.effortHalfLife(), 0, 0.1, true, 15, 30, 1, 0));
        for (int i = 0; i < 24; i++) {
            project.supporters("%d-%02d".formatted(2025 + i / 12, i % 12 + 1), "hand", 0, 10, 0);
        }
        project.supporters("2027-03", "hand", 0, 0, 0);
        Run run = Run.of(project, TRIALS);
        long[] cash = run.outcome().held.cash[run.week("2027-04-04")];
        double f = 30 / 31.0;
        double mean = 240.5 / 24.5 * f;
        double variance = mean + 240.5 / (24.5 * 24.5) * f * f;
        double seenMean = Arrays.stream(cash).average().orElseThrow();
        double seenVariance = Arrays.stream(cash)
                        .mapToDouble(c -> (c - seenMean) * (c - seenMean))
                        .sum()
                / TRIALS;
        assertThat(seenMean).isCloseTo(mean, within(5 * Math.sqrt(variance / TRIALS)));
        assertThat(seenVariance).isCloseTo(variance, within(5 * variance * Math.sqrt(2.2 / TRIALS)));
    }

    /**
     * A fortnight worked by hand, nothing drawn. ana is the mason and ben the smith, eight hours Monday to Friday.
     *
     * <p>Mon 1: ana digs 8; ben forges 6 and begins the hinges (2 of 5). Tue 2: ana digs 4 and pours 4; ben ends the hinges (3) and
     * waits for the frame. Pour: 10 h, so Wed 3: ana pours 6, done at hour 6, then mends 2. The cure runs three days from Wednesday's
     * evening: Saturday 6 morning. Thu 4, Fri 5: ana mends 16, done (18). Mon 8: the wall, 12 h: 8, Tue 9: 4, done at hour 4; ben hangs
     * the gate (5 h, after wall and hinges) from hour 4: 4 of it on Tuesday, 1 on Wednesday 10.
     */
    @Test
    void a_fortnight_worked_by_hand() {
        ProjectInputs project = project()
                .person("ana", "mason")
                .person("ben", "smith")
                .chain("dig", "pour", "cure", "wall", "hang")
                .chain("forge", "hinges", "hang")
                .ranks("dig", "pour", "wall", "forge", "hinges", "hang", "mend", "cure");
        project.task("dig").exactly(12).trades("mason");
        project.task("pour").exactly(10).trades("mason");
        project.task("cure").days(3);
        project.task("wall").exactly(12).trades("mason");
        project.task("mend").exactly(18).trades("mason");
        project.task("forge").exactly(6).trades("smith");
        project.task("hinges").exactly(5).trades("smith");
        project.task("hang").exactly(5).trades("smith");
        Run run = Run.of(project, 3);
        String[][] expected = {
            {"dig", "2027-03-01", "2027-03-02"},
            {"pour", "2027-03-02", "2027-03-03"},
            {"cure", "2027-03-03", "2027-03-06"},
            {"mend", "2027-03-03", "2027-03-05"},
            {"wall", "2027-03-08", "2027-03-09"},
            {"forge", "2027-03-01", "2027-03-01"},
            {"hinges", "2027-03-01", "2027-03-02"},
            {"hang", "2027-03-09", "2027-03-10"},
        };
        for (String[] row : expected) {
            assertThat(run.start(row[0])).as(row[0]).isEqualTo(row[1]);
            assertThat(run.landing(row[0])).as(row[0]).isEqualTo(row[2]);
            assertThat(run.plannedStart(row[0])).as(row[0]).isEqualTo(row[1]);
            assertThat(run.plannedLanding(row[0])).as(row[0]).isEqualTo(row[2]);
            for (int trial = 1; trial < 3; trial++) {
                assertThat(Run.text(run.outcome().taskLanding[run.task(row[0])][trial]))
                        .isEqualTo(row[2]);
            }
        }
    }

    /** Share of the trials that landed by so many days after the as-of day. */
    private static double by(int[] landing, int days) {
        int last = ProjectInputs.day(ProjectInputs.TODAY) + days;
        return Arrays.stream(landing).filter(day -> day <= last).count() / (double) landing.length;
    }

    /** Chances of 0, 1, 2 … whole days of a lognormal wait, nearest day, by commons-statistics. */
    private static double[] days(double low, double likely, double high) {
        double mean = (low + 4 * likely + high) / 6;
        double v = Math.log(1 + Math.pow((high - low) / 6 / mean, 2));
        LogNormalDistribution x = LogNormalDistribution.of(Math.log(mean) - v / 2, Math.sqrt(v));
        double[] chance = new double[200];
        for (int day = 0; day < 200; day++) {
            chance[day] = x.cumulativeProbability(day + 0.5) - (day == 0 ? 0 : x.cumulativeProbability(day - 0.5));
        }
        return chance;
    }

    private static double[] convolve(double[] a, double[] b) {
        double[] sum = new double[200];
        for (int i = 0; i < 200; i++) {
            for (int j = 0; i + j < 200; j++) {
                sum[i + j] += a[i] * b[j];
            }
        }
        return sum;
    }
}
