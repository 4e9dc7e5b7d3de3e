package weekwright.episodes;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Ref;

/**
 * Whose consent an episode needs: of somebody who is seen or heard, or of the owner of a place.
 *
 * @param who the person or the place
 * @param got day on which the consent was given
 */
public record Release(
        @Ref("episodes") Id episode,
        String who,
        Optional<LocalDate> got,
        @Bounds(max = 500) String note) {}
