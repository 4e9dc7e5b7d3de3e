package weekwright.build;

import weekwright.base.Bounds;
import weekwright.base.Column;
import weekwright.base.Lines;

/**
 * A caution of the crew's own for a hazard.
 *
 * @param whom for the hands or for whoever holds the camera
 */
public record Caution(
        String hazard,
        @Column("for") Whom whom,
        @Lines @Bounds(max = 500) String text) {
    /** Whom the caution is for. */
    public enum Whom {
        HANDS,
        CAMERA
    }
}
