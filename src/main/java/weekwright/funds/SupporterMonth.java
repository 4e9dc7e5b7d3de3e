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
        @Bounds(min = 0, max = MOST) int start,
        @Bounds(min = 0, max = MOST) Optional<Integer> joined,
        @Bounds(min = 0, max = MOST) Optional<Integer> left,
        boolean surge) {
    /** So that a sum over levels and years stays far from 64 bits, and pledges times people, too. */
    private static final int MOST = 1_000_000;

    /** How many there were at the month's end, or are so far. */
    public long end() {
        return (long) start + joined.orElse(0) - left.orElse(0);
    }
}
