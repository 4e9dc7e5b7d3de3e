package weekwright.render.chart;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture.Model;
import weekwright.render.chart.AheadPicture.Safety;
import weekwright.render.chart.AheadPicture.Slot;
import weekwright.render.chart.AheadPicture.Stage;
import weekwright.render.chart.AheadPicture.Thread;
import weekwright.render.chart.Labels.Place;

/**
 * The lying picture of Ahead, 50 pixels a week. From top to bottom: weeks, up to five timbers 40 pixels apart
 * (36 where there are five), the line of publication days, money. Later marks cover earlier ones: day lines, threads, timbers, frames, money,
 * letters, today, balloons.
 */
final class AheadWide {
    static final double LEFT = 4;

    private static final double AXIS = 34;
    private static final double FIRST_TIMBER = 57;
    private static final double ROW = 40;
    private static final double CLOSE_ROW = 36;
    private static final double DEPTH = 23;
    private static final double CLOSE_DEPTH = 20;
    private static final int FULL_ROWS = 4;
    private static final double FULL_SLOTS_LINE = 276;
    private static final double FRAME_WIDTH = 30;
    private static final double FRAME_HEIGHT = 17;
    /** Publication days nearer than this stand without their number; nearer than the next without their word. */
    private static final double NUMBER_APART = 22;

    private static final double WORD_APART = 40;
    /** Nearer than this only what is planned is to be touched. */
    private static final double OPEN_APART = 16;

    private final Model model;
    private final Formats formats;
    private final String name;
    private final double width;
    private final double right;
    private final AheadSheet sheet;
    private final AheadPane pane;
    private final AheadThings said;
    private final double slotsLine;
    private final double moneyTop;
    private final double moneyFoot;
    private final List<double[]> balloons = new ArrayList<>();
    private final List<String> letters = new ArrayList<>();

    /** @param name class and id of the drawing: ahead-wide, ahead-medium */
    AheadWide(Model model, Formats formats, String name, double width, AheadSheet sheet, AheadPane pane) {
        this.pane = pane;
        this.said = new AheadThings(formats);
        this.model = model;
        this.formats = formats;
        this.name = name;
        this.width = width;
        this.right = width - LEFT;
        this.sheet = sheet;
        int rows = Math.min(FULL_ROWS, Math.max(2, sheet.shown().size()));
        this.slotsLine = FULL_SLOTS_LINE
                - (FULL_ROWS - rows) * ROW
                + Math.max(0, sheet.shown().size() - FULL_ROWS - 1) * CLOSE_ROW;
        this.moneyTop = slotsLine + 64;
        this.moneyFoot = slotsLine + 256;
    }

    private double x(double day) {
        return LEFT + day * (right - LEFT) / sheet.days();
    }

    private double x(LocalDate date) {
        return x(sheet.day(date));
    }

    private boolean close() {
        return sheet.shown().size() > FULL_ROWS;
    }

    private double top(int row) {
        return FIRST_TIMBER + (close() ? CLOSE_ROW : ROW) * row;
    }

    private double depth() {
        return close() ? CLOSE_DEPTH : DEPTH;
    }

    String draw() {
        Svg svg = Svg.ofThings(
                name,
                width,
                slotsLine + 266,
                "Stages, " + Formats.weekdays(model.slotDay()) + " and money on one line of weeks, "
                        + formats.span(sheet.first(), sheet.last().minusDays(1)),
                "The same figures stand in the table under the picture.");
        MoneyBand band = new MoneyBand(model.cash(), sheet.first(), model.today(), sheet.days());
        MoneyDrawing money =
                new MoneyDrawing(band, model, formats, sheet, LEFT, right, moneyTop, moneyFoot, slotsLine + 42);
        WeekLine weeks = new WeekLine(sheet, this::x, LEFT, right, AXIS, moneyFoot);
        weeks.draw(svg);
        threads(svg, money);
        Labels labels = new Labels(new Box(2, AXIS + 2, width - 2, slotsLine - FRAME_HEIGHT - 3));
        stages(svg, labels);
        slots(svg, labels);
        money.drawShapes(svg);
        labels.draw(svg);
        money.drawLetters(svg, this::balloon);
        inHand(svg);
        weeks.drawToday(svg);
        for (int i = 0; i < letters.size(); i++) {
            double[] at = balloons.get(i);
            if (at.length == 4) {
                svg.line("balloon-line", at[0], at[1], at[2], at[3]);
            }
            svg.circle("balloon-ring", at[0], at[1], 9.5)
                    .text("letters balloon-letter", at[0], at[1] + 4.3, "middle", letters.get(i));
        }
        svg.end();
        things(svg, money);
        return svg.done();
    }

