package weekwright.render.chart;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture.Notch;
import weekwright.render.chart.AheadPicture.Range;
import weekwright.render.chart.AheadPicture.Stage;
import weekwright.render.chart.Labels.Place;
import weekwright.render.chart.Labels.Style;

/** The letters of one timber: its name, its even chance, the ends of its range, its notches. */
final class StageLetters {
    /** Wood is kept free in slices of this many pixels, since its edges slant. */
    private static final double SLICE = 8;

    private final StageDrawing drawing;
    private final Labels labels;
    private final Formats formats;
    private final int index;
    private final double left;
    private final double right;
    private boolean named;
    private Optional<Box> landing = Optional.empty();

    StageLetters(StageDrawing drawing, Labels labels, Formats formats, int index, double left, double right) {
        this.drawing = drawing;
        this.labels = labels;
        this.formats = formats;
        this.index = index;
        this.left = left;
        this.right = right;
    }

    int index() {
        return index;
    }

    private Stage stage() {
        return drawing.stage();
    }

    private double clamped(double day) {
        return Math.max(left, Math.min(right, drawing.x(day)));
    }

    /** The name of a stage to come stands inside the uncut wood, if there is room. */
    void nameInside() {
        if (stage().began().isPresent() || stage().done().isPresent()) {
            return;
        }
        double from = clamped(drawing.timber().begins()[2]) + 10;
        double to = clamped(drawing.timber().ends()[0]) - 10;
        if (Styles.NAME.face().width(stage().name(), Styles.NAME.size()) <= to - from) {
            labels.must(Styles.NAME, stage().name(), new Place(from, drawing.foot() - 7, "start"));
            named = true;
        }
    }

    void keepWoodFree() {
        Timber timber = drawing.timber();
        double from = clamped(timber.begins()[0]);
        double to = clamped(timber.ends()[2]);
        double perDay = drawing.x(1) - drawing.x(0);
        double depth = drawing.foot() - drawing.top();
        for (double at = from; at < to; at += SLICE) {
            double next = Math.min(to, at + SLICE);
            double dayLeft = (at - drawing.x(0)) / perDay;
            double dayRight = (next - drawing.x(0)) / perDay;
            double upper = Math.min(1, timber.upperEdge(dayLeft));
            double lower = Math.max(0, Math.min(1, timber.lowerEdge(dayRight)));
            if (lower > upper) {
                labels.keepFree(new Box(at, drawing.top() + upper * depth, next, drawing.top() + lower * depth));
            }
        }
        drawing.peg().ifPresent(day -> {
            double middle = (drawing.top() + drawing.foot()) / 2;
            labels.keepFree(new Box(drawing.x(day) - 5, middle - 5, drawing.x(day) + 5, middle + 5));
        });
    }

    /** The even chance with its day: beside the peg, or at the edge the timber runs across. Never dropped. */
    void landing() {
        if (stage().done().isPresent()) {
            return;
        }
        Optional<LocalDate> even = stage().landing().flatMap(Range::p50);
        if (even.isEmpty()) {
            return;
        }
        double top = drawing.top();
        Place chosen;
        String text;
        if (drawing.peg().isPresent()) {
            double at = drawing.x(drawing.peg().get());
            text = Formats.dayMonthLong(even.get());
            chosen = labels.must(
                    Styles.LANDING,
                    text,
                    new Place(at + 9, top + 4, "start"),
                    new Place(at + 9, top - 3, "start"),
                    new Place(at, top - 5, "middle"),
                    new Place(at + 4, top - 5, "end"),
                    new Place(at + 9, drawing.foot() + 14, "start"),
                    new Place(at, drawing.foot() + 14, "middle"),
                    new Place(clamped(drawing.timber().ends()[2]) + 8, drawing.foot() - 4, "start"));
        } else {
            boolean before = drawing.timber().ends()[1] < 0;
            text = "about " + formats.far(even.get());
            chosen = labels.must(
                    Styles.LANDING,
                    text,
                    before ? new Place(left, top - 5, "start") : new Place(right, top - 5, "end"),
                    before
                            ? new Place(left, drawing.foot() + 14, "start")
                            : new Place(right, drawing.foot() + 14, "end"));
        }
        landing = Optional.of(Labels.box(Styles.LANDING, text, chosen));
    }

