package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.testkit.ProjectInputs.day;
import static weekwright.testkit.ProjectInputs.project;

import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.engine.simulate.Inverse;
import weekwright.engine.simulate.LevelHistory;
import weekwright.engine.simulate.Streams;
import weekwright.engine.simulate.SupporterDraws;
import weekwright.testkit.ProjectInputs;

/** Rules 76 to 84: supporters from month to month, and what they are charged. */
class SupportersRulesTest {
    private static final int TRIALS = 20_000;

    @Test
    void rule_76_joined_and_left_come_on_the_1st_before_the_charge() {
        // 2027-03-01 is the 1st: the month's row says 100, and so does the charge of the day; a month later they have
        // moved
        ProjectInputs project = project().level("hand", 500, false).supporters("2027-03", "hand", 100, 0, 0);
        SupporterDraws draws = SupporterDraws.of(project.inputs());
        SupporterDraws.State state = draws.newState();
        double sum = 0;
        for (int trial = 0; trial < TRIALS; trial++) {
            state.begin(Streams.trialKey(1, trial));
            assertThat(state.count(0)).isEqualTo(100);
            assertThat(state.charge(0)).isEqualTo(50_000);
            state.turn(0);
            sum += state.count(0);
        }
        // priors: one joins a month on average, a twentieth leaves
        assertThat(sum / TRIALS).isCloseTo(96, within(0.2));
    }

    @Test
    void rule_77_of_the_as_of_month_only_the_rest_is_drawn() {
        ProjectInputs project = project()
                .today("2027-04-29")
                .level("hand", 500, false)
                .supporters("2027-03", "hand", 100, 30, 10)
                .supporters("2027-04", "hand", 120, 8, 5);
        SupporterDraws draws = SupporterDraws.of(project.inputs());
        // only March is whole: 30.5 joined in one and a half months, its age counted from 16 March 12:00
        double weight = Math.pow(2, -43.5 / 30.4375 / 6);
        assertThat(draws.history(0).joinShape()).isCloseTo(0.5 + weight * 30, within(1e-12));
        assertThat(draws.history(0).joinRate()).isCloseTo(0.5 + weight, within(1e-12));
        assertThat(draws.history(0).leaveLeft()).isCloseTo(1 + weight * 10, within(1e-12));
        SupporterDraws.State state = draws.newState();
        for (int trial = 0; trial < 200; trial++) {
            long key = Streams.trialKey(1, trial);
            state.begin(key);
            double lambda =
                    draws.history(0).joinRate(Streams.uniform(key, Streams.key(Streams.Purpose.JOIN_RATE, "hand"), 0));
            double c = draws.history(0)
                    .leaveShare(Streams.uniform(key, Streams.key(Streams.Purpose.LEAVE_SHARE, "hand"), 0));
            int month = ProjectInputs.month("2027-04");
            // two of thirty days are left; five of 120 have gone already
            int came = Inverse.poisson(
                    lambda * 2 / 30, Streams.uniform(key, Streams.key(Streams.Purpose.JOINED, "hand"), month));
            int went = Inverse.binomial(
                    115,
                    1 - Math.pow(1 - c, 2 / 30.0),
                    Streams.uniform(key, Streams.key(Streams.Purpose.LEFT, "hand"), month));
            state.turn(0);
            assertThat(state.count(0)).isEqualTo(120 + 8 - 5 + came - went);
        }
    }

    @Test
    void rule_78_a_level_without_any_row_has_nobody_and_gains_nobody() {
        SupporterDraws draws =
                SupporterDraws.of(project().level("hand", 500, false).inputs());
        assertThat(draws.history(0)).isEqualTo(LevelHistory.NONE);
        SupporterDraws.State state = draws.newState();
        state.begin(Streams.trialKey(1, 0));
        for (int month = 0; month < 24; month++) {
            assertThat(state.count(0)).isZero();
            assertThat(state.charge(0)).isZero();
            state.turn(1);
        }
    }

    @Test
    void rule_79_the_months_row_is_trusted_before_the_sum_of_the_month_before() {
        ProjectInputs project = project()
                .level("hand", 500, false)
                .supporters("2027-02", "hand", 100, 30, 10)
                .supporters("2027-03", "hand", 90, 0, 0);
        SupporterDraws.State state = SupporterDraws.of(project.inputs()).newState();
        state.begin(Streams.trialKey(1, 0));
        assertThat(state.count(0)).isEqualTo(90);
    }

