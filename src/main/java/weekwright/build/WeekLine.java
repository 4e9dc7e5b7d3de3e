package weekwright.build;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Lines;
import weekwright.base.Ref;

/**
 * A line of the week sheet that the crew wrote or touched; proposals are never stored.
 *
 * @param from clock time, where one is wanted
 */
public record WeekLine(
        Id id,
        LocalDate date,
        @Ref("crew") Optional<Id> crew,
        @Ref("tasks") Optional<Id> task,
        @Ref("episodes") Optional<Id> episode,
        Optional<Kind> kind,
        @Bounds(min = 0, max = 24) Optional<Hours> hours,
        Optional<LocalTime> from,
        Optional<LocalTime> to,
        @Lines @Bounds(max = 2000) String text,
        boolean done) {
    /** What kind of line it is. */
    public enum Kind {
        WORK,
        FILM,
        EDIT,
        ERRAND,
        CARE,
        REST
    }
}
