package weekwright.base;

import java.time.LocalDate;
import java.util.Optional;

/** Days from–to, both ends included; an empty end has no bound (rule 4). */
public record DayRange(Optional<LocalDate> from, Optional<LocalDate> to) {
    public boolean holds(LocalDate day) {
        return from.map(f -> !day.isBefore(f)).orElse(true)
                && to.map(t -> !day.isAfter(t)).orElse(true);
    }
}
