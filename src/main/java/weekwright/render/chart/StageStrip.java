package weekwright.render.chart;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture.Cash;
import weekwright.render.chart.AheadPicture.Model;
import weekwright.render.chart.AheadPicture.Pointers;
import weekwright.render.chart.AheadPicture.Range;
import weekwright.render.chart.AheadPicture.Stage;
import weekwright.render.chart.Labels.Place;

/**
 * One timber alone, for the page of its stage: from its first day, or today, to a little after its latest landing, at
 * most two years. Wide it is 1208 pixels, narrow 300, so that its letters
 * are not under 12 pixels on the smallest phone.
 */
public final class StageStrip {
    private static final int MOST_DAYS = 730;
    private static final int LEAST_DAYS = 56;
    private static final double TOP = 57;
    private static final double DEPTH = 27;

    private final Stage stage;
    private final LocalDate today;
    private final Formats formats;
    private final AheadSheet sheet;

    public StageStrip(Stage stage, LocalDate today, Formats formats) {
        this.stage = stage;
        this.today = today;
        this.formats = formats;
        LocalDate begin = stage.began()
                .or(() -> stage.start().flatMap(Range::p10))
                .or(stage::done)
                .map(d -> d.isBefore(today) || stage.done().isPresent() ? d : today)
                .orElse(today);
        LocalDate end = stage.done()
                .or(() -> stage.landing().flatMap(Range::p90))
                .or(() -> stage.landing().flatMap(Range::p50))
                .orElse(begin.plusDays(MOST_DAYS));
        LocalDate last = stage.done().isPresent() || end.isAfter(today) ? end : today;
        LocalDate first = begin.isBefore(last.minusDays(MOST_DAYS)) ? last.minusDays(MOST_DAYS) : begin;
        long length = Math.max(LEAST_DAYS, ChronoUnit.DAYS.between(first, last));
        int days = (int) Math.min(MOST_DAYS, Math.round(length * 1.12) + 4);
        Model alone = new Model(
                today,
                DayOfWeek.MONDAY,
                List.of(stage),
                List.of(),
                List.of(),
                Optional.empty(),
                0,
                new Cash(0, 0, List.of(), List.of(), List.of()),
                Pointers.NONE);
        this.sheet = new AheadSheet(first.minusDays(Math.max(1, days / 60)), days, List.of(0), alone);
    }

    /** All three; the style sheet shows the one that fits the screen. */
    public String drawings() {
        return wide() + draw("stage-strip medium", "strip-medium", 688) + narrow();
    }

    public String wide() {
        return draw("stage-strip wide", "strip-wide", 1208);
    }

    public String narrow() {
        return draw("stage-strip narrow", "strip-narrow", 300);
    }

    private String draw(String kind, String id, double width) {
        double left = 4;
        double right = width - 4;
        boolean narrow = width < 400;
        Svg svg = new Svg(id, kind, width, 122, title(), "");
        svg.group("weeks");
        months(svg, left, right, narrow);
        svg.end();
        Labels labels = new Labels(new Box(0, 38, width, 120));
        StageDrawing drawing = new StageDrawing(sheet, stage, day -> x(day, left, right), TOP, DEPTH);
        drawing.draw(svg);
        StageLetters letters = new StageLetters(drawing, labels, formats, 0, left, right);
        letters.keepWoodFree();
        letters.landing();
        double at = x(sheet.today(), left, right);
        boolean todayOn = at >= left && at <= right;
        if (todayOn) {
            labels.must(
                    Styles.SHORT,
                    "today",
                    new Place(at - 5, TOP + DEPTH + 30, "end"),
                    new Place(at + 5, TOP + DEPTH + 30, "start"));
        }
        letters.rangeEnds();
        letters.notches();
        if (stage.done().isPresent()) {
            labels.may(
                    Styles.TEXT,
                    "done " + formats.dateLong(stage.done().get()),
                    new Place(Math.min(right, x(sheet.day(stage.done().get()), left, right)), TOP - 6, "end"));
        }
        svg.group("written");
        labels.draw(svg);
        svg.end();
        if (todayOn) {
            svg.line("today-line", at, 38, at, TOP + DEPTH + 34);
        }
        return svg.done();
    }

    private String title() {
        if (stage.done().isPresent()) {
            return stage.name() + ", done " + formats.dateLong(stage.done().get());
        }
        Optional<Range> landing = stage.landing();
        if (landing.isPresent()
                && landing.get().p10().isPresent()
                && landing.get().p50().isPresent()
                && landing.get().p90().isPresent()) {
            return stage.name() + ": done "
                    + formats.landingRange(
                            landing.get().p10().get(),
                            landing.get().p50().get(),
                            landing.get().p90().get());
        }
        return landing.flatMap(Range::p50)
                .map(d -> stage.name() + ": done about " + formats.far(d))
                .orElse(stage.name() + ": later than the forecast reaches");
    }

    private double x(double day, double left, double right) {
        return left + day * (right - left) / sheet.days();
    }

    private void months(Svg svg, double left, double right, boolean narrow) {
        svg.line("base-line", left, 38, right, 38);
        double free = left;
        int step = 1;
        double monthWidth = (right - left) / sheet.days() * 30.4;
        while (monthWidth * step < (narrow ? 44 : 40)) {
            step *= step == 1 || step == 6 ? 2 : 3;
        }
        OptionalInt yearSaid = OptionalInt.empty();
        for (LocalDate month = sheet.first().withDayOfMonth(1);
                month.isBefore(sheet.last());
                month = month.plusMonths(1)) {
            double at = Math.max(left, x(sheet.day(month), left, right));
            double next = x(sheet.day(month.plusMonths(1)), left, right);
            if (next <= left) {
                continue;
            }
            boolean named = (month.getMonthValue() - 1) % step == 0;
            svg.line(named ? "month-line" : "day-line", at, named ? 12 : 28, at, 38);
            boolean sayYear = yearSaid.isEmpty() || yearSaid.getAsInt() != month.getYear();
            double room = Math.min(right, x(sheet.day(month.plusMonths(step)), left, right)) - at;
            for (String name : new String[] {
                sayYear && month.getYear() != today.getYear() ? Formats.monthYear(month) : Formats.month(month),
                sayYear && month.getYear() != today.getYear()
                        ? Formats.monthShort(month) + Formats.NBSP + month.getYear()
                        : Formats.month(month),
                Formats.month(month),
                Formats.monthShort(month)
            }) {
                double width = Styles.MONTH.face().width(name, 15);
                if (named && at >= free && width + 8 <= room) {
                    svg.text(Styles.MONTH.kind(), at + 5, 25, "start", name);
                    free = at + width + 9;
                    if (name.endsWith(String.valueOf(month.getYear())) || month.getYear() == today.getYear()) {
                        yearSaid = OptionalInt.of(month.getYear());
                    }
                    break;
                }
            }
        }
    }
}
