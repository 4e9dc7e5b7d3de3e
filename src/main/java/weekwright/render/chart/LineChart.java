package weekwright.render.chart;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture.Balance;
import weekwright.render.chart.AheadPicture.Fan;
import weekwright.render.chart.AheadPicture.Model;
import weekwright.render.chart.Labels.Place;

/**
 * One amount over time, past as an ink line, future as a fan: minutes in the story bank by week, supporters by month.
 * Wide it is 520 pixels, for half a sheet, narrow 300, so that its letters are not under 12 on the smallest phone.
 */
public final class LineChart {
    private static final double HEIGHT = 210;
    private static final double TOP = 46;
    private static final double FOOT = 196;

    /** A level line with its words, such as one episode's minutes. */
    public record Level(String words, double value) {}

    private final String id;
    private final String title;
    private final LocalDate today;
    private final List<Balance> past;
    private final List<Fan> fan;
    private final List<Level> levels;
    private final List<LocalDate> ringed;
    private final DoubleFunction<String> words;
    /** Another amount on the same days, at even chances, with its words; may be empty. */
    private final List<Balance> beside;

    private final String besideWords;
    /** Whether amounts are days. */
    private boolean ofDays;
    /** The value at the foot: nothing, unless all values lie close together far above it. */
    private double low;

    /**
     * @param id unique on the page
     * @param title what it shows, read aloud
     * @param past values of past days, oldest first
     * @param fan values to come, in order of date; may be empty
     * @param levels lines to compare with
     * @param ringed days of the past that carry a ring, such as months of a surge
     * @param words a value as its letters
     * @param beside another amount as a dotted line
     * @param besideWords what that is
     */
    public LineChart(
            String id,
            String title,
            LocalDate today,
            List<Balance> past,
            List<Fan> fan,
            List<Level> levels,
            List<LocalDate> ringed,
            DoubleFunction<String> words,
            List<Balance> beside,
            String besideWords) {
        this.id = id;
        this.title = title;
        this.today = today;
        this.past = List.copyOf(past);
        this.fan = List.copyOf(fan);
        this.levels = List.copyOf(levels);
        this.ringed = List.copyOf(ringed);
        this.words = words;
        this.beside = List.copyOf(beside);
        this.besideWords = besideWords;
    }

    /** As above, with nothing beside it. */
    public LineChart(
            String id,
            String title,
            LocalDate today,
            List<Balance> past,
            List<Fan> fan,
            List<Level> levels,
            List<LocalDate> ringed,
            DoubleFunction<String> words) {
        this(id, title, today, past, fan, levels, ringed, words, List.of(), "");
    }

    /**
     * Days that were said on days: amounts of the fan and of the levels are epoch days, told as dates; the lines behind them are
     * the firsts of months.
     */
    public static LineChart ofDays(
            String id, String title, LocalDate today, List<Fan> fan, List<Level> levels, Formats formats) {
        LineChart chart = new LineChart(
                id,
                title,
                today,
                List.of(),
                fan,
                levels,
                List.of(),
                value -> formats.dateBrief(LocalDate.ofEpochDay(Math.round(value))));
        chart.ofDays = true;
        return chart;
    }

    private List<Double> amounts(double high) {
        if (!ofDays) {
            return MoneyBand.roundAmounts(low, high);
        }
        LocalDate first = LocalDate.ofEpochDay((long) Math.ceil(low)).withDayOfMonth(1);
        int months = (int) Math.max(1, Math.round((high - low) / 30.4 / 4));
        List<Double> firsts = new ArrayList<>();
        for (LocalDate day = first; day.toEpochDay() < high; day = day.plusMonths(months)) {
            if (day.toEpochDay() >= low) {
                firsts.add((double) day.toEpochDay());
            }
        }
        return firsts;
    }

    /** Both; the style sheet shows the one that fits the screen. */
    public String drawings() {
        return wide() + narrow();
    }

    public String wide() {
        return draw(id + "-wide", "line-chart wide half", 520);
    }

    public String narrow() {
        return draw(id + "-narrow", "line-chart narrow", 300);
    }

