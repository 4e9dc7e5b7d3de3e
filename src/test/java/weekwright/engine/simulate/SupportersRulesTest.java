package weekwright.engine.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.testkit.ProjectInputs.day;
import static weekwright.testkit.ProjectInputs.project;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.engine.Inputs;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.Run;

/** Rules 76 to 84: supporters from month to month, and what they are charged. Counts are read from the cash they bring. */
class SupportersRulesTest {
    private static final int TRIALS = 4000;

    @Test
    void rule_76_joined_and_left_come_on_the_1st_before_the_charge() {
        // 2027-03-01 is the 1st: the month's row says 100 and so does the charge of the day; a month later they have
        // moved
        ProjectInputs project =
                project().horizonMonths(3).level("hand", 500, false).supporters("2027-03", "hand", 100, 0, 0);
        Run run = Run.of(project, TRIALS);
        long[] first = run.outcome().held.cash[run.week("2027-03-28")];
        long[] second = run.outcome().held.cash[run.week("2027-04-04")];
        double sum = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            assertThat(first[trial]).isEqualTo(50_000);
            sum += (second[trial] - first[trial]) / 500.0;
        }
        // priors: one joins a month on average, a twentieth leaves; standard error about 0.08
        assertThat(sum / TRIALS).isCloseTo(100 + 30 / 31.0 * (1 - 5), within(0.4));
    }

    @Test
    void rule_77_only_whole_months_teach_aged_from_their_middle() {
        ProjectInputs project = project()
                .today("2027-04-29")
                .level("hand", 500, false)
                .supporters("2027-03", "hand", 100, 30, 10)
                .supporters("2027-04", "hand", 120, 8, 5);
        FundsTable funds = funds(project);
        // from noon of 16 March to 29 April are 43.5 days
        double weight = Math.pow(2, -43.5 / 30.4375 / 6);
        LevelHistory expected = new LevelHistory(0.5 + weight * 30, 0.5 + weight, 1 + weight * 10, 19 + weight * 90);
        for (double u : new double[] {0.01, 0.2, 0.5, 0.9, 0.999}) {
            // the table's own error
            assertThat(funds.joinRate[0].at(u) / expected.joinRate(u)).isCloseTo(1, within(1e-3));
            assertThat(funds.leaveShare[0].at(u) / expected.leaveShare(u)).isCloseTo(1, within(1e-3));
        }
    }

    @Test
    void rule_77_of_the_as_of_month_only_the_rest_is_drawn() {
        ProjectInputs project = project()
                .today("2027-04-20")
                .horizonMonths(1)
                .level("hand", 500, false)
                .supporters("2027-03", "hand", 100, 30, 10)
                .supporters("2027-04", "hand", 120, 8, 5);
        FundsTable funds = funds(project);
        Run run = Run.of(project, 300);
        for (int trial = 0; trial < 300; trial++) {
            long key = Streams.trialKey(1, trial);
            double lambda =
                    funds.joinRate[0].at(Streams.uniform(key, Streams.key(Streams.Purpose.JOIN_RATE, "hand"), 0));
            double c =
                    funds.leaveShare[0].at(Streams.uniform(key, Streams.key(Streams.Purpose.LEAVE_SHARE, "hand"), 0));
            int month = ProjectInputs.month("2027-04");
            // ten of thirty days are to come; five of 120 have gone already and eight have come
            int came = Inverse.poisson(
                    lambda * 10 / 30, Streams.uniform(key, Streams.key(Streams.Purpose.JOINED, "hand"), month));
            int went = Inverse.binomial(
                    115,
                    1 - Math.pow(1 - c, 10 / 30.0),
                    Streams.uniform(key, Streams.key(Streams.Purpose.LEFT, "hand"), month));
            assertThat(run.outcome().held.cash[run.week("2027-05-02")][trial])
                    .isEqualTo(500L * (120 + 8 - 5 + came - went));
        }
    }

    @Test
    void rule_78_a_level_without_any_row_has_nobody_and_gains_nobody() {
        ProjectInputs project = project().level("hand", 500, false);
        Run run = Run.of(project, 50);
        assertThat(run.outcome().held.cash[run.week("2028-02-27")]).containsOnly(0);
    }

    @Test
    void rule_79_the_months_row_is_trusted_before_the_sum_of_the_month_before() {
        ProjectInputs project = project()
                .level("hand", 500, false)
                .supporters("2027-02", "hand", 100, 30, 10)
                .supporters("2027-03", "hand", 90, 0, 0);
        assertThat(Run.of(project).cash("2027-03-07")).isEqualTo(45_000);
    }

    @Test
    void rule_80_rates_far_ahead_spread_as_a_random_walk() {
        // nobody leaves a level of a million on record; 400 join a month
        ProjectInputs project = project().horizonMonths(26).level("hand", 1, false);
        for (int i = 0; i < 12; i++) {
            project.supporters("2026-%02d".formatted(i + 1), "hand", 1_000_000, 400, 0);
        }
        Inputs.Model model = project.model();
        project.model(new Inputs.Model(1, model.effortHalfLife(), 0, 0.1, true, 15, 30, 1, 0));
        project.supporters("2027-03", "hand", 1_000_000, 0, 0);
        Run run = Run.of(project, TRIALS);
        double sum = 0;
        double squares = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            double lnRate = Math.log(count(run, trial, "2029-04-01") - count(run, trial, "2029-03-01"));
            sum += lnRate;
            squares += lnRate * lnRate;
        }
        double deviation = Math.sqrt(squares / TRIALS - Math.pow(sum / TRIALS, 2));
        // the 25th month: 24 steps of 0.1, the counting noise 1/400 and the posterior's 1/4800
        assertThat(deviation).isCloseTo(Math.sqrt(24 * 0.01 + 1 / 400.0 + 1 / 4800.0), within(0.03));
    }

    /** Slots on Fridays, an empty one of which has so many times as many leave. */
    private static void fridays(ProjectInputs project, String first, double emptyLeaving, List<Integer> skip) {
        project.publishing(new Inputs.Publishing(
                5,
                day(first),
                1,
                20,
                1,
                14,
                project.publishing().editMinutes(),
                Inputs.NO_LIMIT,
                emptyLeaving,
                skip,
                List.of(),
                3,
                0));
    }

    /** What a charge on the 1st brought at one minor unit each: the Sunday after it less the Sunday before. */
    private static long count(Run run, int trial, String first) {
        int i = 0;
        while (run.outcome().weeks[i] < day(first)) {
            i++;
        }
        return run.outcome().held.cash[i][trial] - run.outcome().held.cash[i - 1][trial];
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.0, 1.3})
    void rule_81_empty_slots_of_the_month_gone_multiply_its_leaving(double factor) {
        ProjectInputs project = project()
                .today("2027-02-28")
                .horizonMonths(2)
                .level("hand", 1, false)
                .supporters("2027-01", "hand", 100_000, 0, 2000)
                .supporters("2027-02", "hand", 100_000, 0, 0);
        fridays(project, "2027-03-05", factor, List.of());
        Run run = Run.of(project, 400);
        double left = 0;
        for (int trial = 0; trial < 400; trial++) {
            left += 100_000 - count(run, trial, "2027-04-01");
        }
        // four empty Fridays in March; 2 % leave, and half a person joins by the prior
        assertThat(left / 400 / 2000).isCloseTo(Math.pow(factor, 4), within(0.02 * Math.pow(factor, 4)));
    }

    @Test
    void rule_81_slots_of_the_month_that_were_empty_before_the_as_of_day_count_too() {
        ProjectInputs project = project().today("2027-03-20");
        fridays(project, "2027-03-05", 1.3, List.of());
        assertThat(calendar(project).emptyThisMonth).isEqualTo(3);
        fridays(project, "2027-03-05", 1.3, List.of(day("2027-03-12")));
        assertThat(calendar(project).emptyThisMonth).isEqualTo(2);
        fridays(project, "2027-02-05", 1.3, List.of());
        project.published("e1", "2027-02-26").published("e2", "2027-03-06");
        assertThat(calendar(project).emptyThisMonth).isEqualTo(2);
        project.published("e3", "2027-03-11").published("e4", "2027-03-12").published("e5", "2027-03-13");
        assertThat(calendar(project).emptyThisMonth).isZero();
        // today's slot is still open
        ProjectInputs friday = project().today("2027-03-19");
        fridays(friday, "2027-03-05", 1.3, List.of());
        assertThat(calendar(friday).emptyThisMonth).isEqualTo(2);
        assertThat(calendar(project().today("2027-03-20")).emptyThisMonth).isZero();
    }

    @Test
    void rule_81_they_make_more_leave_on_the_next_1st() {
        ProjectInputs project = project()
                .today("2027-03-27")
                .horizonMonths(2)
                .level("hand", 1, false)
                .supporters("2027-02", "hand", 100_000, 0, 2000)
                .supporters("2027-03", "hand", 100_000, 0, 0);
        fridays(project, "2027-03-05", 1.3, List.of());
        Run run = Run.of(project, 400);
        double left = 0;
        for (int trial = 0; trial < 400; trial++) {
            left += 100_000
                    - run.outcome().held.cash[run.week("2027-04-04")][trial]
                    + run.outcome().held.cash[run.week("2027-03-28")][trial];
        }
        // the rest of March is 4 of 31 days; four of its Fridays went by without a film before the 27th
        double rest = 1 - Math.pow(1 - 0.02, 4 / 31.0);
        double usual = left / 400 / 100_000;
        assertThat(usual).isCloseTo(Math.pow(1.3, 4) * rest, within(0.15 * rest));
    }

    @Test
    void rule_82_publications_of_the_as_of_month_count_towards_its_charges() {
        ProjectInputs project = project().today("2027-03-20").level("film", 300, true);
        project.published("e1", "2027-02-26");
        project.published("e2", "2027-03-05");
        project.published("e3", "2027-03-12");
        assertThat(funds(project).publishedThisMonth).isEqualTo(2);
    }

    @Test
    void rule_84_charges_before_the_as_of_day_come_in_on_their_pay_out_date() {
        ProjectInputs project = project()
                .today("2027-03-20")
                .level(new Inputs.PledgeLevel("month", 500, false, 6, 25, 3, 30, false))
                .level(new Inputs.PledgeLevel("film", 300, true, 0, 0, 0, 10, false))
                .supporters("2027-02", "month", 150, 0, 0)
                .supporters("2027-03", "month", 200, 0, 0)
                .supporters("2027-03", "film", 10, 0, 0);
        project.published("e2", "2027-03-05");
        project.published("e3", "2027-03-12");
        // 1 February + 30 days is 3 March and past; 1 March + 30 is 31 March: 200 (1 - .03) (5.00 (1 - .06) - .25) =
        // 863.30
        // 5 March + 10 is past; 12 March + 10 is 22 March
        long[] onTheWay = funds(project).onTheWay;
        assertThat(onTheWay[2]).isEqualTo(3000);
        assertThat(onTheWay[11]).isEqualTo(86_330);
        assertThat(Arrays.stream(onTheWay).sum()).isEqualTo(89_330);
    }

    @Test
    void rule_84_a_charge_of_today_is_not_one_of_the_past() {
        ProjectInputs project = project()
                .level(new Inputs.PledgeLevel("month", 500, false, 0, 0, 0, 30, false))
                .supporters("2027-02", "month", 100, 0, 0)
                .supporters("2027-03", "month", 100, 0, 0);
        // today is 1 March; 1 February + 30 days is 3 March and still out
        long[] onTheWay = funds(project).onTheWay;
        assertThat(onTheWay[2]).isEqualTo(50_000);
        assertThat(Arrays.stream(onTheWay).sum()).isEqualTo(50_000);
    }

    @Test
    void rule_82_and_84_publications_over_the_months_limit_charged_nothing() {
        ProjectInputs project = project()
                .today("2027-03-20")
                .level(new Inputs.PledgeLevel("film", 300, true, 0, 0, 0, 30, false))
                .supporters("2027-03", "film", 10, 0, 0);
        Inputs.Publishing p = project.publishing();
        project.publishing(
                new Inputs.Publishing(5, p.first(), 1, 20, 1, 14, p.editMinutes(), 1, 1, List.of(), List.of(), 3, 0));
        project.published("e2", "2027-03-05");
        project.published("e3", "2027-03-12");
        long[] onTheWay = funds(project).onTheWay;
        // 5 March + 30 days is 4 April
        assertThat(onTheWay[15]).isEqualTo(3000);
        assertThat(Arrays.stream(onTheWay).sum()).isEqualTo(3000);
    }

    private static Calendar calendar(ProjectInputs project) {
        return new Calendar(project.inputs());
    }

    private static FundsTable funds(ProjectInputs project) {
        Inputs inputs = project.inputs();
        return new FundsTable(inputs, new Calendar(inputs));
    }
}
