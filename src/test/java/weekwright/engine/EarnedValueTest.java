package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EarnedValueTest {
    /**
     * Printed worked examples: qammunity.org question 6717666; coursehero.com pbt8e, period 12; petfoodhonesty 32293281;
     * studylib.net 8629314. Figures as printed there; the second prints .71 for 0.7048, rounded twice.
     */
    @ParameterizedTest
    @CsvSource({
        "200000, 50000, 45000, 60000, -15000, -5000, 0.75, 0.90",
        "248, 158, 148, 210, -62, -10, 0.71, 0.94",
        "120000, 23000, 20000, 25000, -5000, -3000, 0.80, 0.87",
        "800, 600, 400, 380, 20, -200, 1.05, 0.67"
    })
    void variances_and_indexes_are_those_of_printed_examples(
            double budget,
            double planned,
            double earned,
            double actual,
            double cost,
            double schedule,
            double cpi,
            double spi) {
        EarnedValue value = new EarnedValue(budget, planned, earned, actual);
        assertThat(value.costVariance()).isEqualTo(cost);
        assertThat(value.scheduleVariance()).isEqualTo(schedule);
        assertThat(value.costIndex().orElseThrow()).isCloseTo(cpi, within(0.006));
        assertThat(value.scheduleIndex().orElseThrow()).isCloseTo(spi, within(0.005));
    }

    /** The first two of these examples print EAC as well. */
    @Test
    void what_all_of_it_takes_is_that_of_printed_examples() {
        assertThat(new EarnedValue(200_000, 50_000, 45_000, 60_000)
                        .atCompletion()
                        .orElseThrow())
                .isCloseTo(266_666.67, within(0.005));
        assertThat(new EarnedValue(248, 158, 148, 210).atCompletion().orElseThrow())
                .isCloseTo(352, within(0.5));
    }

    @Test
    void what_divides_by_nothing_is_empty() {
        EarnedValue none = new EarnedValue(0, 0, 0, 0);
        assertThat(none.costIndex()).isEmpty();
        assertThat(none.scheduleIndex()).isEmpty();
        assertThat(none.atCompletion()).isEmpty();
        assertThat(new EarnedSchedule(0, 0, 5).index()).isEmpty();
        assertThat(new EarnedSchedule(0, 2, 5).duration()).isEmpty();
    }

    /**
     * The formula as it is printed (scribd.com 47929652), which gives no money; the figures are our own: plan 10, 25, 45, 70, 90,
     * 100, earned 52 at the end of period 5, so C = 3 and ES = 3 + (52 - 45)/(70 - 45) = 3.28.
     */
    @Test
    void earned_schedule_is_the_time_at_which_the_plan_had_as_much() {
        EarnedSchedule schedule = EarnedSchedule.of(new double[] {10, 25, 45, 70, 90, 100}, 52, 5);
        assertThat(schedule.earned()).isCloseTo(3.28, within(1e-9));
        assertThat(schedule.variance()).isCloseTo(-1.72, within(1e-9));
        assertThat(schedule.index().orElseThrow()).isCloseTo(0.656, within(1e-9));
        assertThat(schedule.duration().orElseThrow()).isCloseTo(9.146, within(0.0005));
    }

    @Test
    void before_the_first_period_and_past_the_last_it_stays_within_the_plan() {
        assertThat(EarnedSchedule.of(new double[] {10, 25}, 5, 1).earned()).isEqualTo(0.5);
        assertThat(EarnedSchedule.of(new double[] {10, 25}, 0, 1).earned()).isZero();
        assertThat(EarnedSchedule.of(new double[] {0, 10, 10, 20}, 10, 3).earned())
                .isEqualTo(3);
        // at the end of a late project SPI is 1 and SPI(t) stays under it (printed beside the formula)
        EarnedSchedule late = EarnedSchedule.of(new double[] {10, 25}, 25, 4);
        assertThat(late.index().orElseThrow()).isEqualTo(0.5);
        assertThat(late.duration().orElseThrow()).isEqualTo(4);
        assertThat(new EarnedValue(25, 25, 25, 30).scheduleIndex()).hasValue(1);
    }
}