    @Test
    void rule_80_rates_far_ahead_spread_as_a_random_walk() {
        // leaving switched off by a record of none in a very long time; joining near 400 a month
        ProjectInputs project = project().level("hand", 500, false);
        for (int i = 0; i < 12; i++) {
            project.supporters("2026-%02d".formatted(i + 1), "hand", 1_000_000, 400, 0);
        }
        Inputs.Model model = project.model();
        project.model(new Inputs.Model(1, model.effortHalfLife(), 0, 0.1, model.editingFirst(), 15, 30));
        SupporterDraws draws = SupporterDraws.of(project.inputs());
        SupporterDraws.State state = draws.newState();
        double squares = 0;
        double sum = 0;
        for (int trial = 0; trial < 4000; trial++) {
            state.begin(Streams.trialKey(1, trial));
            for (int month = 0; month < 24; month++) {
                state.turn(0);
            }
            int before = state.count(0);
            // the leaving of the 25th month is about 1 in 12 million and does not show
            state.turn(0);
            double lnRate = Math.log(state.count(0) - before);
            sum += lnRate;
            squares += lnRate * lnRate;
        }
        double variance = squares / 4000 - Math.pow(sum / 4000, 2);
        // 24 steps of 0.1 and the counting noise 1/400 and the posterior's 1/4800
        assertThat(Math.sqrt(variance)).isCloseTo(Math.sqrt(24 * 0.01 + 1 / 400.0 + 1 / 4800.0), within(0.02));
    }

    @Test
    void rule_81_empty_slots_of_the_month_gone_multiply_its_leaving() {
        ProjectInputs project = project()
                .level("hand", 500, false)
                .supporters("2027-02", "hand", 100_000, 0, 2000)
                .supporters("2027-03", "hand", 100_000, 0, 0);
        Inputs.Publishing p = project.publishing();
        project.publishing(new Inputs.Publishing(
                p.weekday(),
                p.first(),
                p.everyWeeks(),
                p.targetMinutes(),
                p.earlyDays(),
                p.editWindowDays(),
                p.editMinutes(),
                p.chargesAMonth(),
                1.5,
                p.skip()));
        SupporterDraws.State state = SupporterDraws.of(project.inputs()).newState();
        double[] left = new double[3];
        for (int slots = 0; slots < 3; slots++) {
            for (int trial = 0; trial < 400; trial++) {
                state.begin(Streams.trialKey(1, trial));
                state.turn(slots);
                left[slots] += 100_000 - state.count(0);
            }
        }
        assertThat(left[1] / left[0]).isCloseTo(1.5, within(0.01));
        assertThat(left[2] / left[0]).isCloseTo(2.25, within(0.01));
    }

    @Test
    void rule_82_publications_of_the_as_of_month_count_towards_its_charges() {
        ProjectInputs project = project().today("2027-03-20").level("film", 300, true);
        project.episode(published("e1", "2027-02-26"));
        project.episode(published("e2", "2027-03-05"));
        project.episode(published("e3", "2027-03-12"));
        assertThat(SupporterDraws.of(project.inputs()).publishedThisMonth()).isEqualTo(2);
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
        project.episode(published("e2", "2027-03-05"));
        project.episode(published("e3", "2027-03-12"));
        // 1 February + 30 days is 3 March and past; 1 March + 30 is 31 March: 200 (1 - .03) (5.00 (1 - .06) - .25) =
        // 863.30
        // 5 March + 10 is past; 12 March + 10 is 22 March
        assertThat(SupporterDraws.of(project.inputs()).pending())
                .isEqualTo(List.of(
                        new SupporterDraws.Pending(0, day("2027-03-31"), 86_330),
                        new SupporterDraws.Pending(1, day("2027-03-22"), 3000)));
    }

    @Test
    void rule_84_a_charge_of_today_is_not_one_of_the_past() {
        ProjectInputs project = project()
                .level(new Inputs.PledgeLevel("month", 500, false, 0, 0, 0, 30, false))
                .supporters("2027-02", "month", 100, 0, 0)
                .supporters("2027-03", "month", 100, 0, 0);
        // today is 1 March; 1 February + 30 days is 3 March and still out
        assertThat(SupporterDraws.of(project.inputs()).pending())
                .containsExactly(new SupporterDraws.Pending(0, day("2027-03-03"), 50_000));
    }

    @Test
    void rule_82_and_84_publications_over_the_months_limit_charged_nothing() {
        ProjectInputs project = project()
                .today("2027-03-20")
                .level(new Inputs.PledgeLevel("film", 300, true, 0, 0, 0, 30, false))
                .supporters("2027-03", "film", 10, 0, 0);
        Inputs.Publishing p = project.publishing();
        project.publishing(new Inputs.Publishing(
                p.weekday(),
                p.first(),
                p.everyWeeks(),
                p.targetMinutes(),
                p.earlyDays(),
                p.editWindowDays(),
                p.editMinutes(),
                1,
                1,
                p.skip()));
        project.episode(published("e2", "2027-03-05"));
        project.episode(published("e3", "2027-03-12"));
        assertThat(SupporterDraws.of(project.inputs()).pending())
                .containsExactly(new SupporterDraws.Pending(0, day("2027-04-04"), 3000));
    }

    private static Inputs.Episode published(String id, String date) {
        return new Inputs.Episode(
                id,
                Inputs.EpisodeKind.BUILD,
                day(date),
                Inputs.Range.EMPTY,
                "",
                0,
                day(date),
                day(date),
                day(date),
                List.of());
    }
}
