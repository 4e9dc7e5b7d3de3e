package weekwright.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weekwright.base.Id;

/** Months that look as if one film had filled them; every figure worked by hand. */
class SurgeHintsTest {
    private static final YearMonth FIRST = YearMonth.of(2025, 4);

    /** A month each from April 2025 on, the first so many marked. */
    private static SurgeHints hints(int marked, int... joined) {
        List<SupporterMonth> counts = new ArrayList<>();
        for (int i = 0; i < joined.length; i++) {
            counts.add(month(FIRST.plusMonths(i), "peg", Optional.of(joined[i]), i < marked));
        }
        return SurgeHints.of(counts, FIRST.plusMonths(joined.length));
    }

    private static SupporterMonth month(YearMonth month, String level, Optional<Integer> joined, boolean surge) {
        return new SupporterMonth(month, new Id(level), 100, joined, Optional.empty(), surge);
    }

    /**
     * The sample's totals. Without March's 81 their order is 9 17 20 21 21 22 23 24 24 24 28 29 29 30 33 39 40 44: the middle is 24, twice that 48,
     * 24 + 3 × 4.9 = 38.7. March stands out with 81, April's 44 does not.
     */
    @Test
    void march_of_the_sample_stands_out_and_april_does_not() {
        SurgeHints hints = hints(0, 39, 30, 24, 21, 17, 20, 23, 22, 29, 40, 33, 81, 44, 28, 24, 21, 9, 24, 29);
        assertThat(hints.found()).containsExactly(new SurgeHints.Found(YearMonth.of(2026, 3), 81, false));
        assertThat(hints.months()).isEqualTo(19);
        assertThat(hints.middleTwice()).isEqualTo(48);
        assertThat(hints.least()).isEqualTo(48);
    }

    /** Unmarked 4, 4, 5, 9: the middle is 4.5, twice that 9, and 4.5 + 3 × 2.12 = 10.9, so it takes 11. */
    @Test
    void few_joiners_have_to_stand_three_square_roots_out() {
        SurgeHints hints = hints(1, 11, 4, 5, 4, 9);
        assertThat(hints.middleTwice()).isEqualTo(9);
        assertThat(hints.least()).isEqualTo(11);
        assertThat(hints.found()).containsExactly(new SurgeHints.Found(FIRST, 11, true));
        assertThat(hints(1, 10, 4, 5, 4, 9).found()).isEmpty();
    }

    /** 9 joined in the middle: twice that and 9 + 3 × 3 are both 18. 16: twice is 32, 16 + 12 only 28. */
    @Test
    void both_bounds_count_themselves_in() {
        assertThat(hints(0, 9, 9, 9, 18).found()).hasSize(1);
        assertThat(hints(0, 9, 9, 9, 17).found()).isEmpty();
        assertThat(hints(0, 16, 16, 16, 32).found()).hasSize(1);
        assertThat(hints(0, 16, 16, 16, 31).found()).isEmpty();
    }

    /** As one it takes 4: twice is 2, and 1 + 3 × 1 is 4. */
    @Test
    void where_nobody_usually_joins_the_middle_counts_as_one() {
        assertThat(hints(0, 0, 0, 0, 3).found()).isEmpty();
        assertThat(hints(0, 0, 0, 0, 4).found()).hasSize(1);
    }

    @Test
    void two_unmarked_months_say_nothing() {
        SurgeHints hints = hints(1, 90, 5, 5);
        assertThat(hints.known()).isFalse();
        assertThat(hints.found()).isEmpty();
    }

    /** Levels are summed, one mark marks the month; months without a word on who joined, and the one that runs, are left out. */
    @Test
    void months_are_summed_over_levels() {
        List<SupporterMonth> counts = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            counts.add(month(FIRST.plusMonths(i), "peg", Optional.of(10), false));
            counts.add(month(FIRST.plusMonths(i), "beam", Optional.of(6), false));
        }
        counts.add(month(FIRST.plusMonths(3), "peg", Optional.of(16), true));
        counts.add(month(FIRST.plusMonths(3), "beam", Optional.of(16), false));
        counts.add(month(FIRST.plusMonths(4), "peg", Optional.empty(), false));
        counts.add(month(FIRST.plusMonths(5), "peg", Optional.of(900), false));
        assertThat(SurgeHints.of(counts, FIRST.plusMonths(5)))
                .isEqualTo(new SurgeHints(3, 32, List.of(new SurgeHints.Found(FIRST.plusMonths(3), 32, true))));
    }
}
