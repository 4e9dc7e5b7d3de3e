package weekwright.engine.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.testkit.ProjectInputs.day;
import static weekwright.testkit.ProjectInputs.project;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import weekwright.engine.Inputs;
import weekwright.engine.Inputs.Range;
import weekwright.engine.Inputs.Source;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.Run;

/**
 * Rule 124: price and lead learning. The figures are worked by hand from the conjugate normal model of {@link EffortRatio}: with
 * k0 = 100/9 and one line of the least variance 1/100 its weight is 100, so that β = 100 r / (100 + 100/9) = 0.9 r.
 */
class PurchasesTest {
    private static final Range SIXTY = Range.of(60_00);

    private static ProjectInputs mill() {
        // the as-of day is 1 March 2027
        ProjectInputs project =
                project().person("ana", 8, 8, 8, 8, 8, 8, 8).cash(10_000_00, 0).chain("cure", "wheel");
        project.task("cure").days(100).task("wheel").exactly(8);
        return project;
    }

    private static Inputs.Material line(
            String id,
            Range price,
            Range lead,
            String ordered,
            String promised,
            String received,
            long paid,
            String from) {
        return new Inputs.Material(
                id,
                "wheel",
                "",
                2,
                0,
                price,
                Source.BOUGHT,
                0,
                lead,
                0,
                day(ordered),
                day(promised),
                day(received),
                paid,
                from);
    }

    private static Inputs.Material came(String id, Range lead, String ordered, String received, long paid) {
        return line(id, SIXTY, lead, ordered, "", received, paid, "the lime kiln");
    }

    private static Inputs.Material open(String id, String from) {
        return line(id, Range.of(100_00), Range.of(20), "", "", "", 0, from);
    }

    private static Luck expected(ProjectInputs project) {
        Luck luck = new Luck(new Setup(project.inputs()));
        luck.expect();
        return luck;
    }

    @Test
    void rule_124_one_line_a_tenth_dearer_makes_those_to_come_dearer_by_nine_tenths_of_that_in_logarithms() {
        // two at 60.00 were likely, 132.00 was paid: r = ln 1.1, e^(0.9 ln 1.1) = 1.089566; of 200.00 that is 217.91
        ProjectInputs project = mill();
        project.material(came("lime", Range.ZERO, "", "2027-03-01", 132_00)).material(open("oak", "the sawmill"));
        Purchases purchases = new Purchases(project.inputs());
        assertThat(purchases.priceTimes()).isCloseTo(1.089566, within(5e-7));
        assertThat(purchases.paid()).containsExactly(new Purchases.Paid(0, 120_00, 132_00, 1));
        assertThat(expected(project).cost[1]).isEqualTo(217_91);
    }

    @Test
    void rule_124_while_nothing_was_received_prices_and_leads_are_as_written_down() {
        ProjectInputs project = mill();
        project.material(open("oak", "the sawmill"));
        Purchases purchases = new Purchases(project.inputs());
        assertThat(purchases.prices()).isEmpty();
        assertThat(purchases.suppliers()).isEmpty();
        Luck luck = new Luck(new Setup(project.inputs()));
        luck.draw(1, 0);
        assertThat(luck.cost[0]).isEqualTo(200_00);
        assertThat(luck.lead[0]).isEqualTo(20);
    }

    @Test
    void rule_124_had_at_the_price_and_in_the_days_written_down_nothing_moves_in_the_middle() {
        ProjectInputs project = mill();
        project.material(came("lime", Range.of(10), "2027-02-10", "2027-02-20", 120_00))
                .material(open("oak", "the lime kiln"));
        assertThat(new Purchases(project.inputs()).priceTimes()).isEqualTo(1);
        assertThat(expected(project).cost[1]).isEqualTo(200_00);
        assertThat(expected(project).lead[1]).isEqualTo(20);
    }

    @Test
    void rule_124_a_supplier_who_took_half_as_long_again_is_ordered_from_earlier_and_no_other_is() {
        // 15 days instead of 10: r = ln 1.5, e^(0.9 ln 1.5) = 1.440397; of 20 days that is 28.8, so 29.
        // 1 March + 100 days is 9 June; less 29 and the margin of 14 it is 27 April, less 20 and 14 it is 6 May
        ProjectInputs project = mill();
        project.material(came("lime", Range.of(10), "2027-02-14", "2027-03-01", 0))
                .material(open("lime-2", "the lime kiln"))
                .material(open("oak", "the sawmill"));
        Purchases purchases = new Purchases(project.inputs());
        assertThat(purchases.leadTimes("the lime kiln")).isCloseTo(1.440397, within(5e-7));
        assertThat(purchases.leadTimes("the sawmill")).isEqualTo(1);
        assertThat(purchases.suppliers().get(0).orders()).containsExactly(new Purchases.Came(0, 10, 15, 1));
        Luck luck = expected(project);
        assertThat(luck.lead[1]).isEqualTo(29);
        assertThat(luck.lead[2]).isEqualTo(20);
        Run run = Run.of(project);
        assertThat(run.ordered("lime-2")).isEqualTo("2027-04-27");
        assertThat(run.ordered("oak")).isEqualTo("2027-05-06");
    }

