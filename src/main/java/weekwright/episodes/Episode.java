package weekwright.episodes;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Quantity;
import weekwright.base.Ref;

/**
 * An episode and how far it is.
 *
 * @param slot the publication date planned for it; a standby has none
 * @param minutes finished length
 * @param cut ready to publish
 * @param heldBack why it is held back, empty if it is not
 */
public record Episode(
        Id id,
        @Bounds(min = 0, max = 100000) Optional<Integer> number,
        Optional<LocalDate> slot,
        String title,
        Optional<Kind> kind,
        @Bounds(min = 0, max = 1000) Optional<Quantity> minutes,
        Optional<Hours> editLow,
        Optional<Hours> editLikely,
        Optional<Hours> editHigh,
        @Ref("crew") Optional<Id> editor,
        Optional<LocalDate> footageComplete,
        Optional<LocalDate> roughCut,
        Optional<LocalDate> pictureLock,
        Optional<LocalDate> sound,
        Optional<LocalDate> cut,
        Optional<LocalDate> published,
        @Bounds(max = 500) String address,
        @Bounds(min = 0) Optional<Integer> views,
        @Bounds(max = 500) String heldBack) {
    /** Of the build, a side story, or a standby kept for an empty slot. */
    public enum Kind {
        BUILD,
        SIDE,
        STANDBY
    }

    public Kind kindOrDefault() {
        return kind.orElse(Kind.BUILD);
    }
}
