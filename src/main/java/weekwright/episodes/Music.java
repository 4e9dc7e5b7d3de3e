package weekwright.episodes;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Ref;

/**
 * Music in an episode.
 *
 * @param licence under which it may be used, as its owner calls it
 * @param source where it was got
 * @param until last day of the licence; nothing means without end
 */
public record Music(
        @Ref("episodes") Id episode,
        String title,
        String licence,
        @Bounds(max = 500) String source,
        Optional<LocalDate> until) {}