    private String draw(String nameOnPage, String kind, double width) {
        Svg svg = new Svg(nameOnPage, kind, width, HEIGHT, title, "");
        List<LocalDate> all = new ArrayList<>();
        past.forEach(p -> all.add(p.day()));
        fan.forEach(f -> all.add(f.day()));
        if (all.isEmpty()) {
            return svg.done();
        }
        LocalDate first = all.stream().min(LocalDate::compareTo).orElseThrow();
        LocalDate end = all.stream().max(LocalDate::compareTo).orElseThrow();
        int days = (int) Math.max(7, ChronoUnit.DAYS.between(first, end));
        AheadSheet sheet = new AheadSheet(
                first,
                days,
                List.of(),
                new Model(
                        today,
                        DayOfWeek.MONDAY,
                        List.of(),
                        List.of(),
                        List.of(),
                        Optional.empty(),
                        0,
                        new AheadPicture.Cash(0, 0, List.of(), List.of(), List.of()),
                        AheadPicture.Pointers.NONE));
        double most = Math.max(1, values(Fan::p90).max().orElse(1));
        double least = Math.min(most, values(Fan::p10).min().orElse(most));
        low = most > least && least > most / 2 ? least - (most - least) * 0.35 : Math.min(0, least);
        double high = most + (most - low) * 0.08;
        double right = width - 10;
        double left = 6;
        TimeAxis.months(svg, sheet, left, right, FOOT);
        for (double value : amounts(high)) {
            svg.line("amount-line", left, y(value, high), right, y(value, high));
        }
        svg.line("base-line thin", left, FOOT, right, FOOT);
        if (fan.size() > 1) {
            svg.polygon("fan-thin", band(sheet, high, left, right, true));
            svg.polygon("fan-wash", band(sheet, high, left, right, false));
            svg.polyline(
                    "fan-middle",
                    fan.stream()
                            .flatMapToDouble(f -> DoubleStream.of(x(sheet, f.day(), left, right), y(f.p50(), high)))
                            .toArray());
        }
        for (Level level : levels) {
            svg.line("reserve", left, y(level.value(), high), right, y(level.value(), high));
        }
        if (beside.size() > 1) {
            svg.polyline("beside", points(beside, sheet, high, left, right));
        }
        if (!past.isEmpty()) {
            svg.polyline("cash-past", points(past, sheet, high, left, right));
            past.stream()
                    .filter(p -> ringed.contains(p.day()))
                    .forEach(p -> svg.circle("balloon-ring", x(sheet, p.day(), left, right), y(p.minor(), high), 5));
        }
        letters(svg, sheet, high, left, right, width);
        return svg.done();
    }

    private double[] points(List<Balance> line, AheadSheet sheet, double high, double left, double right) {
        return line.stream()
                .flatMapToDouble(p -> DoubleStream.of(x(sheet, p.day(), left, right), y(p.minor(), high)))
                .toArray();
    }

    private void letters(Svg svg, AheadSheet sheet, double high, double left, double right, double width) {
        Labels labels = new Labels(new Box(0, 36, width, HEIGHT));
        if (!past.isEmpty()) {
            Balance last = past.get(past.size() - 1);
            double x = x(sheet, last.day(), left, right);
            double y = y(last.minor(), high);
            String text = words.apply(last.minor());
            labels.must(
                    AheadUpright.STRONG,
                    text,
                    new Place(x + 6, y - 8, x > right - 90 ? "end" : "start"),
                    new Place(x - 4, y + 20, "end"));
            svg.circle("peg", x, y, 4.5);
        }
        if (fan.size() > 1) {
            Fan last = fan.get(fan.size() - 1);
            labels.may(
                    AheadUpright.TEXT,
                    words.apply(last.p50()),
                    new Place(right, y(last.p50(), high) - 8, "end"),
                    new Place(right, y(last.p50(), high) + 19, "end"));
        }
        if (beside.size() > 1) {
            Balance last = beside.get(beside.size() - 1);
            labels.may(
                    AheadUpright.TEXT,
                    besideWords,
                    new Place(right, y(last.minor(), high) - 6, "end"),
                    new Place(right, y(last.minor(), high) + 16, "end"));
        }
        for (Level level : levels) {
            labels.must(
                    AheadUpright.TEXT,
                    level.words(),
                    new Place(left, y(level.value(), high) - 5, "start"),
                    new Place(left, y(level.value(), high) + 16, "start"));
        }
        for (double value : amounts(high)) {
            labels.may(AheadUpright.QUIET, words.apply(value), new Place(left, y(value, high) - 4, "start"));
        }
        labels.draw(svg);
    }

    private double[] band(AheadSheet sheet, double high, double left, double right, boolean outer) {
        double[] points = new double[fan.size() * 4];
        for (int i = 0; i < fan.size(); i++) {
            Fan there = fan.get(i);
            Fan back = fan.get(fan.size() - 1 - i);
            points[2 * i] = x(sheet, there.day(), left, right);
            points[2 * i + 1] = y(outer ? there.p90() : there.p75(), high);
            points[2 * (fan.size() + i)] = x(sheet, back.day(), left, right);
            points[2 * (fan.size() + i) + 1] = y(outer ? back.p10() : back.p25(), high);
        }
        return points;
    }

    private static double x(AheadSheet sheet, LocalDate day, double left, double right) {
        return left + sheet.day(day) * (right - left) / sheet.days();
    }

    private double y(double value, double high) {
        return FOOT - (value - low) / (high - low) * (FOOT - TOP);
    }

    /** All values that are drawn, of the fan one edge. */
    private DoubleStream values(ToDoubleFunction<Fan> edge) {
        return Stream.of(
                        past.stream().mapToDouble(Balance::minor),
                        fan.stream().mapToDouble(edge),
                        levels.stream().mapToDouble(Level::value),
                        beside.stream().mapToDouble(Balance::minor))
                .flatMapToDouble(Function.identity());
    }
}
