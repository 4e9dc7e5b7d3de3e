package weekwright.render.chart;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture.Notch;
import weekwright.render.chart.AheadPicture.Range;
import weekwright.render.chart.AheadPicture.Stage;
import weekwright.render.chart.Labels.Place;

/** One timber standing on end: its upper edge is the right one, time runs down. */
final class UprightStage {
    private static final double SLICE = 8;

    private final StageDrawing lying;
    private final Stage stage;
    private final int index;
    private final double left;
    private final double depth;
    private final double top;
    private final double perDay;
    private final double foot;
    private final AheadSheet sheet;
    private boolean named;
    private Optional<Box> landing = Optional.empty();
    private final List<double[]> names = new ArrayList<>();

    UprightStage(AheadSheet sheet, Stage stage, int index, double left, double depth, double top, double perDay) {
        this.sheet = sheet;
        this.stage = stage;
        this.index = index;
        this.left = left;
        this.depth = depth;
        this.top = top;
        this.perDay = perDay;
        this.foot = top + sheet.days() * perDay;
        this.lying = new StageDrawing(sheet, stage, this::y, left, depth);
    }

    int index() {
        return index;
    }

    private double y(double day) {
        return top + day * perDay;
    }

    private double clamped(double day) {
        return Math.max(top, Math.min(foot, y(day)));
    }

    private double right() {
        return left + depth;
    }

    private Timber timber() {
        return lying.timber();
    }

    void draw(Svg svg) {
        int days = sheet.days();
        svg.polygon("timber", flat(timber().corners(days)));
        if (stage.began().isPresent() || stage.done().isPresent()) {
            double from = Math.max(0, timber().begins()[0]);
            double worked = stage.done().isPresent() ? timber().ends()[2] : sheet.today();
            double to = Math.min(Math.min(days, worked), timber().ends()[2]);
            if (to > from) {
                svg.rect("timber-past", left, y(from), depth, y(to) - y(from));
                svg.line("grain", left + depth * .36, y(from) + 4, left + depth * .36, y(to) - 10);
                svg.line("grain", left + depth * .7, y(from) + 12, left + depth * .7, y(to) - 4);
            }
        }
        if (timber().hasStartCut() && timber().begins()[0] < days) {
            cut(svg, timber().startCut(days));
        }
        if (timber().hasEndCut() && timber().ends()[0] < days) {
            cut(svg, timber().endCut(days));
        }
        svg.polygon("timber-line", flat(timber().corners(days)));
        for (Notch notch : lying.notches()) {
            double at = y(sheet.day(notch.day()));
            svg.polygon("notch", left, at - 4, left + 8, at, left, at + 4);
        }
        if (timber().begins()[0] < 0) {
            Marks.breakLineAcross(svg, top, left, right());
        }
        if (timber().ends()[2] > days) {
            Marks.breakLineAcross(svg, foot, left, right());
        }
        lying.peg().ifPresent(day -> svg.circle("peg", left + depth / 2, y(day), 5));
    }

    void drawGhost(Svg svg, Optional<Range> before) {
        lying.ghost(before).ifPresent(corners -> svg.polygon("ghost", flat(corners)));
        lying.ghostPeg(before).ifPresent(day -> svg.circle("ghost-peg", left + depth / 2, y(day), 5));
    }

    /** Its timber as a place to be touched. */
    Optional<Box> reach() {
        return lying.reach().map(at -> new Box(left - 4, y(at[0]), right() + 4, Math.max(y(at[0]) + 24, y(at[1]))));
    }

    private void cut(Svg svg, double[][] corners) {
        if (corners.length >= 3) {
            svg.polygon("cut", flat(corners));
            svg.polygon("cut-hatch", flat(corners));
        }
    }

    private double[] flat(double[][] corners) {
        double[] points = new double[corners.length * 2];
        for (int i = 0; i < corners.length; i++) {
            points[2 * i] = right() - corners[i][1] * depth;
            points[2 * i + 1] = y(corners[i][0]);
        }
        return points;
    }

    /** The name runs down the uncut wood where it fits. */
    void nameInside(Labels labels) {
        double width = Styles.NAME.face().width(stage.name(), Styles.NAME.size());
        double from = stage.began().isPresent() ? sheet.today() : timber().begins()[2];
        double begin = Math.max(clamped(from), top) + 9;
        double end = clamped(timber().ends()[0]) - 6;
        if (stage.done().isEmpty() && width <= end - begin) {
            names.add(new double[] {left + depth / 2 - 5, begin});
            labels.keepFree(new Box(left, begin, right(), begin + width));
            named = true;
        }
    }

