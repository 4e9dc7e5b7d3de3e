package weekwright.build;

import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Lines;
import weekwright.base.Money;
import weekwright.base.Quantity;

/**
 * A part of the build. It lands on the day its last task is done.
 *
 * @param order place in the build; nothing means its row
 * @param side never the headline: a machine restored beside the build
 * @param roughLow hours of the whole stage; what its listed tasks come to is taken off (rule 121)
 */
public record Stage(
        Id id,
        String name,
        @Bounds(min = 0, max = 100000) Optional<Integer> order,
        @Bounds(min = 0, max = 1000) Optional<Quantity> weight,
        boolean side,
        Optional<Hours> roughLow,
        Optional<Hours> roughLikely,
        Optional<Hours> roughHigh,
        @Bounds(min = 0) Optional<Money> roughCost,
        @Lines String description) {}
