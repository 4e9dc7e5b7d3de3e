package weekwright.episodes;

import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Quantity;
import weekwright.base.Ref;

/**
 * A task that an episode shows done.
 *
 * @param share of the task that must be done for it; nothing means all
 */
public record Tell(
        @Ref("episodes") Id episode,
        @Ref("tasks") Id task,
        @Bounds(min = 0, max = 1) Optional<Quantity> share) {}
