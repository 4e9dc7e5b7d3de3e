package weekwright.funds;

import java.time.LocalDate;
import java.time.MonthDay;
import weekwright.build.Settings;

/** A year of the project's tax office, named by the year in which it begins; both days are in it. */
public record TaxYear(int year, LocalDate from, LocalDate to) {

    public static TaxYear of(int year, Settings settings) {
        MonthDay starts = settings.yearStarts();
        return new TaxYear(year, starts.atYear(year), starts.atYear(year + 1).minusDays(1));
    }

    /** The one that a day lies in. */
    public static TaxYear in(LocalDate day, Settings settings) {
        TaxYear year = of(day.getYear(), settings);
        return day.isBefore(year.from) ? of(day.getYear() - 1, settings) : year;
    }

    public boolean holds(LocalDate day) {
        return !day.isBefore(from) && !day.isAfter(to);
    }

    /** {@code 2026}, or {@code 2026-27} where it begins within a calendar year. */
    public String name() {
        return to.getYear() == year ? String.valueOf(year) : "%d-%02d".formatted(year, to.getYear() % 100);
    }
}
