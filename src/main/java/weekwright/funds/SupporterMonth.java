package weekwright.funds;

import java.time.YearMonth;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Ref;

/**
 * How many supporters of one level a month had.
 *
 * @param start on the first of the month
 * @param surge the month was driven by one film
 */
public record SupporterMonth(
        YearMonth month,
        @Ref("pledge_levels") Id level,
        @Bounds(min = 0) int start,
        @Bounds(min = 0) Optional<Integer> joined,
        @Bounds(min = 0) Optional<Integer> left,
        boolean surge) {}
