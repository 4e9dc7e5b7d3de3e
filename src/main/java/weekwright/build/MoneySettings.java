package weekwright.build;

import java.time.MonthDay;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Quantity;

/**
 * Settings of money put by ([money] in project.toml). One row.
 *
 * @param taxMonth 1 to 12
 * @param yearStarts first day of the tax year
 */
public record MoneySettings(
        @Bounds(min = 0, max = 100) Optional<Quantity> putByPercent,
        @Bounds(min = 1, max = 12) Optional<Integer> taxMonth,
        Optional<MonthDay> yearStarts) {}
