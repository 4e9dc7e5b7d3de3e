package weekwright.engine.simulate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.testkit.ProjectInputs.month;
import static weekwright.testkit.ProjectInputs.project;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import weekwright.engine.Inputs;
import weekwright.testkit.ProjectInputs;

/**
 * Rule 80: how much joining wanders, learned from the months. The figures are worked apart from the program, without its filter: ln n of
 * the months after the first are jointly normal about the first's, with the covariance 1/n₁ + s² min(i, j) and 1/n_i added on the
 * diagonal; the weights are its densities, ln λ of the last month its conditional mean and variance.
 */
class JoiningDriftTest {
    private static final int MARCH = month("2027-03");

    private static ProjectInputs joined(double set, int... joined) {
        ProjectInputs project = project().level("peg", 1, false);
        project.model(new Inputs.Model(1, 18, 0, set, true, 15, 30, 1, 0));
        for (int i = 0; i < joined.length; i++) {
            project.supporters("2026-%02d".formatted(i + 7), "peg", 1000, joined[i], 0);
        }
        return project;
    }

    private static JoiningDrift of(ProjectInputs project) {
        return new JoiningDrift(project.inputs(), MARCH);
    }

    private static double meanNow(JoiningDrift drift) {
        return IntStream.range(0, 20_000)
                .mapToDouble(trial -> drift.now(Streams.trialKey(1, trial)))
                .average()
                .orElseThrow();
    }

    @Test
    void rule_80_months_that_double_and_halve_say_that_joining_wanders_much_and_where_it_stands() {
        ProjectInputs project = joined(-1, 400, 200, 800, 400, 1600, 800);
        JoiningDrift drift = new JoiningDrift(project.inputs(), month("2027-01"));
        assertThat(drift.months).isEqualTo(6);
        assertThat(drift.mean()).isCloseTo(0.4999621, within(5e-8));
        // ln λ of December is 0.136955 over the logarithm of the mean of all months, 700
        assertThat(meanNow(drift)).isCloseTo(1.1473537, within(0.001));
    }

    @Test
    void rule_80_months_alike_say_that_it_hardly_wanders() {
        JoiningDrift drift =
                new JoiningDrift(joined(-1, 400, 410, 395, 402, 398, 405).inputs(), month("2027-01"));
        assertThat(drift.mean()).isCloseTo(0.0604904, within(5e-8));
        assertThat(meanNow(drift)).isCloseTo(1.0039488, within(0.002));
    }

    @Test
    void rule_80_few_supporters_say_little_of_it() {
        JoiningDrift drift = new JoiningDrift(joined(-1, 3, 4, 2, 5).inputs(), month("2026-11"));
        assertThat(drift.mean()).isCloseTo(0.1153418, within(5e-8));
        assertThat(meanNow(drift)).isCloseTo(1.0796831, within(0.006));
    }

    @Test
    void rule_80_what_the_settings_say_or_three_months_leave_it_as_it_was() {
        JoiningDrift set = of(joined(0.3, 400, 200, 800, 400, 1600, 800));
        assertThat(set.months).isZero();
        assertThat(set.mean()).isEqualTo(0.3);
        assertThat(set.now(Streams.trialKey(1, 0))).isEqualTo(1);
        assertThat(of(joined(0, 400, 200, 800, 400, 1600, 800)).drift(Streams.trialKey(1, 7)))
                .isZero();
        JoiningDrift few = of(joined(-1, 400, 200, 800));
        assertThat(few.months).isZero();
        assertThat(few.mean()).isEqualTo(0.1);
        assertThat(few.now(Streams.trialKey(1, 0))).isEqualTo(1);
    }

    @Test
    void rule_80_a_month_that_a_film_drove_says_nothing() {
        ProjectInputs left = joined(-1, 400, 410);
        left.supporters("2026-10", "peg", 1000, 600, 0).supporters("2026-11", "peg", 1000, 402, 0);
        ProjectInputs marked = joined(-1, 400, 410).surge("2026-09", "peg", 1000, 5000, 0);
        marked.supporters("2026-10", "peg", 1000, 600, 0).supporters("2026-11", "peg", 1000, 402, 0);
        JoiningDrift without = new JoiningDrift(left.inputs(), month("2026-12"));
        JoiningDrift with = new JoiningDrift(marked.inputs(), month("2026-12"));
        assertThat(with.months).isEqualTo(4);
        assertThat(with.mean()).isEqualTo(without.mean()).isGreaterThan(0.2);
        assertThat(with.now(Streams.trialKey(1, 3))).isEqualTo(without.now(Streams.trialKey(1, 3)));
    }
}
