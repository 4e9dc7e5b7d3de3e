package weekwright.build;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import weekwright.base.Hours;

/** Words for values inside the sentences of a refusal: "25 November 2026", "1 hour", "pit, shaft and wheel". */
public final class Said {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMMM uuuu", Locale.ENGLISH);

    private Said() {}

    public static String day(LocalDate day) {
        return DAY.format(day);
    }

    public static String month(YearMonth month) {
        return MONTH.format(month);
    }

    /** Decimal hours as in files, with the word. */
    public static String hours(Hours hours) {
        return hours.text() + (hours.minutes() == 60 ? " hour" : " hours");
    }

    public static String count(long count, String one, String several) {
        return count + " " + (count == 1 ? one : several);
    }

    public static String list(List<String> parts) {
        if (parts.size() < 2) {
            return String.join("", parts);
        }
        return String.join(", ", parts.subList(0, parts.size() - 1)) + " and " + parts.get(parts.size() - 1);
    }
}
