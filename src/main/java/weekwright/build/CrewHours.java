package weekwright.build;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Ref;

/**
 * Other weekday hours of a person for a season or a job, both days included; the row with the last {@code from} wins.
 */
public record CrewHours(
        @Ref("crew") Id crew,
        Optional<LocalDate> from,
        Optional<LocalDate> to,
        @Bounds(min = 0, max = 24) Optional<Hours> mon,
        @Bounds(min = 0, max = 24) Optional<Hours> tue,
        @Bounds(min = 0, max = 24) Optional<Hours> wed,
        @Bounds(min = 0, max = 24) Optional<Hours> thu,
        @Bounds(min = 0, max = 24) Optional<Hours> fri,
        @Bounds(min = 0, max = 24) Optional<Hours> sat,
        @Bounds(min = 0, max = 24) Optional<Hours> sun) {
    /** Stated hours of a weekday; nothing stated is none (rule 3). */
    public Hours on(DayOfWeek day) {
        return List.of(mon, tue, wed, thu, fri, sat, sun)
                .get(day.getValue() - 1)
                .orElse(Hours.ZERO);
    }
}
