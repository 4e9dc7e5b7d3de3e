package weekwright.render;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.MonthDay;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.Currency;
import java.util.List;
import java.util.Locale;

/**
 * Hours, money, dates and lists as people read them, in English, day before month. Parts that must not be torn apart at
 * a line's end are joined by no-break spaces; minus is the minus sign. Pure: the day it is given is the only clock.
 */
public final class Formats {
    /** The no-break space. */
    public static final String NBSP = "\u00a0";
    /** The minus sign, as wide as a plus. */
    public static final String MINUS = "\u2212";

    private static final String[] NUMBERS = {
        "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"
    };
    /** A weekday is told for days no further off than this. */
    private static final int WEEKDAY_WITHIN_DAYS = 10;

    private static final int MOST_WEEKS_AWAY = 8;
    /** Any leap year, so that 29 February has a place in it. */
    private static final int LEAP_YEAR = 2024;

    private final LocalDate today;
    private final int moneyDigits;
    private final String moneyBefore;

    /**
     * @param currency an ISO 4217 code
     * @param today the day that weekdays and years are told against
     * @throws IllegalArgumentException for a code that ISO 4217 does not list
     */
    public Formats(String currency, LocalDate today) {
        Currency listed = Currency.getInstance(currency);
        String symbol = listed.getSymbol(Locale.ENGLISH);
        this.today = today;
        this.moneyDigits = Math.max(0, listed.getDefaultFractionDigits());
        this.moneyBefore = Character.isLetter(symbol.charAt(symbol.length() - 1)) ? symbol + NBSP : symbol;
    }

    public LocalDate today() {
        return today;
    }

    // ---- hours

    /** Quarters where exact ({@code 3½}, {@code ¾}, {@code 12}), else hours and minutes ({@code 3:20}). */
    public static String hours(long minutes) {
        if (minutes < 0) {
            return MINUS + hours(-minutes);
        }
        long whole = minutes / 60;
        long rest = minutes % 60;
        if (rest % 15 != 0) {
            return grouped(whole) + ":" + (rest < 10 ? "0" : "") + rest;
        }
        String quarter = new String[] {"", "¼", "½", "¾"}[(int) (rest / 15)];
        return whole == 0 && rest > 0 ? quarter : grouped(whole) + quarter;
    }

    /** {@code 3½ h}, for tables and drawings. */
    public static String hoursShort(long minutes) {
        return hours(minutes) + NBSP + "h";
    }

    /** {@code 3½ hours}, {@code 1 hour}, {@code ½ hour}, for sentences. */
    public static String hoursLong(long minutes) {
        return hoursCounted(minutes, "hour", "hours");
    }

    /** {@code 1 hour is}, {@code 3½ hours are}, {@code 0 hours are}: with the words that agree with them. */
    public static String hoursCounted(long minutes, String one, String many) {
        boolean single = Math.abs(minutes) <= 60 && minutes % 15 == 0 && minutes != 0;
        return hours(minutes) + NBSP + (single ? one : many);
    }

    /** Hours that a forecast gives: whole ones from ten up, quarters below. */
    public static String hoursForecast(double minutes) {
        long step = Math.abs(minutes) >= 600 ? 60 : 15;
        return hours(Math.round(minutes / step) * step);
    }

    // ---- money

    /** As booked, with the smaller unit only where it is not nothing: {@code €5,180}, {@code −€12.50}. */
    public String money(long minor) {
        BigDecimal value = BigDecimal.valueOf(minor, moneyDigits);
        return money(value, value.stripTrailingZeros().scale() <= 0 ? 0 : moneyDigits);
    }

    /** As booked, always with all digits, for columns that add up: {@code €5,180.00}. */
    public String moneyExact(long minor) {
        return money(BigDecimal.valueOf(minor, moneyDigits), moneyDigits);
    }

    /** The price of one, which may have more places than the currency: {@code €1,520}, {@code €0.1875}. */
    public String price(BigDecimal major) {
        int places = Math.max(0, major.stripTrailingZeros().scale());
        return money(major, places == 0 ? 0 : Math.max(places, moneyDigits));
    }

    /** With a plus before what comes in: {@code +€40}, {@code −€310}. */
    public String moneySigned(long minor) {
        return (minor > 0 ? "+" : "") + money(minor);
    }

