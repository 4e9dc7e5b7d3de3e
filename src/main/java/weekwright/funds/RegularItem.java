package weekwright.funds;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Quantity;

/**
 * A cost or income that comes again.
 *
 * @param amount plus in, minus out
 * @param spread standard deviation in percent, an occurrence
 */
public record RegularItem(
        Id id,
        String name,
        Money amount,
        @Bounds(min = 0, max = 1000) Optional<Quantity> spread,
        Every every,
        Optional<LocalDate> from,
        Optional<LocalDate> to) {
    /** When it comes again. */
    public enum Every {
        MONTH,
        WEEK,
        YEAR,
        EPISODE
    }
}
