package weekwright.build;

import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Quantity;
import weekwright.base.Words;

/**
 * Settings of the weather ([weather] in project.toml). One row.
 *
 * @param lost twelve shares of days lost outdoors, January first; none means never
 * @param spellDays mean length of a spell
 */
public record Weather(Words lost, @Bounds(min = 1, max = 60) Optional<Quantity> spellDays) {}