    /** A forecast: to ten of the larger unit, halves away from nothing: {@code €870}. */
    public String moneyForecast(double minor) {
        BigDecimal tens = major(minor).movePointLeft(1).setScale(0, RoundingMode.HALF_UP);
        return money(tens.movePointRight(1).setScale(0), 0);
    }

    /** What stands before an amount: {@code €}, or a code and a no-break space. */
    public String currencyMark() {
        return moneyBefore;
    }

    private BigDecimal major(double minor) {
        return new BigDecimal(minor).movePointLeft(moneyDigits);
    }

    private String money(BigDecimal value, int digits) {
        DecimalFormat format = new DecimalFormat("#,##0", DecimalFormatSymbols.getInstance(Locale.ENGLISH));
        format.setMinimumFractionDigits(digits);
        format.setMaximumFractionDigits(digits);
        return (value.signum() < 0 ? MINUS : "") + moneyBefore + format.format(value.abs());
    }

    // ---- dates

    /** For sentences: {@code 9 December}, {@code Friday 27 November} within ten days, the year when not this year. */
    public String date(LocalDate day) {
        return near(day) ? weekday(day) + NBSP + dateLong(day) : dateLong(day);
    }

    /** For tables and drawings: {@code 9 Dec}, {@code Fri 27 Nov} within ten days, the year when not this year. */
    public String dateShort(LocalDate day) {
        return near(day) ? weekdayShort(day) + NBSP + dateBrief(day) : dateBrief(day);
    }

    /** {@code 9 December}, without a weekday, the year when not this year. */
    public String dateLong(LocalDate day) {
        return day.getDayOfMonth() + NBSP + month(day) + year(day);
    }

    /** {@code 9 Dec}, without a weekday, the year when not this year. */
    public String dateBrief(LocalDate day) {
        return dayMonth(day) + year(day);
    }

    /** {@code 9 Dec}, neither weekday nor year: for drawings whose axis tells the year. */
    public static String dayMonth(LocalDate day) {
        return day.getDayOfMonth() + NBSP + monthShort(day);
    }

    /** {@code 9 December}, neither weekday nor year. */
    public static String dayMonthLong(LocalDate day) {
        return day.getDayOfMonth() + NBSP + month(day);
    }

    /** {@code 1 April}, of a day of every year. */
    public static String dayMonthLong(MonthDay day) {
        return dayMonthLong(day.atYear(LEAP_YEAR));
    }

