package weekwright.build;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Lines;
import weekwright.base.Money;
import weekwright.base.Quantity;

/**
 * A day with unnamed helpers.
 *
 * @param hours of each
 * @param comeShare share of them that comes; nothing means all
 */
public record Gathering(
        Id id,
        LocalDate date,
        @Bounds(min = 1, max = 1000) int hands,
        @Bounds(min = 0.01, max = 24) Hours hours,
        @Bounds(min = 0, max = 1) Optional<Quantity> comeShare,
        @Bounds(min = 0) Optional<Money> cost,
        @Lines @Bounds(max = 2000) String note) {}
