package weekwright.build;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Ref;

/**
 * Days on which a person, or everyone, works other hours than stated.
 *
 * @param crew nobody named means everyone, and then the hours are a ceiling (rule 3)
 * @param hours a day in that time; nothing means away
 */
public record DaysOff(
        @Ref("crew") Optional<Id> crew,
        LocalDate from,
        LocalDate to,
        @Bounds(min = 0, max = 24) Optional<Hours> hours,
        String reason) {}