    /** {@code December}. */
    public static String month(LocalDate day) {
        return day.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    /** {@code Dec}. */
    public static String monthShort(LocalDate day) {
        return month(day).substring(0, 3);
    }

    /** {@code March 2027}. */
    public static String monthYear(LocalDate day) {
        return month(day) + NBSP + day.getYear();
    }

    /** {@code Friday}. */
    public static String weekday(LocalDate day) {
        return weekday(day.getDayOfWeek());
    }

    /** {@code Friday}. */
    public static String weekday(DayOfWeek weekday) {
        return weekday.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }

    /** {@code Fridays}. */
    public static String weekdays(DayOfWeek weekday) {
        return weekday(weekday) + "s";
    }

    /** {@code Fri}. */
    public static String weekdayShort(LocalDate day) {
        return weekday(day).substring(0, 3);
    }

    /** {@code 25 Nov 2026, 07:40}. */
    public static String moment(LocalDateTime when) {
        return dayMonth(when.toLocalDate())
                + NBSP
                + when.getYear()
                + ","
                + NBSP
                + String.format(Locale.ROOT, "%02d:%02d", when.getHour(), when.getMinute());
    }

    /**
     * How far off a day is, to stand beside it: {@code today}, {@code tomorrow}, {@code in 9 days}, {@code 3 days ago}; from two
     * weeks on in whole weeks, the nearer number; over eight weeks nothing, since the day itself then says more.
     */
    public String away(LocalDate day) {
        long days = ChronoUnit.DAYS.between(today, day);
        long far = Math.abs(days);
        if (far <= 1) {
            return days == 0 ? "today" : days > 0 ? "tomorrow" : "yesterday";
        }
        long weeks = (far + 3) / 7;
        if (weeks > MOST_WEEKS_AWAY) {
            return "";
        }
        String count = far < 14 ? count(far, "day") : count(weeks, "week");
        return days > 0 ? "in" + NBSP + count : count + NBSP + "ago";
    }

    /** The same behind a comma, empty where it is nothing. */
    public String comingOrGone(LocalDate day) {
        String away = away(day);
        return away.isEmpty() ? "" : ", " + away;
    }

    /** A day told to the public: the day itself up to eight weeks ahead, from then on its month. */
    public String dateOrMonth(LocalDate day) {
        return day.isAfter(today.plusWeeks(8)) ? monthYear(day) : dateLong(day);
    }

    /**
     * A day however far off, as exactly as such a day can be told: the day up to nine months ahead, its month up to two
     * years, then its season ({@code spring 2029}; December belongs to the winter of the year it ends in).
     */
    public String far(LocalDate day) {
        if (!day.isAfter(today.plusMonths(9))) {
            return date(day);
        }
        if (!day.isAfter(today.plusYears(2))) {
            return monthYear(day);
        }
        LocalDate shifted = day.plusMonths(1);
        String season = new String[] {"winter", "spring", "summer", "autumn"}[(shifted.getMonthValue() - 1) / 3];
        return season + NBSP + shifted.getYear();
    }

    /** {@code 3 to 19 December}, {@code 11 February to 30 March 2027}: what both ends share is said once. */
    public String span(LocalDate from, LocalDate to) {
        return span(from, to, " to ");
    }

    /** {@code between 3 and 19 December}; one day alone: {@code on 3 December}. */
    public String between(LocalDate from, LocalDate to) {
        return from.equals(to) ? "on " + dateLong(from) : "between " + span(from, to, " and ");
    }

    /** {@code between 12 March and 30 April, even chances by 2 April} (rule 115). */
    public String landingRange(LocalDate p10, LocalDate p50, LocalDate p90) {
        if (p10.equals(p90)) {
            return between(p10, p90);
        }
        boolean told = p50.getYear() == p90.getYear() || p50.getYear() == today.getYear();
        return between(p10, p90) + ", even chances by " + (told ? dayMonthLong(p50) : dateLong(p50));
    }

    /** {@code +3 days}, {@code −1 day}, {@code no change}. */
    public static String daysMoved(long days) {
        return days == 0 ? "no change" : (days > 0 ? "+" : MINUS) + count(Math.abs(days), "day");
    }

    private String span(LocalDate from, LocalDate to, String joiner) {
        if (from.equals(to)) {
            return dateLong(from);
        }
        if (from.getYear() == to.getYear()) {
            return from.getMonthValue() == to.getMonthValue()
                    ? from.getDayOfMonth() + joiner + dateLong(to)
                    : dayMonthLong(from) + joiner + dateLong(to);
        }
        // a span of nearly a year, or longer, would read as one of days
        String first = to.isAfter(from.plusMonths(10)) ? dayMonthLong(from) + NBSP + from.getYear() : dateLong(from);
        return first + joiner + dayMonthLong(to) + NBSP + to.getYear();
    }

    private boolean near(LocalDate day) {
        return Math.abs(ChronoUnit.DAYS.between(today, day)) <= WEEKDAY_WITHIN_DAYS;
    }

    private String year(LocalDate day) {
        return day.getYear() == today.getYear() ? "" : NBSP + day.getYear();
    }

    // ---- words

    /** {@code Ilse, Tomas and Wren}. */
    public static String list(List<String> names) {
        int last = names.size() - 1;
        return last < 1
                ? String.join("", names)
                : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
    }

    /** {@code 1 day}, {@code 12 weeks}, {@code 0 shots}; the plural of {@code one} ends in s. */
    public static String count(long number, String one) {
        return count(number, one, one + "s");
    }

    /** {@code 1 person}, {@code 3 people}. */
    public static String count(long number, String one, String many) {
        return grouped(number) + NBSP + (number == 1 ? one : many);
    }

    /** {@code four weeks}, {@code no shots}, {@code 13 weeks}: words up to twelve, for sentences. */
    public static String counted(long number, String one, String many) {
        return number(number) + NBSP + (number == 1 ? one : many);
    }

    /** {@code four}, {@code no}, {@code 13}. */
    public static String number(long number) {
        return number >= 0 && number < NUMBERS.length ? NUMBERS[(int) number] : grouped(number);
    }

    /** {@code 12,345}. */
    public static String grouped(long number) {
        return (number < 0 ? MINUS : "")
                + new DecimalFormat("#,##0", DecimalFormatSymbols.getInstance(Locale.ENGLISH)).format(Math.abs(number));
    }

    /** The first letter large. */
    public static String sentence(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
