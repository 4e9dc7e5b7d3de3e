package weekwright.build;

import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Money;

/**
 * Settings of ordering ([orders] in project.toml). One row.
 *
 * @param small orders up to this amount may go out while a larger one waits for money
 */
public record OrderSettings(
        @Bounds(min = 0, max = 365) Optional<Integer> marginDays,
        @Bounds(min = 0) Optional<Money> small) {}