    @Test
    void rule_124_what_was_promised_stands_for_itself_and_what_is_out_without_a_promise_is_learned() {
        // ordered on 20 February: promised for 22 March is 30 days; without a promise 20 days times 1.440397 are 28.8
        ProjectInputs project = mill();
        project.material(came("lime", Range.of(10), "2027-02-14", "2027-03-01", 0))
                .material(line("told", SIXTY, Range.of(20), "2027-02-20", "2027-03-22", "", 0, "the lime kiln"))
                .material(line("untold", SIXTY, Range.of(20), "2027-02-20", "", "", 0, "the lime kiln"));
        Luck luck = expected(project);
        assertThat(luck.lead[1]).isEqualTo(30);
        assertThat(luck.lead[2]).isEqualTo(29);
    }

    @Test
    void rule_124_an_older_line_counts_less_by_the_half_life_of_the_effort_ratio() {
        // half-life 18 months of 30.4375 days: 548 days back weighs 2^(-548/547.875) = 0.499921;
        // β = 49.9921 r / (49.9921 + 100/9) = 0.818162 r, e^(0.818162 ln 1.1) = 1.081103
        ProjectInputs project = mill();
        project.material(came("lime", Range.ZERO, "", "2025-08-30", 132_00));
        Purchases purchases = new Purchases(project.inputs());
        assertThat(purchases.paid().get(0).ageWeight()).isCloseTo(0.499921, within(5e-7));
        assertThat(purchases.priceTimes()).isCloseTo(1.081103, within(5e-6));
    }

    @Test
    void rule_124_a_payment_that_is_probably_not_all_there_or_pays_for_others_teaches_nothing() {
        // two thirds of 120.00 are 80.00, twice 120.00 are 240.00
        ProjectInputs project = mill();
        project.material(came("deposit-only", Range.ZERO, "", "2027-02-20", 79_99))
                .material(came("three-in-one", Range.ZERO, "", "2027-02-20", 240_01))
                .material(came("least", Range.ZERO, "", "2027-02-20", 80_00))
                .material(came("most", Range.ZERO, "", "2027-02-20", 240_00));
        Purchases purchases = new Purchases(project.inputs());
        assertThat(purchases.ignored()).containsExactly("deposit-only", "three-in-one");
        assertThat(purchases.paid().stream().map(Purchases.Paid::line)).containsExactly(2, 3);
    }

    @Test
    void rule_124_what_was_given_or_is_received_later_teaches_no_price() {
        ProjectInputs project = mill();
        project.material(came("later", Range.of(10), "2027-02-14", "2027-03-02", 132_00))
                .material(new Inputs.Material(
                        "given",
                        "wheel",
                        "",
                        1,
                        0,
                        SIXTY,
                        Source.GIVEN,
                        0,
                        Range.ZERO,
                        0,
                        Inputs.NONE,
                        Inputs.NONE,
                        day("2027-02-01"),
                        66_00,
                        "hedda"));
        Purchases purchases = new Purchases(project.inputs());
        assertThat(purchases.prices()).isEmpty();
        assertThat(purchases.suppliers()).isEmpty();
    }

    @Test
    void rule_124_a_delivery_on_the_day_of_the_order_counts_as_half_a_day() {
        // half a day instead of one: r = ln 0.5, e^(0.9 ln 0.5) = 0.535887
        ProjectInputs project = mill();
        project.material(came("lime", Range.of(1), "2027-03-01", "2027-03-01", 0));
        assertThat(new Purchases(project.inputs()).leadTimes("the lime kiln")).isCloseTo(0.535887, within(5e-7));
    }

    @Test
    void rule_124_the_futures_spread_over_what_is_believed_of_prices_as_students_t_has_it() {
        ProjectInputs project = mill();
        project.material(came("lime", Range.ZERO, "", "2027-03-01", 132_00)).material(open("oak", "the sawmill"));
        EffortRatio prices = new Purchases(project.inputs()).prices().orElseThrow();
        Luck luck = new Luck(new Setup(project.inputs()));
        int trials = 4000;
        long[] cost = new long[trials];
        for (int trial = 0; trial < trials; trial++) {
            luck.draw(1, trial);
            cost[trial] = luck.cost[1];
        }
        Arrays.sort(cost);
        // 4,000 draws: the standard error of the share under a decile is half a hundredth
        for (double p : new double[] {0.1, 0.5, 0.9}) {
            double below = Arrays.stream(cost)
                            .filter(one -> one < 200_00 * prices.ratioQuantile(p))
                            .count()
                    / (double) trials;
            assertThat(below).as("share under the quantile of " + p).isCloseTo(p, within(0.02));
        }
    }
}
