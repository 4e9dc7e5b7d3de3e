package weekwright.build;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Lines;
import weekwright.base.Ref;

/**
 * A day, or hours of it, on which nothing was done, and why.
 */
public record Stopped(
        Id id,
        LocalDate date,
        @Ref("crew") Optional<Id> crew,
        @Bounds(min = 0, max = 24) Optional<Hours> hours,
        Reason reason,
        @Ref("tasks") Optional<Id> task,
        @Ref("equipment") Optional<Id> equipment,
        @Lines @Bounds(max = 2000) String note) {
    /** Why nothing was done. */
    public enum Reason {
        ILL,
        WEATHER,
        MATERIAL,
        MACHINE,
        COMPANY,
        AWAY,
        VISITORS,
        OTHER
    }
}