    /** The name above the timber, its remark beside it; it must stand. */
    void nameOutside() {
        if (named) {
            return;
        }
        Style style = Styles.NAME;
        double from = clamped(drawing.timber().begins()[0]);
        double to = clamped(drawing.timber().ends()[2]);
        double width = style.face().width(stage().name(), style.size());
        double begin = Math.min(from, right - width);
        List<Place> places = new ArrayList<>();
        places.add(new Place(begin, drawing.top() - 4, "start"));
        landing.ifPresent(day -> places.add(new Place(day.right() + 32, drawing.top() + 4, "start")));
        places.add(new Place(clamped(drawing.timber().begins()[2]) + 6, drawing.foot() + 12, "start"));
        places.add(new Place(begin - 8, drawing.foot() - 6, "end"));
        places.add(new Place(to + 8, drawing.foot() - 6, "start"));
        places.add(new Place(begin - 8, drawing.top() + 8, "end"));
        places.add(new Place(begin, drawing.foot() + 12, "start"));
        Place at = labels.must(style, stage().name(), places.toArray(Place[]::new));
        if (!stage().remark().isEmpty()) {
            labels.may(Styles.TICK_QUIET, stage().remark(), new Place(at.x() + width + 6, at.y(), "start"));
        }
        if (stage().done().isPresent()) {
            String text = "done " + Formats.dayMonth(stage().done().get());
            labels.may(
                    Styles.TICK_QUIET,
                    text,
                    new Place(to + 7, drawing.foot() - 7, "start"),
                    new Place(to, drawing.top() - 6, "end"));
        }
    }

    /** Where the balloon of this landing finds room: right of its day, above it, under it. */
    Optional<Place> balloonBesideLanding() {
        if (landing.isEmpty()) {
            return Optional.empty();
        }
        Box day = landing.get();
        double middle = (day.top() + day.bottom()) / 2;
        List<Place> places = new ArrayList<>();
        places.add(new Place(day.right() + 15, middle, "middle"));
        places.add(new Place(day.right() + 15, middle - 7, "middle"));
        places.add(new Place(day.left() - 15, middle - 7, "middle"));
        for (Place place : places) {
            if (labels.room(new Box(place.x() - 10, place.y() - 10, place.x() + 10, place.y() + 10))) {
                return Optional.of(place);
            }
        }
        return Optional.of(places.get(0));
    }

    /** One in ten and nine in ten, each dropped where there is no room. */
    void rangeEnds() {
        if (stage().done().isPresent() || stage().landing().isEmpty()) {
            return;
        }
        Range range = stage().landing().get();
        double[] ends = drawing.timber().ends();
        int days = drawing.sheet().days();
        if (range.p10().isPresent() && ends[0] < days && ends[0] > 0) {
            String text = Formats.dayMonth(range.p10().get());
            double at = drawing.x(ends[0]);
            labels.may(
                    Styles.TICK,
                    text,
                    new Place(at, drawing.top() - 5, "middle"),
                    new Place(at + 2, drawing.top() - 5, "end"),
                    new Place(Math.min(right, at + 20), drawing.top() - 5, "end"));
        }
        if (range.p90().isPresent() && ends[2] <= days) {
            String text = Formats.dayMonth(range.p90().get());
            double at = drawing.x(ends[2]);
            labels.may(
                    Styles.TICK,
                    text,
                    new Place(at + 6, drawing.foot() + 1, "start"),
                    new Place(at + 6, drawing.foot() - 8, "start"),
                    new Place(at, drawing.foot() + 12, "middle"));
        }
    }

    /** Names of notches under the timber; the first to go where letters clash. */
    void notches() {
        for (Notch notch : drawing.notches()) {
            double at = drawing.x(drawing.sheet().day(notch.day()));
            labels.may(
                    Styles.TICK,
                    notch.name(),
                    new Place(at, drawing.foot() + 12, "middle"),
                    new Place(at - 4, drawing.foot() + 12, "start"),
                    new Place(at + 4, drawing.foot() + 12, "end"));
        }
    }
}
