package weekwright.build;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Lines;
import weekwright.base.Quantity;
import weekwright.base.Ref;

/**
 * Hours of one person on one day, as the crew logged them.
 *
 * @param people how many worked these hours; nothing means one
 * @param task neither task nor episode for shop and office
 * @param as nothing means hands
 * @param footageMinutes for the crew's records; not an input of the forecast
 */
public record HoursEntry(
        Id id,
        LocalDate date,
        @Ref("crew") Id crew,
        @Bounds(min = 1, max = 100) Optional<Integer> people,
        @Ref("tasks") Optional<Id> task,
        @Ref("episodes") Optional<Id> episode,
        Optional<As> as,
        @Bounds(min = 0.01, max = 24) Hours hours,
        @Bounds(min = 0, max = 100000) Optional<Integer> pieces,
        @Bounds(min = 0, max = 100000) Optional<Integer> spoiled,
        boolean filmed,
        @Bounds(min = 0, max = 100000) Optional<Quantity> footageMinutes,
        @Lines @Bounds(max = 2000) String note) {
    /** What the hours were: the hands' work, minding the camera, editing, or shop and office. */
    public enum As {
        HANDS,
        CAMERA,
        EDIT,
        SHOP,
        OFFICE
    }

    public As asOrDefault() {
        return as.orElse(As.HANDS);
    }

    public int peopleOrDefault() {
        return people.orElse(1);
    }
}
