package weekwright.funds;

import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Quantity;

/**
 * A pledge that supporters can choose.
 *
 * @param feePercent of the amount, a charge
 * @param feeFixed a charge
 * @param declined percent of charges that fail
 * @param payoutDays days from charge to pay-out
 */
public record PledgeLevel(
        Id id,
        String name,
        @Bounds(min = 0, max = 100_000_000) Money amount,
        Charged charged,
        @Bounds(min = 0, max = 100) Optional<Quantity> feePercent,
        @Bounds(min = 0, max = 100_000_000) Optional<Money> feeFixed,
        @Bounds(min = 0, max = 100) Optional<Quantity> declined,
        @Bounds(min = 0, max = 366) Optional<Integer> payoutDays) {
    /** When it is charged: on the first of a month, or for each published episode. */
    public enum Charged {
        MONTH,
        EPISODE
    }
}
