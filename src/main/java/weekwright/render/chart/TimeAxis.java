package weekwright.render.chart;

import java.time.LocalDate;
import weekwright.render.Formats;

/** Months along the top of a drawing, as many named as there is room for. */
final class TimeAxis {
    private TimeAxis() {}

    /** Draws month lines down to the foot and their names over the line at 34. */
    static void months(Svg svg, AheadSheet sheet, double left, double right, double foot) {
        svg.group("weeks");
        double free = left;
        for (LocalDate month = sheet.first().withDayOfMonth(1);
                month.isBefore(sheet.last());
                month = month.plusMonths(1)) {
            double at = left + sheet.day(month) * (right - left) / sheet.days();
            double next = left + sheet.day(month.plusMonths(1)) * (right - left) / sheet.days();
            if (at < left && next - left < 30) {
                continue;
            }
            at = Math.max(left, at);
            svg.line("day-line", at, 34, at, foot);
            String year = month.getMonthValue() == 1
                            || free == left
                                    && month.getYear() != sheet.model().today().getYear()
                    ? Formats.NBSP + month.getYear()
                    : "";
            for (String name : new String[] {
                Formats.month(month) + year, Formats.monthShort(month) + year, Formats.monthShort(month)
            }) {
                double width = Styles.MONTH.face().width(name, 15);
                if (at >= free
                        && at + 4 + width <= Math.min(right, Math.max(next, at + 4 + (year.isEmpty() ? 0 : width)))) {
                    svg.line("month-line", at, 12, at, 34);
                    svg.text(Styles.MONTH.kind(), at + 5, 26, "start", name);
                    free = at + width + 10;
                    break;
                }
            }
        }
        svg.line("base-line", left, 34, right, 34);
        svg.end();
    }
}
