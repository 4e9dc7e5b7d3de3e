package weekwright.base;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * Parts of an amount in whole minor units. One part is rounded half to even (IEEE 754 calls it roundTiesToEven). Of several
 * parts the running sums are rounded so, and each part is the step from one sum to the next: the parts add up exactly, and
 * none is a whole unit off.
 */
public final class Shares {
    private Shares() {}

    /** So many parts of so many, half to even. */
    public static Money part(Money whole, long parts, long of) {
        return new Money(BigDecimal.valueOf(whole.minor())
                .multiply(BigDecimal.valueOf(parts))
                .divide(BigDecimal.valueOf(of), 0, RoundingMode.HALF_EVEN)
                .longValueExact());
    }

    /** An amount split by weights of which at least one is more than nothing and none is less. */
    public static List<Money> split(Money whole, List<Long> weights) {
        long all = weights.stream().mapToLong(Long::longValue).reduce(0, Math::addExact);
        List<Money> parts = new ArrayList<>();
        long so = 0;
        Money given = Money.ZERO;
        for (long weight : weights) {
            so += weight;
            Money sum = part(whole, so, all);
            parts.add(sum.minus(given));
            given = sum;
        }
        return parts;
    }
}
