package weekwright.render.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture.Fan;
import weekwright.render.chart.AheadPicture.Model;
import weekwright.render.chart.AheadPicture.Purchase;
import weekwright.render.chart.Labels.Place;
import weekwright.render.chart.MoneyBand.Step;

/** The money of the wide picture: time to the right, amounts upwards. */
final class MoneyDrawing implements MoneyBand.Plane {
    /** Receives a balloon: its letter, its middle, and where it points to. */
    interface Balloons {
        void put(String letter, double... place);
    }

    private static final double SAMPLE = 7;

    private final MoneyBand band;
    private final Model model;
    private final Formats formats;
    private final AheadSheet sheet;
    private final double left;
    private final double right;
    private final double top;
    private final double foot;
    private final double ceiling;

    /** @param ceiling nothing of the money is lettered above this */
    MoneyDrawing(
            MoneyBand band,
            Model model,
            Formats formats,
            AheadSheet sheet,
            double left,
            double right,
            double top,
            double foot,
            double ceiling) {
        this.band = band;
        this.model = model;
        this.formats = formats;
        this.sheet = sheet;
        this.left = left;
        this.right = right;
        this.top = top;
        this.foot = foot;
        this.ceiling = ceiling;
    }

    @Override
    public double x(double day, double minor) {
        return left + day * (right - left) / sheet.days();
    }

    @Override
    public double y(double day, double minor) {
        return foot - (minor - band.low()) / (band.high() - band.low()) * (foot - top);
    }

    private double y(double minor) {
        return y(0, minor);
    }

    /** The upper corner of a purchase's step. */
    Optional<double[]> stepAt(int purchase) {
        return band.steps().stream()
                .filter(s -> s.purchase() == purchase)
                .findFirst()
                .map(s -> new double[] {x(s.day(), 0), y(s.after())});
    }

    /** The steps of the stair, to be touched; each at least 16 pixels wide and 24 high. */
    void things(Svg svg, AheadPane pane, AheadThings said) {
        for (Step step : band.steps()) {
            if (step.purchase() < pane.purchases().size()) {
                double upper = Math.min(y(step.after()), y(step.before()) - 24);
                svg.thing(
                        pane.purchases().get(step.purchase()),
                        said.purchase(purchase(step)),
                        x(step.day(), 0) - 8,
                        upper,
                        16,
                        y(step.before()) - upper);
            }
        }
    }

    void drawShapes(Svg svg) {
        svg.group("money");
        for (double amount : MoneyBand.roundAmounts(band.low(), band.high())) {
            svg.line("amount-line", left, y(amount), right, y(amount));
        }
        if (band.hasFan()) {
            svg.polygon("fan-thin", band.band(this, Fan::p10, Fan::p90));
            svg.polygon("fan-wash", band.band(this, Fan::p25, Fan::p75));
        }
        svg.polygons("short-field", band.shortFields(this));
        svg.line(
                "reserve",
                left,
                y(model.cash().reserve()),
                right,
                y(model.cash().reserve()));
        svg.polyline("stair", band.stair(this));
        svg.polyline("cash-past", band.past(this));
        if (band.hasFan()) {
            svg.polyline("fan-middle", band.median(this));
        }
        for (Step step : band.steps()) {
            if (purchase(step).shortBy() > 0) {
                Marks.gap(
                        svg,
                        x(step.day(), 0),
                        y(step.after()),
                        y(step.after() - purchase(step).shortBy()));
            }
        }
        svg.line("base-line thin", left, foot, right, foot);
        svg.end();
    }

    private Purchase purchase(Step step) {
        return model.cash().purchases().get(step.purchase());
    }

