package weekwright.files.bank;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.funds.BankSource.DateOrder;

/** Dates as banks write them, in a given order; a time of day after them is passed over, two digits are a year of 2000 on. */
final class BankDates {
    private static final Pattern PARTS =
            Pattern.compile("([0-9]{1,4})[./, -]+([0-9]{1,2})[./, -]+([0-9]{1,4})([T ].*)?");
    private static final Pattern DIGITS = Pattern.compile("([0-9]{8})([T ].*)?");
    private static final List<String> MONTHS =
            List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
    private static final Pattern NAMED =
            Pattern.compile("(?i)\\b(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\\.?");

    private BankDates() {}

    static Optional<LocalDate> read(String text, DateOrder order) {
        Matcher named = NAMED.matcher(text.strip());
        String plain = named.find()
                ? named.replaceFirst(
                        String.valueOf(MONTHS.indexOf(named.group(1).toLowerCase(Locale.ROOT)) + 1))
                : text.strip();
        Matcher digits = DIGITS.matcher(plain);
        if (digits.matches()) {
            String eight = digits.group(1);
            plain = order == DateOrder.YMD
                    ? eight.substring(0, 4) + "-" + eight.substring(4, 6) + "-" + eight.substring(6)
                    : eight.substring(0, 2) + "-" + eight.substring(2, 4) + "-" + eight.substring(4);
        }
        Matcher parts = PARTS.matcher(plain);
        return parts.matches() ? day(parts, order) : Optional.empty();
    }

    private static Optional<LocalDate> day(Matcher parts, DateOrder order) {
        String year = parts.group(order == DateOrder.YMD ? 1 : 3);
        String month = parts.group(order == DateOrder.MDY ? 1 : 2);
        String day = parts.group(order == DateOrder.YMD ? 3 : order == DateOrder.DMY ? 1 : 2);
        if (year.length() != 2 && year.length() != 4 || month.length() > 2 || day.length() > 2) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.of(
                    Integer.parseInt(year) + (year.length() == 2 ? 2000 : 0),
                    Integer.parseInt(month),
                    Integer.parseInt(day)));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
