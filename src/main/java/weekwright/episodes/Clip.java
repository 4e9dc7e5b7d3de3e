package weekwright.episodes;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Lines;
import weekwright.base.Quantity;
import weekwright.base.Ref;

/**
 * One clip of the footage log.
 *
 * @param size as the camera tells it, such as 3.2 GB
 * @param time at which it begins, by the camera's clock
 */
public record Clip(
        Id id,
        LocalDate date,
        String card,
        String clip,
        @Ref("tasks") Optional<Id> task,
        @Bounds(min = 0, max = 10000) Optional<Quantity> minutes,
        String size,
        @Ref("crew") Optional<Id> who,
        @Bounds(min = 1, max = 5) Optional<Integer> rating,
        @Lines @Bounds(max = 2000) String remarks,
        Optional<LocalTime> time) {}