    void keepWoodFree(Labels labels) {
        double from = clamped(timber().begins()[0]);
        double to = clamped(timber().ends()[2]);
        for (double at = from; at < to; at += SLICE) {
            double next = Math.min(to, at + SLICE);
            double upper = Math.max(0, Math.min(1, timber().upperEdge((at - top) / perDay)));
            double lower = Math.max(0, Math.min(1, timber().lowerEdge((next - top) / perDay)));
            if (lower > upper) {
                labels.keepFree(new Box(right() - lower * depth, at, right() - upper * depth, next));
            }
        }
        lying.peg()
                .ifPresent(day ->
                        labels.keepFree(new Box(left + depth / 2 - 6, y(day) - 6, left + depth / 2 + 6, y(day) + 6)));
    }

    /** The even chance with its day, beside the cut or under its point; never dropped. */
    void landing(Labels labels, Formats formats) {
        Optional<LocalDate> even = stage.landing().flatMap(Range::p50);
        if (stage.done().isPresent() || even.isEmpty()) {
            return;
        }
        String text = Formats.dayMonth(even.get());
        Place place;
        if (lying.peg().isPresent()) {
            double at = y(lying.peg().get());
            double tip = clamped(timber().ends()[2]);
            place = labels.must(
                    AheadUpright.STRONG,
                    text,
                    new Place(left + depth / 2 + 9, at + 5, "start"),
                    new Place(left - 2, tip + 15, "start"),
                    new Place(right() + 4, at + 5, "start"),
                    new Place(left - 4, at + 5, "end"),
                    new Place(right() + 4, at + 20, "start"),
                    new Place(right(), tip + 15, "end"),
                    new Place(left - 2, tip + 31, "start"));
        } else {
            text = "about " + text;
            place = labels.must(
                    AheadUpright.STRONG,
                    text,
                    new Place(right() + 3, foot - 4, "start"),
                    new Place(left - 3, foot - 4, "end"),
                    new Place(right() + 3, foot - 20, "start"),
                    new Place(right() + 3, foot - 36, "start"));
        }
        landing = Optional.of(Labels.box(AheadUpright.STRONG, text, place));
    }

    /** Where the wood has no room, the name runs down beside it. */
    void nameOutside(Labels labels) {
        if (named) {
            return;
        }
        double width = Styles.NAME.face().width(stage.name(), Styles.NAME.size());
        double begin = clamped(timber().begins()[0]);
        double today = Math.max(begin, y(sheet.today()) + 4);
        double tip = clamped(timber().ends()[2]);
        double[][] tries = {
            {right() + 5, today + 2},
            {right() + 6, begin + 2},
            {right() + 6, clamped(timber().begins()[2]) + 2},
            {right() + 6, Math.max(top, begin - 30)},
            {left - 18, begin + 2},
            {left + 2, tip + 22},
            {right() + 6, Math.max(top, begin - 80)},
            {left + 2, tip + 50},
            {right() + 6, Math.max(begin, tip - width - 2)},
            {left - 18, Math.max(begin, tip - width - 2)}
        };
        double[] chosen = tries[
                labels.leastCovered(Arrays.stream(tries)
                        .map(one -> new Box(one[0] - 3, one[1], one[0] + 13, one[1] + width))
                        .toArray(Box[]::new))];
        names.add(chosen);
    }

    void drawNames(Svg svg) {
        names.forEach(at -> svg.textDown(Styles.NAME.kind(), at[0], at[1], "start", stage.name()));
    }

    Optional<double[]> balloon(Labels labels) {
        if (landing.isEmpty()) {
            return Optional.empty();
        }
        Box day = landing.get();
        double middle = (day.top() + day.bottom()) / 2;
        double[][] tries = {
            {day.right() + 14, middle},
            {day.left() + 12, day.bottom() + 14},
            {day.left() + 12, day.bottom() + 29},
            {day.left() + 12, day.top() - 14}
        };
        return Optional.of(tries[
                labels.leastCovered(Arrays.stream(tries)
                        .map(one -> new Box(one[0] - 11, one[1] - 11, one[0] + 11, one[1] + 11))
                        .toArray(Box[]::new))]);
    }

    /** {@code 3 Dec to 19 Dec} under the day, where there is room. */
    void range(Labels labels) {
        if (landing.isEmpty() || stage.landing().isEmpty()) {
            return;
        }
        Range range = stage.landing().get();
        if (range.p10().isEmpty() || range.p90().isEmpty() || lying.peg().isEmpty()) {
            return;
        }
        boolean oneMonth = range.p10().get().getMonth() == range.p90().get().getMonth();
        String until = oneMonth
                ? String.valueOf(range.p90().get().getDayOfMonth())
                : Formats.dayMonth(range.p90().get());
        String first = oneMonth
                ? String.valueOf(range.p10().get().getDayOfMonth())
                : Formats.dayMonth(range.p10().get());
        double at = landing.get().left();
        labels.may(
                AheadUpright.QUIET,
                first + " to " + until,
                new Place(at, landing.get().bottom() + 13, "start"));
    }
}
