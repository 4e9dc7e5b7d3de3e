package weekwright.base;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SharesTest {
    /** Ties go to the even one: IEEE 754-2019, 4.3.1, roundTiesToEven, whose usual examples are 0.5, 1.5 and 2.5 (from memory). */
    @ParameterizedTest
    @CsvSource({"1,0", "3,2", "5,2", "7,4", "-1,0", "-3,-2", "-5,-2", "4,2"})
    void a_half_goes_to_the_even_one(long halves, long whole) {
        assertThat(Shares.part(new Money(halves), 1, 2)).isEqualTo(new Money(whole));
    }

    @Test
    void other_fractions_go_to_the_nearest() {
        assertThat(Shares.part(new Money(100), 1, 3)).isEqualTo(new Money(33));
        assertThat(Shares.part(new Money(100), 2, 3)).isEqualTo(new Money(67));
        assertThat(Shares.part(new Money(Long.MAX_VALUE), 1, 1)).isEqualTo(new Money(Long.MAX_VALUE));
    }

    @Test
    void parts_add_up_exactly_and_none_is_a_whole_unit_off() {
        SplittableRandom random = new SplittableRandom(5);
        for (int round = 0; round < 500; round++) {
            Money whole = new Money(random.nextLong(-1_000_000, 1_000_000));
            List<Long> weights = new ArrayList<>();
            int count = random.nextInt(1, 9);
            for (int i = 0; i < count; i++) {
                weights.add(random.nextLong(0, 1000));
            }
            weights.add(1L);
            long all = weights.stream().mapToLong(Long::longValue).sum();
            List<Money> parts = Shares.split(whole, weights);
            assertThat(parts.stream().reduce(Money.ZERO, Money::plus)).isEqualTo(whole);
            for (int i = 0; i < parts.size(); i++) {
                assertThat(Math.abs(parts.get(i).minor() - (double) whole.minor() * weights.get(i) / all))
                        .as("%s by %s", whole, weights)
                        .isLessThanOrEqualTo(1.0);
                assertThat(weights.get(i) == 0 && !parts.get(i).equals(Money.ZERO))
                        .isFalse();
            }
        }
        assertThat(Shares.split(new Money(100), List.of(1L, 1L, 1L)))
                .containsExactly(new Money(33), new Money(34), new Money(33));
    }
}