    void drawLetters(Svg svg, Balloons balloons) {
        Labels labels = new Labels(new Box(2, ceiling, right + 4, foot - 1));
        keepLinesFree(labels);
        double today = x(sheet.today(), 0);
        String head = "Money, if nothing more were bought";
        boolean besideInHand = !sheet.holdsToday() || left + Styles.QUIET.face().width(head, 13) < today - 4;
        double headFoot = ceiling + (besideInHand ? 15 : 21);
        labels.must(Styles.QUIET, head, new Place(left, headFoot, "start"), new Place(today + 6, headFoot, "start"));
        for (Step step : band.steps()) {
            letterStep(labels, step, balloons);
        }
        if (sheet.holdsToday()) {
            labels.must(
                    Styles.STRONG,
                    formats.moneyForecast(model.cash().now()),
                    new Place(today - 6, y(model.cash().now()) + 16, "end"),
                    new Place(today - 6, y(model.cash().now()) - 7, "end"));
        }
        labels.must(
                Styles.TICK,
                "reserve " + formats.moneyForecast(model.cash().reserve()),
                new Place(left, y(model.cash().reserve()) - 4, "start"),
                new Place(left, y(model.cash().reserve()) + 12, "start"),
                new Place(right, y(model.cash().reserve()) - 4, "end"));
        for (double amount : MoneyBand.roundAmounts(band.low(), band.high())) {
            labels.may(
                    Styles.TICK_QUIET,
                    formats.moneyForecast(amount),
                    new Place(left, y(amount) - 4, "start"),
                    new Place(left, y(amount) + 12, "start"));
        }
        svg.group("money-letters");
        labels.draw(svg);
        svg.end();
    }

    /** Where there is no room for names: each step carries its number in the order of the purchases, from 1. */
    void drawNumbers(Svg svg) {
        svg.group("money-letters");
        for (Step step : band.steps()) {
            double at = x(step.day(), 0);
            double upper = Math.max(top - 2, y(step.after()) - 12);
            svg.circle("balloon-ring", at, upper, 9.5)
                    .text("letters balloon-letter", at, upper + 4.3, "middle", String.valueOf(step.purchase() + 1));
        }
        Labels labels = new Labels(new Box(2, ceiling, right + 4, foot - 1));
        keepLinesFree(labels);
        labels.must(
                AheadUpright.TEXT,
                "reserve " + formats.moneyForecast(model.cash().reserve()),
                new Place(right, y(model.cash().reserve()) + 16, "end"),
                new Place(right, y(model.cash().reserve()) - 5, "end"));
        labels.must(
                AheadUpright.STRONG,
                formats.moneyForecast(model.cash().now()),
                new Place(x(sheet.today(), 0) + 6, y(model.cash().now()) + 20, "start"),
                new Place(x(sheet.today(), 0) + 6, y(model.cash().now()) - 8, "start"));
        labels.draw(svg);
        svg.end();
    }

    private void letterStep(Labels labels, Step step, Balloons balloons) {
        Purchase purchase = purchase(step);
        double at = x(step.day(), 0);
        double upper = y(step.after());
        double lower = y(step.before());
        String name = purchase.name() + " " + formats.moneyForecast(purchase.amount());
        if (sheet.isFar()) {
            letterFar(labels, step, name, balloons);
            return;
        }
        Place named = labels.must(
                Styles.STRONG,
                name,
                new Place(at + 7, upper + 24, "start"),
                new Place(at - 8, upper - 4, "end"),
                new Place(at + 7, upper - 8, "start"),
                new Place(at + 7, lower - 6, "start"),
                new Place(at + 7, lower + 16, "start"),
                new Place(at - 8, upper - 20, "end"),
                new Place(at + 7, upper - 24, "start"),
                new Place(at - 8, lower + 16, "end"),
                new Place(at + 7, lower + 32, "start"));
        if (purchase.shortBy() > 0) {
            double missing = y(step.after() - purchase.shortBy());
            String words = "short " + formats.moneyForecast(purchase.shortBy());
            Place said = labels.must(
                    Styles.SHORT,
                    words,
                    new Place(at - 8, upper - 4, "end"),
                    new Place(at - 8, (upper + missing) / 2 + 4, "end"),
                    new Place(at - 8, upper - 19, "end"),
                    new Place(at + 8, upper - 8, "start"),
                    new Place(at + 8, upper - 24, "start"),
                    new Place(at - 8, missing + 16, "end"));
            pointShort(labels, step, words, said, balloons);
        } else {
            pointShort(labels, step, name, named, balloons);
        }
        pointOrder(labels, step, at, upper, lower, balloons);
    }

