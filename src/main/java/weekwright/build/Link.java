package weekwright.build;

import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Quantity;
import weekwright.base.Ref;

/**
 * What follows what.
 *
 * @param share of {@code after} that must be done first; nothing means all of it
 * @param waitLow calendar days from then
 */
public record Link(
        @Ref("tasks") Id task,
        @Ref("tasks") Id after,
        @Bounds(min = 0, max = 1) Optional<Quantity> share,
        @Bounds(min = 0, max = 3650) Optional<Quantity> waitLow,
        @Bounds(min = 0, max = 3650) Optional<Quantity> waitLikely,
        @Bounds(min = 0, max = 3650) Optional<Quantity> waitHigh) {}
