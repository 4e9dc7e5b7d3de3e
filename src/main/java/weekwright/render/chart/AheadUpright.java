package weekwright.render.chart;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture.Model;
import weekwright.render.chart.AheadPicture.Safety;
import weekwright.render.chart.AheadPicture.Slot;
import weekwright.render.chart.AheadPicture.Thread;
import weekwright.render.chart.Labels.Place;
import weekwright.render.chart.Labels.Style;

/**
 * The picture of Ahead for a phone: time runs downwards, 7.1 pixels a day, 16 weeks; side by side up to three timbers,
 * the publication days, the money. Its letters are 14 pixels at 340 wide, so that they are still 12 on a sheet of 300.
 */
final class AheadUpright {
    static final double WIDTH = 340;
    private static final double USUAL_PER_DAY = 7.1;
    private static final int USUAL_DAYS = 16 * 7;
    private static final double TOP = 46;
    private static final double FIRST_TIMBER = 5;
    private static final double TIMBER_APART = 42;
    static final double DEPTH = 22;
    private static final double MONTHS_RIGHT = 145;
    private static final double FRAME_LEFT = 150;
    private static final double FRAME_WIDTH = 30;
    private static final double FRAME_HEIGHT = 17;
    /** Weeks nearer than these have no line, no number of the episode, no word of how safe it is. */
    private static final double DAY_APART = 8;

    private static final double NUMBER_APART = 16;
    private static final double WORD_APART = 34;
    private static final double NUMBER_LEFT = 185;
    private static final double DIMENSION = 233;
    private static final double MONEY_LEFT = 248;
    private static final double MONEY_RIGHT = 334;

    private static final Style HEAD = new Style("letters name", Lettering.HEAD, 15);
    static final Style TEXT = new Style("letters tall", Lettering.TEXT, 14);
    static final Style QUIET = new Style("letters tall quiet", Lettering.TEXT, 14);
    static final Style STRONG = new Style("letters tall strong", Lettering.BOLD, 14);
    static final Style SHORT = new Style("letters tall strong short", Lettering.BOLD, 14);

    private final Model model;
    private final Formats formats;
    private final AheadSheet sheet;
    private final AheadPane pane;
    private final AheadThings said;
    private final double perDay;
    private final double foot;
    private final List<String> letters = new ArrayList<>();
    private final List<double[]> balloons = new ArrayList<>();

    AheadUpright(Model model, Formats formats, AheadPane pane) {
        this.pane = pane;
        this.said = new AheadThings(formats);
        this.model = model;
        this.formats = formats;
        this.sheet = AheadSheet.upright(model, pane);
        this.perDay = USUAL_PER_DAY * USUAL_DAYS / sheet.days();
        this.foot = TOP + sheet.days() * perDay;
    }

    private double y(double day) {
        return TOP + day * perDay;
    }

    private double y(LocalDate date) {
        return y(sheet.day(date));
    }

    private static double column(int row) {
        return FIRST_TIMBER + TIMBER_APART * row;
    }

