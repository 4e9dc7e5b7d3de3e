package weekwright.episodes;

import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Lines;
import weekwright.base.Ref;

/**
 * Names of supporters that run at the end of an episode, as they were pasted. Kept with the episode and in backups alone: no file,
 * page of the public, search, feed or JSON holds it.
 */
public record Roll(
        @Ref("episodes") Id episode,
        @Lines @Bounds(max = 20000) String names) {}
