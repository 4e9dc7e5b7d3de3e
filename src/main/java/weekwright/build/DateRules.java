package weekwright.build;

import java.time.LocalDate;
import weekwright.base.Problems;
import weekwright.base.Shape;

/** Dates so far from the project's start that they can only be slips: over 50 years before it, over 60 after it. */
public final class DateRules {
    private static final int YEARS_BEFORE = 50;
    private static final int YEARS_AFTER = 60;

    private DateRules() {}

    /** Looks at every column of a row that holds a date. */
    public static <R extends Record> void check(Shape<R> shape, R row, LocalDate started, Problems problems) {
        LocalDate first = started.minusYears(YEARS_BEFORE);
        LocalDate last = started.plusYears(YEARS_AFTER);
        for (Shape.Field field : shape.fields()) {
            if (field.valueType() != LocalDate.class) {
                continue;
            }
            field.value(row)
                    .map(LocalDate.class::cast)
                    .filter(date -> date.isBefore(first) || date.isAfter(last))
                    .ifPresent(date -> problems.fault(
                            field.name(),
                            date.toString(),
                            "is too far from the start of the project, " + started,
                            "write a day from " + first + " to " + last));
        }
    }
}
