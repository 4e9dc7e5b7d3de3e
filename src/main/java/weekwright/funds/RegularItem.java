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
    /** The first day after one on which it falls due (rule 87); empty for what comes with each film, and for what has ended. */
    public Optional<LocalDate> nextAfter(LocalDate day) {
        if (every == Every.EPISODE) {
            return Optional.empty();
        }
        LocalDate first = from.orElse(day);
        LocalDate next = first;
        for (int k = 0; !next.isAfter(day); k++) {
            next = switch (every) {
                case WEEK -> first.plusWeeks(k);
                case MONTH -> first.plusMonths(k);
                case YEAR -> first.plusYears(k);
                case EPISODE -> throw new IllegalStateException();
            };
        }
        LocalDate due = next;
        return Optional.of(due)
                .filter(one -> to.filter(last -> last.isBefore(one)).isEmpty());
    }

    /** When it comes again. */
    public enum Every {
        MONTH,
        WEEK,
        YEAR,
        EPISODE
    }
}