    private void balloon(String letter, double... place) {
        if (place[0] >= 0 && place[0] <= width) {
            letters.add(letter);
            balloons.add(place);
        }
    }

    /** What can be touched: timbers, notches, publication days, purchases. */
    private void things(Svg svg, MoneyDrawing money) {
        for (int row = 0; row < sheet.shown().size(); row++) {
            int index = sheet.shown().get(row);
            if (index >= pane.stages().size()) {
                continue;
            }
            Stage stage = model.stages().get(index);
            double y = top(row);
            StageDrawing drawing = drawing(row, stage);
            drawing.reach()
                    .ifPresent(at -> svg.thing(
                            pane.stages().get(index),
                            said.stage(stage, pane.before(index)),
                            x(at[0]),
                            y - 2,
                            Math.max(24, x(at[1]) - x(at[0])),
                            depth() + 4));
        }
        for (int i = 0; i < Math.min(pane.slots().size(), model.slots().size()); i++) {
            Slot slot = model.slots().get(i);
            if (drawn(slot) && (slot.safety() != Safety.OPEN || perWeek() >= OPEN_APART)) {
                double reach = Math.max(frameWidth(), Math.min(30, perWeek()));
                svg.thing(
                        pane.slots().get(i),
                        said.slot(slot, model),
                        x(slot.day()) - reach / 2,
                        slotsLine - FRAME_HEIGHT - 4,
                        reach,
                        FRAME_HEIGHT + 8);
            }
        }
        money.things(svg, pane, said);
    }

    private StageDrawing drawing(int row, Stage stage) {
        return new StageDrawing(sheet, stage, this::x, top(row), depth());
    }

    private double perWeek() {
        return x(7) - x(0);
    }

    private double frameWidth() {
        return Math.max(3, Math.min(FRAME_WIDTH, perWeek() - 4));
    }

    private boolean drawn(Slot slot) {
        double middle = x(slot.day());
        return middle >= LEFT + frameWidth() / 2 && middle <= right - frameWidth() / 2 + 4;
    }

    private void threads(Svg svg, MoneyDrawing money) {
        svg.group("threads");
        for (Thread thread : model.threads()) {
            double toX = x(thread.slot());
            if (toX > right || toX < Math.max(LEFT, x(sheet.today()))) {
                continue;
            }
            if (thread.stage().isPresent()) {
                int row = sheet.shown().indexOf(thread.stage().getAsInt());
                double fromX = x(thread.from().orElseThrow());
                if (row >= 0 && fromX <= right && fromX >= LEFT) {
                    svg.line(kind(thread), fromX, top(row) + depth() / 2, toX, slotsLine - FRAME_HEIGHT);
                }
            } else {
                money.stepAt(thread.purchase().getAsInt())
                        .ifPresent(at -> svg.line(kind(thread), at[0], at[1], toX, slotsLine + 34));
            }
        }
        svg.end();
    }

    private static String kind(Thread thread) {
        return "thread " + thread.safety().kind();
    }

