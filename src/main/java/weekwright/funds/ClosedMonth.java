package weekwright.funds;

import java.time.LocalDate;
import java.time.YearMonth;

/**
 * A month whose statement is kept as it was on the day of closing.
 *
 * @param closed the day
 * @param who of the crew closed it
 */
public record ClosedMonth(YearMonth month, LocalDate closed, String who) {}
