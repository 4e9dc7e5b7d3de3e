package weekwright.funds;

import java.time.LocalDate;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Ref;

/**
 * A file that was read into the books; the file itself is not kept.
 *
 * @param date on which it was read
 * @param from its first booking
 * @param to its last booking
 * @param entered rows that went into the books
 * @param leftOut rows that were not chosen, or could not be read
 */
public record BankFile(
        Id id,
        @Ref("bank_sources") Id source,
        String name,
        LocalDate date,
        LocalDate from,
        LocalDate to,
        @Bounds(min = 0, max = 200_000) int entered,
        @Bounds(min = 0, max = 200_000) int leftOut) {}