    String draw() {
        Svg svg = Svg.ofThings(
                "ahead-upright",
                WIDTH,
                foot + 8,
                "Stages, " + Formats.weekdays(model.slotDay()) + " and money on one line of weeks, "
                        + formats.span(sheet.first(), sheet.last().minusDays(1)),
                "The same figures stand in the table under the picture.");
        Labels labels = new Labels(new Box(0, 0, WIDTH, foot + 6));
        UprightMoney money = new UprightMoney(
                new MoneyBand(model.cash(), sheet.first(), model.today(), sheet.days()),
                model,
                formats,
                sheet,
                MONEY_LEFT,
                MONEY_RIGHT,
                TOP,
                perDay);
        weeks(svg, labels);
        threads(svg, money);
        List<UprightStage> stages = new ArrayList<>();
        svg.group("stages");
        for (int row = 0; row < sheet.shown().size(); row++) {
            int index = sheet.shown().get(row);
            UprightStage stage =
                    new UprightStage(sheet, model.stages().get(index), index, column(row), DEPTH, TOP, perDay);
            stage.draw(svg);
            stage.drawGhost(svg, pane.before(index));
            stages.add(stage);
        }
        svg.end();
        stages.forEach(s -> s.nameInside(labels));
        stages.forEach(s -> s.keepWoodFree(labels));
        slots(svg, labels);
        inHand(svg, labels);
        money.drawShapes(svg);
        stages.forEach(s -> s.landing(labels, formats));
        for (UprightStage stage : stages) {
            if (model.pointers().landing().isPresent()
                    && model.pointers().landing().getAsInt() == stage.index()) {
                stage.balloon(labels).ifPresent(at -> balloon("A", at));
            }
        }
        stages.forEach(s -> s.nameOutside(labels));
        stages.forEach(s -> s.range(labels));
        months(labels);
        money.letter(labels, this::balloon);
        svg.group("written");
        labels.draw(svg);
        stages.forEach(s -> s.drawNames(svg));
        svg.end();
        today(svg);
        for (int i = 0; i < letters.size(); i++) {
            double[] at = balloons.get(i);
            if (at.length == 4) {
                svg.line("balloon-line", at[0], at[1], at[2], at[3]);
            }
            svg.circle("balloon-ring", at[0], at[1], 10.5)
                    .text("letters balloon-letter tall", at[0], at[1] + 5, "middle", letters.get(i));
        }
        svg.end();
        things(svg, stages, money);
        return svg.done();
    }

    private void balloon(String letter, double... place) {
        if (place[1] >= 0 && place[1] <= foot + 8) {
            letters.add(letter);
            balloons.add(place);
        }
    }

    private void things(Svg svg, List<UprightStage> stages, UprightMoney money) {
        for (UprightStage stage : stages) {
            int index = stage.index();
            if (index < pane.stages().size()) {
                stage.reach()
                        .ifPresent(at -> svg.thing(
                                pane.stages().get(index),
                                said.stage(model.stages().get(index), pane.before(index)),
                                at.left(),
                                at.top(),
                                at.right() - at.left(),
                                at.bottom() - at.top()));
            }
        }
        for (int i = 0; i < Math.min(pane.slots().size(), model.slots().size()); i++) {
            Slot slot = model.slots().get(i);
            if (drawn(slot) && (slot.safety() != Safety.OPEN || 7 * perDay >= NUMBER_APART)) {
                double reach = Math.max(frameHeight(), Math.min(28, 7 * perDay));
                svg.thing(
                        pane.slots().get(i),
                        said.slot(slot, model),
                        FRAME_LEFT - 4,
                        y(slot.day()) - reach / 2,
                        FRAME_WIDTH + 40,
                        reach);
            }
        }
        money.things(svg, pane, said);
    }

    private double frameHeight() {
        return Math.max(3, Math.min(FRAME_HEIGHT, 7 * perDay - 3));
    }

    private boolean drawn(Slot slot) {
        double middle = y(slot.day());
        return middle >= TOP + frameHeight() / 2 && middle <= foot - frameHeight() / 2;
    }

    private void weeks(Svg svg, Labels labels) {
        svg.group("weeks");
        if (7 * perDay >= DAY_APART) {
            svg.lines(
                    "day-line",
                    sheet.weekdays(model.slotDay()).stream()
                            .map(day -> new double[] {0, y(day), WIDTH, y(day)})
                            .toList());
        }
        for (LocalDate month : sheet.monthStarts()) {
            svg.line("month-line", 0, y(month), WIDTH, y(month));
        }
        svg.end();
        labels.must(HEAD, "Build", new Place(0, 14, "start"));
        labels.must(HEAD, Formats.weekdays(model.slotDay()), new Place(FRAME_LEFT, 14, "start"));
        labels.must(HEAD, "Money", new Place(MONEY_LEFT, 14, "start"));
        if (sheet.holdsToday()) {
            labels.must(SHORT, "today", new Place(MONTHS_RIGHT, y(sheet.today()) - 5, "end"));
        }
    }

