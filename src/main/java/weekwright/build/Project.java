package weekwright.build;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Money;

/**
 * The project itself: the keys at the top of project.toml. One row.
 *
 * @param currency ISO 4217
 * @param zone IANA zone of all dates
 * @param reserve the floor of cash that the crew chose
 * @param quotes how straight quotation marks of notes are shown
 */
public record Project(
        String name,
        LocalDate started,
        String currency,
        Optional<Units> units,
        String zone,
        @Bounds(min = 0) Optional<Money> reserve,
        Optional<LocalDate> openingDate,
        Optional<Money> openingCash,
        @Bounds(min = 1, max = 240) Optional<Integer> horizonMonths,
        Optional<Quotes> quotes) {
    /** Units in which lengths and volumes are shown. */
    public enum Units {
        METRIC,
        IMPERIAL
    }

    /** Quotation marks in which notes are set, whichever straight ones are typed. */
    public enum Quotes {
        AS_TYPED,
        ENGLISH,
        GERMAN,
        FRENCH,
        SWISS
    }
}
