package weekwright.episodes;

import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Ref;
import weekwright.base.RunTime;

/**
 * A part of an episode, in the order in which it runs.
 *
 * @param place from 1
 * @param minutes how long it runs, as far as it is known
 */
public record Segment(
        @Ref("episodes") Id episode,
        @Bounds(min = 1, max = 200) int place,
        String title,
        Optional<RunTime> minutes) {}
