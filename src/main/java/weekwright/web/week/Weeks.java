package weekwright.web.week;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.time.temporal.TemporalAdjusters;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.base.Codec;
import weekwright.base.Refused;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Request;

/** Weeks as addresses name them: {@code week=2026-W46} (ISO 8601), or {@code of=} with any of their days. */
final class Weeks {
    private static final Pattern WEEK = Pattern.compile("([0-9]{4})-?[Ww]([0-9]{2})");

    private Weeks() {}

    static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    /** The Monday of the week that was asked for; this week's where none was. */
    static LocalDate asked(Request request) {
        String week = request.query("week");
        if (!week.isEmpty()) {
            return named(week)
                    .orElseThrow(() -> new NotFound(
                            "\"" + week + "\" is no week; write one such as " + name(monday(request.today())) + "."));
        }
        String day = request.query("of");
        if (day.isEmpty()) {
            return monday(request.today());
        }
        try {
            return monday(
                    Codec.of(LocalDate.class).parse(day, request.settings().typed()));
        } catch (Refused refused) {
            throw new NotFound("\"" + day + "\" " + refused.rule() + ".");
        }
    }

    /** The Monday of {@code 2026-W46}; a year of 52 weeks has no 53rd. */
    static Optional<LocalDate> named(String week) {
        Matcher parts = WEEK.matcher(week);
        if (!parts.matches()) {
            return Optional.empty();
        }
        // the fourth of January lies in the first week of its year (ISO 8601)
        LocalDate monday = monday(LocalDate.of(Integer.parseInt(parts.group(1)), 1, 4))
                .plusWeeks(Integer.parseInt(parts.group(2)) - 1L);
        return name(monday).equals(parts.group(1) + "-W" + parts.group(2)) ? Optional.of(monday) : Optional.empty();
    }

    static String name(LocalDate monday) {
        return String.format(
                Locale.ROOT,
                "%04d-W%02d",
                monday.get(IsoFields.WEEK_BASED_YEAR),
                monday.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
    }

    /** {@code Week 46}. */
    static String title(LocalDate monday) {
        return "Week " + monday.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
    }

    static String address(LocalDate monday, LocalDate today) {
        return monday.equals(monday(today)) ? "/week" : "/week?week=" + name(monday);
    }
}