    private void stages(Svg svg, Labels labels) {
        svg.group("stages");
        List<StageLetters> named = new ArrayList<>();
        for (int row = 0; row < sheet.shown().size(); row++) {
            int index = sheet.shown().get(row);
            Stage stage = model.stages().get(index);
            StageDrawing drawing = drawing(row, stage);
            drawing.draw(svg);
            drawing.drawGhost(svg, pane.before(index));
            named.add(new StageLetters(drawing, labels, formats, index, LEFT, right));
        }
        svg.end();
        named.forEach(StageLetters::nameInside);
        named.forEach(StageLetters::keepWoodFree);
        model.pointers().slot().ifPresent(day -> slotBalloon(labels, day));
        named.forEach(StageLetters::landing);
        named.forEach(StageLetters::nameOutside);
        named.forEach(n -> {
            if (model.pointers().landing().isPresent()
                    && model.pointers().landing().getAsInt() == n.index()) {
                n.balloonBesideLanding().ifPresent(at -> balloon("A", at.x(), at.y()));
            }
        });
        named.forEach(StageLetters::rangeEnds);
        named.forEach(StageLetters::notches);
    }

    private void slotBalloon(Labels labels, LocalDate day) {
        double at = x(day);
        Box above = new Box(at - 11, slotsLine - FRAME_HEIGHT - 27, at + 11, slotsLine - FRAME_HEIGHT - 3);
        if (labels.room(above)) {
            balloon("B", at, slotsLine - FRAME_HEIGHT - 15, at, slotsLine - FRAME_HEIGHT);
        } else {
            balloon(
                    "B",
                    at + 25,
                    slotsLine - FRAME_HEIGHT / 2 - 2,
                    at + FRAME_WIDTH / 2,
                    slotsLine - FRAME_HEIGHT / 2 - 2);
        }
    }

    private void slots(Svg svg, Labels labels) {
        svg.group("slots");
        for (Slot slot : model.slots()) {
            double middle = x(slot.day());
            if (!drawn(slot)) {
                continue;
            }
            Marks.frame(svg, slot, middle - frameWidth() / 2, slotsLine - FRAME_HEIGHT, frameWidth(), FRAME_HEIGHT);
            boolean planned = AheadThings.planned(slot);
            if (perWeek() >= NUMBER_APART) {
                svg.text(
                        (planned ? Styles.TICK_STRONG : Styles.TICK_QUIET).kind(),
                        middle,
                        slotsLine + 14,
                        "middle",
                        slot.number());
            }
            if (planned && slot.safety() != Safety.SAFE && perWeek() >= WORD_APART) {
                svg.text(
                        (slot.safety() == Safety.AT_RISK ? Styles.TICK_SHORT : Styles.TICK).kind(),
                        middle,
                        slotsLine + 28,
                        "middle",
                        slot.safety().word());
            }
        }
        svg.line("base-line", LEFT, slotsLine, right, slotsLine);
        svg.end();
        labels.must(
                Styles.QUIET,
                Formats.weekdays(model.slotDay()),
                new Place(LEFT, slotsLine - FRAME_HEIGHT - 6, "start"),
                new Place(right, slotsLine - FRAME_HEIGHT - 6, "end"));
    }

    private void inHand(Svg svg) {
        Optional<LocalDate> until = model.inHandTo();
        double y = slotsLine + 42;
        if (until.isEmpty() || model.weeksInHand() == 0 || !sheet.holdsToday()) {
            return;
        }
        double from = x(sheet.today());
        double to = Math.min(right - 22, x(until.get()) + FRAME_WIDTH / 2);
        String words = Formats.count(model.weeksInHand(), "week") + " in hand";
        svg.group("in-hand");
        Marks.dimension(svg, from, to, y);
        double length = Styles.TICK.face().width(words, 12);
        if (length + 16 < to - from) {
            svg.text(Styles.TICK.kind(), (from + to) / 2, y + 4, "middle", words);
        } else {
            svg.text(Styles.TICK.kind(), to + (model.pointers().inHand() ? 30 : 8), y + 4, "start", words);
        }
        svg.end();
        if (model.pointers().inHand()) {
            balloon("C", to + 16, y);
        }
    }
}
