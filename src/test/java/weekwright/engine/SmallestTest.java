package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Against a whole sort by the Java library. */
class SmallestTest {
    @Test
    void all_positions_hold_what_a_sort_puts_there() {
        SplittableRandom random = new SplittableRandom(1);
        for (int n = 1; n < 60; n++) {
            // a few different values only, so that many are equal; then all kinds
            for (long bound : new long[] {2, 5, Long.MAX_VALUE}) {
                long[] values = random.longs(n, -bound, bound).toArray();
                long[] sorted = values.clone();
                Arrays.sort(sorted);
                assertThat(Smallest.at(values, IntStream.range(0, n).toArray())).containsExactly(sorted);
            }
        }
    }

    @Test
    void some_positions_of_many_equal_sorted_and_falling_values() {
        int n = 10_001;
        int[] positions = {0, 1000, 1000, 5000, 9000, n - 1};
        for (long[] values : new long[][] {
            new long[n],
            IntStream.range(0, n).mapToLong(i -> i).toArray(),
            IntStream.range(0, n).mapToLong(i -> -i).toArray()
        }) {
            long[] sorted = values.clone();
            Arrays.sort(sorted);
            assertThat(Smallest.at(values, positions))
                    .containsExactly(
                            Arrays.stream(positions).mapToLong(k -> sorted[k]).toArray());
        }
    }

    @Test
    void quantiles_of_broken_numbers_are_those_of_a_sort_with_signs() {
        assertThat(Outcome.quantiles(new double[] {1.5, -2.25, 0, -0.5, 1e300}, 0.2, 0.4, 0.6, 0.8, 1))
                .containsExactly(-2.25, -0.5, 0, 1.5, 1e300);
        assertThat(Outcome.quantiles(new float[] {0.1f, -3, 2}, 0.3, 0.5, 1)).containsExactly(-3, 0.1f, 2);
        assertThat(Outcome.quantiles(new int[] {Outcome.LATER, -4, 7}, 0.3, 0.5, 1))
                .containsExactly(-4, 7, Outcome.LATER);
    }
}