    /** Of many weeks only what finds room is lettered; the table has the rest. */
    private void letterFar(Labels labels, Step step, String name, Balloons balloons) {
        double at = x(step.day(), 0);
        double upper = y(step.after());
        Purchase purchase = purchase(step);
        if (purchase.shortBy() > 0) {
            labels.may(
                    Styles.SHORT,
                    "short " + formats.moneyForecast(purchase.shortBy()),
                    new Place(at - 8, upper - 4, "end"),
                    new Place(at - 8, upper - 22, "end"),
                    new Place(at + 8, y(step.after() - purchase.shortBy()) + 18, "start"));
        }
        labels.may(
                Styles.STRONG,
                name,
                new Place(at + 7, upper - 8, "start"),
                new Place(at - 8, upper - 22, "end"),
                new Place(at + 7, y(step.before()) + 24, "start"),
                new Place(at + 7, y(step.before()) + 42, "start"));
        if (model.pointers().shortOf().isPresent() && model.pointers().shortOf().getAsInt() == step.purchase()) {
            for (double[] one : new double[][] {{at, upper - 14}, {at - 22, upper - 14}, {at + 22, upper + 16}}) {
                if (labels.room(new Box(one[0] - 10, one[1] - 10, one[0] + 10, one[1] + 10))) {
                    balloons.put("D", one[0], one[1]);
                    break;
                }
            }
        }
        pointOrder(labels, step, at, upper, y(step.before()), balloons);
    }

    private void pointShort(Labels labels, Step step, String words, Place place, Balloons balloons) {
        if (model.pointers().shortOf().isEmpty() || model.pointers().shortOf().getAsInt() != step.purchase()) {
            return;
        }
        Box box = Labels.box(Styles.SHORT, words, place);
        double middle = (box.left() + box.right()) / 2;
        double[][] tries = {
            {middle, box.top() - 12},
            {box.left() - 14, (box.top() + box.bottom()) / 2},
            {box.right() + 14, box.top() - 4}
        };
        double[] at = tries[0];
        for (double[] one : tries) {
            if (labels.room(new Box(one[0] - 10, one[1] - 10, one[0] + 10, one[1] + 10))) {
                at = one;
                break;
            }
        }
        balloons.put("D", at[0], at[1]);
    }

    private void pointOrder(Labels labels, Step step, double at, double upper, double lower, Balloons balloons) {
        if (model.pointers().orderBy().isEmpty() || model.pointers().orderBy().getAsInt() != step.purchase()) {
            return;
        }
        double[] heights = {lower - 15, (upper + lower) / 2, lower - 30, lower + 14, upper + 12};
        double[] chosen = {at + 22, heights[0]};
        search:
        for (double side : new double[] {22, -22, 44, -44, 80}) {
            for (double height : heights) {
                if (labels.room(new Box(at + side - 10, height - 10, at + side + 10, height + 10))) {
                    chosen = new double[] {at + side, height};
                    break search;
                }
            }
        }
        balloons.put("E", chosen[0], chosen[1], at, Math.max(upper, Math.min(lower, chosen[1])));
    }

    /** Letters keep off the median and the stair where they can. */
    private void keepLinesFree(Labels labels) {
        List<double[]> lines = new ArrayList<>(List.of(band.median(this), band.stair(this), band.past(this)));
        for (double[] line : lines) {
            for (int i = 0; i + 3 < line.length; i += 2) {
                double length = Math.hypot(line[i + 2] - line[i], line[i + 3] - line[i + 1]);
                int parts = (int) Math.max(1, Math.ceil(length / SAMPLE));
                for (int part = 0; part < parts; part++) {
                    double a = part / (double) parts;
                    double b = (part + 1) / (double) parts;
                    double x1 = line[i] + a * (line[i + 2] - line[i]);
                    double x2 = line[i] + b * (line[i + 2] - line[i]);
                    double y1 = line[i + 1] + a * (line[i + 3] - line[i + 1]);
                    double y2 = line[i + 1] + b * (line[i + 3] - line[i + 1]);
                    labels.keepFree(new Box(
                            Math.min(x1, x2) - 1, Math.min(y1, y2) - 1, Math.max(x1, x2) + 1, Math.max(y1, y2) + 1));
                }
            }
        }
        if (sheet.holdsToday()) {
            labels.keepFree(new Box(x(sheet.today(), 0) - 1, ceiling, x(sheet.today(), 0) + 1, foot));
        }
    }
}
