package weekwright.funds;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.Month;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import weekwright.base.Quantity;

/**
 * How long timber in stick dries in the open under cover, to 20 % of its dry weight. Days of stock one inch thick by species:
 * Air Drying of Lumber, FPL-GTR-117 (1999), from memory; the short figure is of stock piled in spring or summer, the long one
 * of stock piled late or in winter, which has to wait for the next spring (Forest Products Laboratory, Technical Note 233, 1960). Other thicknesses: by the power of 1.52 (red oak, as quoted of Simpson and Hart, Forest Products Journal 51, 2001), so
 * twice as thick takes 2.87 times as long. Here the short figure counts days of April to September alone, and at worst stock
 * that lies over a winter is dry at the end of the June after it: common practice, no source. Real stacks differ; a meter or an
 * oven tells.
 */
public final class Drying {
    /** The thickest for which anything is said, in inches. */
    public static final BigDecimal MOST_INCHES = BigDecimal.valueOf(6);

    private static final int PLACES = 3;
    /** 1.52 = 38 / 25. */
    private static final int POWER = 38;

    private static final int ROOT = 25;

    private Drying() {}

    /**
     * A line of the table.
     *
     * @param word by which a species is recognised
     * @param shortest days of one inch, piled in spring
     * @param longest days of one inch, piled late
     */
    public record Species(String key, String name, String word, int shortest, int longest) {}

    /** Days from stacking. */
    public record Days(int low, int likely, int high) {}

    public static final List<Species> TABLE = List.of(
            new Species("white-oak", "white oak", "oak", 80, 250),
            new Species("red-oak", "red oak", "red oak", 70, 200),
            new Species("ash", "ash", "ash", 60, 200),
            new Species("walnut", "walnut", "walnut", 70, 200),
            new Species("tulip", "tulip wood, yellow poplar", "tulip", 40, 150),
            new Species("douglas-fir", "Douglas fir", "douglas", 20, 200),
            new Species("white-pine", "white pine", "pine", 60, 200));

    /** The line that a species written in words is likely to mean. */
    public static Optional<Species> meant(String words) {
        String plain = words.toLowerCase(Locale.ROOT);
        return TABLE.stream()
                .filter(one -> List.of(plain.split("[^\\p{L}]+")).containsAll(List.of(one.word.split(" "))))
                .max(Comparator.comparingInt(one -> one.word.length()));
    }

    public static Optional<Species> find(String key) {
        return TABLE.stream().filter(one -> one.key.equals(key)).findFirst();
    }

    /**
     * @param inches over 0, to {@link #MOST_INCHES}
     * @param stacked the day
     * @param south whether spring begins in September
     */
    public static Days of(Species species, BigDecimal inches, LocalDate stacked, boolean south) {
        BigDecimal times = times(inches);
        int shortest = whole(species.shortest, times);
        LocalDate low = afterSeasonDays(stacked, shortest, south);
        LocalDate high = stacked.plusDays(whole(species.longest, times));
        if (season(low, south).isAfter(stacked)) {
            LocalDate springOver = season(low, south).plusMonths(3).minusDays(1);
            high = high.isBefore(springOver) ? springOver : high;
        }
        high = high.isBefore(low) ? low : high;
        int first = Math.toIntExact(low.toEpochDay() - stacked.toEpochDay());
        int last = Math.toIntExact(high.toEpochDay() - stacked.toEpochDay());
        return new Days(first, (first + last) / 2, last);
    }

    /** How many times as long as an inch: the largest thousandth whose 25th power is not over the thickness' 38th. */
    static BigDecimal times(BigDecimal inches) {
        MathContext exact = new MathContext(60);
        BigDecimal goal = inches.pow(POWER, exact);
        long low = 0;
        long high = 100_000;
        while (high - low > 1) {
            long middle = (low + high) / 2;
            boolean fits = BigDecimal.valueOf(middle, PLACES).pow(ROOT, exact).compareTo(goal) <= 0;
            low = fits ? middle : low;
            high = fits ? high : middle;
        }
        return BigDecimal.valueOf(low, PLACES);
    }

    private static int whole(int days, BigDecimal times) {
        return BigDecimal.valueOf(days)
                .multiply(times)
                .setScale(0, RoundingMode.CEILING)
                .intValueExact();
    }

    /** The day before which so many days of drying months lie. */
    private static LocalDate afterSeasonDays(LocalDate from, int days, boolean south) {
        LocalDate day = from;
        int left = days;
        while (left > 0) {
            left -= dries(day, south) ? 1 : 0;
            day = day.plusDays(1);
        }
        return day;
    }

    private static boolean dries(LocalDate day, boolean south) {
        boolean summerOfNorth = day.getMonthValue() >= 4 && day.getMonthValue() <= 9;
        return summerOfNorth != south;
    }

    /** The first day of the drying months that a day lies in or after. */
    private static LocalDate season(LocalDate day, boolean south) {
        Month first = south ? Month.OCTOBER : Month.APRIL;
        LocalDate begins = LocalDate.of(day.getYear(), first, 1);
        return begins.isAfter(day) ? begins.minusYears(1) : begins;
    }

    /** Days as the columns of a stock item hold them. */
    public static Quantity days(int days) {
        return new Quantity(BigDecimal.valueOf(days));
    }
}
