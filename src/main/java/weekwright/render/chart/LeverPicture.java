package weekwright.render.chart;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture.Cash;
import weekwright.render.chart.AheadPicture.Model;
import weekwright.render.chart.AheadPicture.Pointers;
import weekwright.render.chart.AheadPicture.Range;
import weekwright.render.chart.AheadPicture.Stage;
import weekwright.render.chart.Labels.Place;

/** Landings as tried, a timber each, and as things stand as a dotted cut with an open peg upon it. */
public final class LeverPicture {
    /** A stage with something left to land. */
    public record Row(String name, Range now, Range then, String link) {}

    private static final double AXIS = 34;
    private static final double FIRST = 62;
    private static final double ROW = 44;
    private static final double DEPTH = 20;
    private static final double LEFT = 4;
    private static final int LEAST_WEEKS = 12;
    private static final int MOST_WEEKS = 156;

    private final List<Row> rows;
    private final Formats formats;
    private final AheadSheet sheet;

    public LeverPicture(List<Row> rows, LocalDate today, Formats formats) {
        this.rows = rows;
        this.formats = formats;
        LocalDate first = AheadPane.monday(today).minusWeeks(1);
        long last = rows.stream()
                .flatMap(row -> Stream.of(row.now(), row.then()))
                .flatMap(range -> Stream.of(range.p50(), range.p90()).flatMap(Optional::stream))
                .max(Comparator.naturalOrder())
                .map(day -> ChronoUnit.WEEKS.between(first, day) + 3)
                .orElse(0L);
        int weeks = (int) Math.max(LEAST_WEEKS, Math.min(MOST_WEEKS, last));
        List<Stage> stages = rows.stream()
                .map(row -> new Stage(
                        row.name(),
                        "",
                        Optional.of(first.minusDays(1)),
                        Optional.empty(),
                        Optional.of(row.then()),
                        Optional.empty(),
                        List.of()))
                .toList();
        Model model = new Model(
                today,
                DayOfWeek.MONDAY,
                stages,
                List.of(),
                List.of(),
                Optional.empty(),
                0,
                new Cash(0, 0, List.of(), List.of(), List.of()),
                Pointers.NONE);
        this.sheet = new AheadSheet(
                first, weeks * 7, IntStream.range(0, rows.size()).boxed().toList(), model);
    }

    /** For wide and for narrow screens. */
    public String drawings() {
        return draw("levers-wide", 844) + draw("levers-medium", 688) + draw("levers-narrow", 340);
    }

    private String draw(String id, double width) {
        double right = width - LEFT;
        double foot = FIRST + ROW * rows.size() - 10;
        Svg svg = Svg.ofThings(
                id,
                width,
                foot + 6,
                "When stages land with the levers, and as things stand, "
                        + formats.span(sheet.first(), sheet.last().minusDays(1)),
                "The same days stand in the table under the picture.");
        TimeAxis.months(svg, sheet, LEFT, right, foot);
        Labels labels = new Labels(new Box(0, AXIS + 2, width, foot + 6));
        List<StageDrawing> drawings = new ArrayList<>();
        svg.group("stages");
        for (int row = 0; row < rows.size(); row++) {
            StageDrawing drawing = new StageDrawing(
                    sheet, sheet.model().stages().get(row), day -> x(day, right), FIRST + ROW * row, DEPTH);
            drawing.draw(svg);
            drawing.drawGhost(svg, Optional.of(rows.get(row).now()));
            drawings.add(drawing);
        }
        svg.end();
        letters(labels, drawings, right);
        labels.draw(svg);
        double today = x(sheet.today(), right);
        svg.line("today-line", today, AXIS, today, foot + 2);
        svg.end();
        things(svg, drawings, right);
        return svg.done();
    }

    private double x(double day, double right) {
        return LEFT + day * (right - LEFT) / sheet.days();
    }

    private void letters(Labels labels, List<StageDrawing> drawings, double right) {
        List<StageLetters> letters = new ArrayList<>();
        for (int row = 0; row < drawings.size(); row++) {
            letters.add(new StageLetters(drawings.get(row), labels, formats, row, LEFT, right));
        }
        letters.forEach(StageLetters::keepWoodFree);
        for (int row = 0; row < drawings.size(); row++) {
            double top = drawings.get(row).top();
            labels.must(Styles.NAME, rows.get(row).name(), new Place(LEFT, top - 5, "start"));
        }
        letters.forEach(StageLetters::landing);
        letters.forEach(StageLetters::rangeEnds);
    }

    private void things(Svg svg, List<StageDrawing> drawings, double right) {
        AheadThings said = new AheadThings(formats);
        for (int row = 0; row < rows.size(); row++) {
            Row one = rows.get(row);
            StageDrawing drawing = drawings.get(row);
            String sentence = said.stage(drawing.stage(), Optional.of(one.now()));
            drawing.reach()
                    .ifPresent(at -> svg.thing(
                            one.link(),
                            sentence,
                            x(at[0], right),
                            drawing.top() - 2,
                            Math.max(24, x(at[1], right) - x(at[0], right)),
                            DEPTH + 4));
        }
    }
}
