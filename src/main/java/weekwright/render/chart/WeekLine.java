package weekwright.render.chart;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import weekwright.render.Formats;
import weekwright.render.chart.Labels.Place;

/** The line of weeks over a lying picture: a tick a publication day, the months above, and today through all of it. */
final class WeekLine {
    private static final double MONTH_FOOT = 14;
    private static final double TICK_FOOT = 29;
    private static final double TOP = 4;
    /** Days of the month nearer than this would run into each other. */
    private static final double TICK_APART = 20;
    /** Publication days nearer than this are drawn as months alone. */
    private static final double DAY_APART = 10;
    /** A January narrower than this is named by its year. */
    private static final double NARROW_MONTH = 90;

    private final AheadSheet sheet;
    private final DoubleUnaryOperator x;
    private final double left;
    private final double right;
    private final double line;
    private final double foot;

    private final List<Box> names = new ArrayList<>();
    /** Where the last name ends. */
    private double named;

    /**
     * @param x where a day lies
     * @param line the height of the line itself
     * @param foot how far down the days are drawn
     */
    WeekLine(AheadSheet sheet, DoubleUnaryOperator x, double left, double right, double line, double foot) {
        this.sheet = sheet;
        this.x = x;
        this.left = left;
        this.right = right;
        this.line = line;
        this.foot = foot;
    }

    private double x(LocalDate date) {
        return x.applyAsDouble(sheet.day(date));
    }

    void draw(Svg svg) {
        List<LocalDate> days = sheet.weekdays(sheet.model().slotDay());
        svg.group("weeks");
        if (x.applyAsDouble(7) - x.applyAsDouble(0) >= DAY_APART) {
            svg.lines(
                    "day-line",
                    days.stream()
                            .map(day -> new double[] {x(day), line, x(day), foot})
                            .toList());
        }
        List<LocalDate> months = new ArrayList<>(sheet.monthStarts());
        if (months.isEmpty() || x(months.get(0)) - left > 100) {
            months.add(0, sheet.first());
        }
        named = 0;
        months.forEach(month -> month(svg, month));
        double free = left - 20;
        for (LocalDate day : days) {
            if (x(day) - free >= TICK_APART) {
                svg.text(Styles.TICK_QUIET.kind(), x(day), TICK_FOOT, "middle", String.valueOf(day.getDayOfMonth()));
                free = x(day);
            }
        }
        svg.line("base-line", left, line, right, line);
        svg.end();
    }

    /** The name is cut short, or moved right of today, where today would run through it; a year runs over narrow months behind it. */
    private void month(Svg svg, LocalDate month) {
        double at = Math.max(left, x(month));
        double until = Math.min(right, x(month.withDayOfMonth(1).plusMonths(1)));
        svg.line("month-line", at, at < named ? MONTH_FOOT + 3 : TOP, at, line);
        String name = month.getMonthValue() == 1 ? Formats.monthYear(month) : Formats.month(month);
        boolean year = false;
        if (crossed(at, name) || length(name) + 8 > until - at) {
            year = month.getMonthValue() == 1 && until - at < NARROW_MONTH;
            name = year ? String.valueOf(month.getYear()) : Formats.monthShort(month);
        }
        double from = crossed(at, name) ? today() + 6 : at + 6;
        double end = from + length(name);
        if (from > named && end <= (year ? right : until)) {
            svg.text(Styles.MONTH.kind(), from, MONTH_FOOT, "start", name);
            names.add(Box.ofText(Styles.MONTH.face(), Styles.MONTH.size(), from, MONTH_FOOT, "start", name)
                    .wider(3));
            named = end + 2;
        }
    }

    private double today() {
        return x.applyAsDouble(sheet.today());
    }

    private boolean crossed(double at, String name) {
        return at + 2 < today() && today() < at + 10 + length(name);
    }

    private static double length(String name) {
        return Styles.MONTH.face().width(name, Styles.MONTH.size());
    }

    /** Today, drawn after all else, its word where no month stands. */
    void drawToday(Svg svg) {
        if (!sheet.holdsToday()) {
            return;
        }
        double at = today();
        svg.group("today");
        svg.line("today-line", at, TOP, at, foot + 4);
        Labels labels = new Labels(new Box(0, 0, right + left, foot + 20));
        names.forEach(labels::keepFree);
        labels.must(
                Styles.SHORT,
                "today",
                new Place(at - 5, MONTH_FOOT, "end"),
                new Place(at + 5, MONTH_FOOT, "start"),
                // on its left the reserve is lettered
                new Place(at + 5, foot - 3, "start"),
                new Place(at - 5, foot - 3, "end"));
        labels.draw(svg);
        svg.end();
    }
}
