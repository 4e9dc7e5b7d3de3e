package weekwright.build;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.base.Ref;
import weekwright.base.Words;

/**
 * A machine or a set of things of which tasks need some.
 *
 * @param quantity how many there are; nothing means one
 * @param hazards its tasks inherit them
 * @param kept held from a task's first hour to its end, nights too
 * @param readyAfter a task after which it can be used first
 * @param backLow calendar days from {@code downFrom}
 */
public record Equipment(
        Id id,
        String name,
        @Bounds(min = 1, max = 10000) Optional<Integer> quantity,
        Words hazards,
        boolean kept,
        @Ref("tasks") Optional<Id> readyAfter,
        Optional<LocalDate> downFrom,
        @Bounds(min = 0, max = 3650) Optional<Quantity> backLow,
        @Bounds(min = 0, max = 3650) Optional<Quantity> backLikely,
        @Bounds(min = 0, max = 3650) Optional<Quantity> backHigh,
        Optional<LocalDate> inspectBy,
        @Bounds(min = 0) Optional<Money> value) {
    public int quantityOrDefault() {
        return quantity.orElse(1);
    }
}
