package weekwright.build;

import java.time.LocalDate;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Lines;

/**
 * Somebody was hurt, or nearly, and what was changed. Never published.
 */
public record Incident(
        Id id,
        LocalDate date,
        String who,
        @Lines @Bounds(max = 5000) String what,
        boolean hurt,
        boolean nearMiss,
        @Lines @Bounds(max = 5000) String changed) {}
