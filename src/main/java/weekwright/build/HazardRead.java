package weekwright.build;

import java.time.LocalDate;
import weekwright.base.Id;
import weekwright.base.Ref;

/**
 * Who has read the cautions of a hazard, and when last.
 *
 * @param hazard its code
 */
public record HazardRead(String hazard, @Ref("crew") Id crew, LocalDate date) {}
