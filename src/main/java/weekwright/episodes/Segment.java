package weekwright.episodes;

import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Quantity;
import weekwright.base.Ref;

/**
 * A part of an episode, in the order in which it runs.
 *
 * @param place from 1
 * @param minutes length, as far as it is known
 */
public record Segment(
        @Ref("episodes") Id episode,
        @Bounds(min = 1, max = 200) int place,
        String title,
        @Bounds(min = 0, max = 1000) Optional<Quantity> minutes) {}
