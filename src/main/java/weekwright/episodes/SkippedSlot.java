package weekwright.episodes;

import java.time.LocalDate;
import weekwright.base.Bounds;

/**
 * Why a slot is left out. That it is stands in the settings of publishing.
 *
 * @param reason empty where nothing was said
 */
public record SkippedSlot(LocalDate date, @Bounds(max = 300) String reason) {}
