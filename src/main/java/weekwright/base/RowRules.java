package weekwright.base;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/** The rules that rows of several tables share: order of low, likely and high, of dates, percents, texts that are needed. */
public final class RowRules {
    private RowRules() {}

    /**
     * Low, likely and high must rise; an empty low or high has its default and is in order (rule 21).
     *
     * @param prefix what stands before low, likely and high in the columns' names: {@code lead_}, or nothing
     */
    public static <T extends Comparable<T>> void rising(
            String prefix, Optional<T> low, Optional<T> likely, Optional<T> high, Problems problems) {
        if (likely.isEmpty()) {
            if (low.isPresent() || high.isPresent()) {
                problems.fault(
                        prefix + "likely",
                        "",
                        "is missing beside low or high",
                        "write the likely one, or leave out all");
            }
            return;
        }
        if (low.isPresent() && low.get().compareTo(likely.get()) > 0) {
            problems.fault(
                    prefix + "low",
                    low.get().toString(),
                    "is over the likely " + likely.get(),
                    "write " + likely.get() + " or less");
        }
        if (high.isPresent() && high.get().compareTo(likely.get()) < 0) {
            problems.fault(
                    prefix + "high",
                    high.get().toString(),
                    "is under the likely " + likely.get(),
                    "write " + likely.get() + " or more");
        }
    }

    /** The later column must not lie before the earlier one, where both are given; both dates are named. */
    public static void notBefore(
            String laterColumn,
            Optional<LocalDate> later,
            String earlierColumn,
            Optional<LocalDate> earlier,
            Problems problems) {
        if (later.isPresent() && earlier.isPresent() && later.get().isBefore(earlier.get())) {
            problems.fault(
                    laterColumn,
                    later.get().toString(),
                    "is before " + earlierColumn + " " + earlier.get(),
                    "write " + earlier.get() + " or later, or change " + earlierColumn);
        }
    }

    /** A percent between 0 and 1 was probably meant as a share: accepted as it stands, with a remark. */
    public static void percent(String column, Optional<Quantity> percent, Problems problems) {
        percent.filter(p -> p.value().signum() > 0 && p.value().compareTo(BigDecimal.ONE) < 0)
                .ifPresent(p -> problems.remark(
                        column,
                        p.text(),
                        "is read as " + p.text() + " %",
                        "if a share was meant, write " + Decimals.text(p.value().movePointRight(2))));
    }

    /** A text that has to be there. */
    public static void needed(String column, String text, String remedy, Problems problems) {
        if (text.isBlank()) {
            problems.fault(column, "", "is missing", remedy);
        }
    }

    /** Minutes of film have at most one decimal (rule 107). */
    public static void oneDecimal(String column, Optional<Quantity> minutes, Problems problems) {
        minutes.filter(m -> m.value().scale() > 1)
                .ifPresent(m -> problems.fault(
                        column, m.text(), "has more than one decimal place", "write at most one, such as 12.5"));
    }
}