    private void months(Labels labels) {
        for (LocalDate month : sheet.monthStarts()) {
            String name = Formats.monthShort(month);
            labels.may(
                    HEAD,
                    name,
                    new Place(MONTHS_RIGHT, y(month) - 4, "end"),
                    new Place(MONTHS_RIGHT, y(month) + 15, "end"),
                    new Place(WIDTH - 2, y(month) - 4, "end"),
                    new Place(WIDTH - 2, y(month) + 15, "end"));
        }
        for (LocalDate day : sheet.weekdays(model.slotDay())) {
            labels.may(QUIET, String.valueOf(day.getDayOfMonth()), new Place(MONTHS_RIGHT, y(day) + 5, "end"));
        }
    }

    private void threads(Svg svg, UprightMoney money) {
        svg.group("threads");
        for (Thread thread : model.threads()) {
            double toY = y(thread.slot());
            if (toY > foot || toY < TOP || thread.slot().isBefore(model.today())) {
                continue;
            }
            String kind = "thread " + thread.safety().kind();
            if (thread.stage().isPresent()) {
                int row = sheet.shown().indexOf(thread.stage().getAsInt());
                double fromY = y(thread.from().orElseThrow());
                if (row >= 0 && fromY <= foot && fromY >= TOP) {
                    svg.line(kind, column(row) + DEPTH / 2, fromY, FRAME_LEFT, toY);
                }
            } else {
                money.stepAt(thread.purchase().getAsInt())
                        .ifPresent(at -> svg.line(kind, at[0], at[1], FRAME_LEFT + FRAME_WIDTH, toY));
            }
        }
        svg.end();
    }

    private void slots(Svg svg, Labels labels) {
        svg.group("slots");
        svg.line("base-line", FRAME_LEFT + FRAME_WIDTH / 2, TOP, FRAME_LEFT + FRAME_WIDTH / 2, foot);
        for (Slot slot : model.slots()) {
            double middle = y(slot.day());
            if (!drawn(slot)) {
                continue;
            }
            Marks.frame(svg, slot, FRAME_LEFT, middle - frameHeight() / 2, FRAME_WIDTH, frameHeight());
            labels.keepFree(new Box(
                    FRAME_LEFT - 2,
                    middle - frameHeight() / 2 - 1,
                    FRAME_LEFT + FRAME_WIDTH + 2,
                    middle + frameHeight() / 2 + 1));
            boolean planned = AheadThings.planned(slot);
            if (7 * perDay >= NUMBER_APART) {
                labels.must(planned ? STRONG : QUIET, slot.number(), new Place(NUMBER_LEFT, middle + 5, "start"));
            }
            if (planned && slot.safety() != Safety.SAFE && 7 * perDay >= WORD_APART) {
                labels.must(
                        slot.safety() == Safety.AT_RISK ? SHORT : TEXT,
                        slot.safety().word(),
                        new Place(NUMBER_LEFT, middle + 20, "start"));
            }
            if (model.pointers().slot().filter(slot.day()::equals).isPresent()) {
                double x = FRAME_LEFT - 15;
                labels.keepFree(new Box(x - 11, middle - 11, x + 11, middle + 11));
                balloon("B", x, middle);
            }
        }
        svg.end();
    }

    private void inHand(Svg svg, Labels labels) {
        if (model.inHandTo().isEmpty() || model.weeksInHand() == 0 || !sheet.holdsToday()) {
            return;
        }
        double from = y(sheet.today());
        double to = Math.min(foot - 24, y(model.inHandTo().get()) + FRAME_HEIGHT / 2);
        String words = Formats.count(model.weeksInHand(), "week") + " in hand";
        svg.group("in-hand");
        Marks.dimensionDown(svg, from, to, DIMENSION);
        if (Lettering.TEXT.width(words, 14) + 14 < to - from) {
            svg.textDown("letters tall", DIMENSION - 14, (from + to) / 2, "middle", words);
        }
        svg.end();
        labels.keepFree(new Box(DIMENSION - 6, from, DIMENSION + 6, to));
        if (model.pointers().inHand()) {
            labels.keepFree(new Box(DIMENSION - 11, to + 4, DIMENSION + 11, to + 27));
            balloon("C", DIMENSION, to + 16);
        }
    }

    private void today(Svg svg) {
        if (!sheet.holdsToday()) {
            return;
        }
        double at = y(sheet.today());
        svg.group("today");
        svg.line("today-line", 0, at, WIDTH, at);
        svg.end();
    }
}
