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
import weekwright.render.chart.MoneyDrawing.Balloons;

/** The money of the upright picture: time downwards, amounts to the right. */
final class UprightMoney implements MoneyBand.Plane {
    private static final double LINE = 15.5;
    /** A line of a purchase's name is broken at this width. */
    private static final double MOST_NAME = 77;

    private final MoneyBand band;
    private final Model model;
    private final Formats formats;
    private final AheadSheet sheet;
    private final double left;
    private final double right;
    private final double top;
    private final double perDay;

    UprightMoney(
            MoneyBand band,
            Model model,
            Formats formats,
            AheadSheet sheet,
            double left,
            double right,
            double top,
            double perDay) {
        this.band = band;
        this.model = model;
        this.formats = formats;
        this.sheet = sheet;
        this.left = left;
        this.right = right;
        this.top = top;
        this.perDay = perDay;
    }

    @Override
    public double x(double day, double minor) {
        return left + (minor - band.low()) / (band.high() - band.low()) * (right - left);
    }

    @Override
    public double y(double day, double minor) {
        return top + day * perDay;
    }

    private double x(double minor) {
        return x(0, minor);
    }

    private double y(double day) {
        return y(day, 0);
    }

    Optional<double[]> stepAt(int purchase) {
        return band.steps().stream()
                .filter(s -> s.purchase() == purchase)
                .findFirst()
                .map(s -> new double[] {x(s.after()), y(s.day())});
    }

    /** The steps of the stair, to be touched; each at least 24 pixels wide and 28 high. */
    void things(Svg svg, AheadPane pane, AheadThings said) {
        for (Step step : band.steps()) {
            if (step.purchase() < pane.purchases().size()) {
                double from = Math.min(x(step.before()), x(step.after()) - 24);
                svg.thing(
                        pane.purchases().get(step.purchase()),
                        said.purchase(purchase(step)),
                        from,
                        y(step.day()) - 14,
                        x(step.after()) - from,
                        28);
            }
        }
    }

    void drawShapes(Svg svg) {
        double foot = y(sheet.days());
        svg.group("money");
        if (band.hasFan()) {
            svg.polygon("fan-thin", band.band(this, Fan::p10, Fan::p90));
            svg.polygon("fan-wash", band.band(this, Fan::p25, Fan::p75));
        }
        svg.polygons("short-field", band.shortFields(this));
        svg.line("reserve", x(model.cash().reserve()), top, x(model.cash().reserve()), foot);
        svg.polyline("stair", band.stair(this));
        svg.polyline("cash-past", band.past(this));
        if (band.hasFan()) {
            svg.polyline("fan-middle", band.median(this));
        }
        for (Step step : band.steps()) {
            double missing = purchase(step).shortBy();
            if (missing > 0) {
                Marks.gapAcross(svg, x(step.after() - missing), x(step.after()), y(step.day()));
            }
        }
        svg.end();
    }

    private Purchase purchase(Step step) {
        return model.cash().purchases().get(step.purchase());
    }

    void letter(Labels labels, Balloons balloons) {
        double today = y(sheet.today());
        labels.must(
                AheadUpright.QUIET,
                "reserve " + formats.moneyForecast(model.cash().reserve()),
                new Place(right + 6, 32, "end"));
        if (sheet.holdsToday()) {
            labels.must(
                    AheadUpright.STRONG,
                    formats.moneyForecast(model.cash().now()),
                    new Place(x(model.cash().now()) - 5, today - 6, "end"),
                    new Place(x(model.cash().now()) + 5, today - 6, "start"));
        }
        for (Step step : band.steps()) {
            letterStep(labels, step, balloons);
        }
    }

    private void letterStep(Labels labels, Step step, Balloons balloons) {
        Purchase purchase = purchase(step);
        double at = y(step.day());
        double edge = right + 6;
        if (sheet.isFar()) {
            letterFar(labels, step, at, edge, balloons);
            return;
        }
        if (purchase.shortBy() > 0) {
            String words = "short " + formats.moneyForecast(purchase.shortBy());
            Place place = labels.must(
                    AheadUpright.SHORT, words, new Place(edge, at - 7, "end"), new Place(edge, at - 23, "end"));
            if (model.pointers().shortOf().isPresent()
                    && model.pointers().shortOf().getAsInt() == step.purchase()) {
                Box box = Labels.box(AheadUpright.SHORT, words, place);
                double x = Math.max(box.left() + 10, left + 6);
                labels.room(new Box(x - 11, box.top() - 23, x + 11, box.top() - 1));
                balloons.put("D", x, box.top() - 12);
            }
        }
        double below = nameUnder(labels, purchase, at, edge);
        boolean told = model.pointers().shortOf().isPresent()
                && model.pointers().shortOf().getAsInt() == step.purchase();
        if (told && purchase.shortBy() <= 0) {
            labels.room(new Box(edge - 22, below + 4, edge, below + 26));
            balloons.put("D", edge - 11, below + 17);
        }
        if (model.pointers().orderBy().isPresent() && model.pointers().orderBy().getAsInt() == step.purchase()) {
            double x = left + 2;
            double y = at + 23;
            if (!labels.room(new Box(x - 11, y - 11, x + 11, y + 11))) {
                y = below + 16;
                labels.room(new Box(x - 11, y - 11, x + 11, y + 11));
            }
            balloons.put("E", x, y, x + 4, at);
        }
    }

    /** Of many weeks what is short, where it finds room; the table has the rest. */
    private void letterFar(Labels labels, Step step, double at, double edge, Balloons balloons) {
        boolean told = model.pointers().shortOf().isPresent()
                && model.pointers().shortOf().getAsInt() == step.purchase();
        if (told && labels.room(new Box(left - 8, at - 24, left + 14, at - 2))) {
            balloons.put("D", left + 3, at - 13, x(step.after()), at);
        }
        if (model.pointers().orderBy().isPresent()
                && model.pointers().orderBy().getAsInt() == step.purchase()
                && labels.room(new Box(left - 8, at + 2, left + 14, at + 24))) {
            balloons.put("E", left + 3, at + 13, x(step.before()), at);
        }
        if (purchase(step).shortBy() > 0) {
            labels.may(
                    AheadUpright.SHORT,
                    formats.moneyForecast(purchase(step).shortBy()),
                    new Place(edge, at - 5, "end"),
                    new Place(edge, at + 15, "end"));
        }
    }

    /**
     * The purchase in short lines and its cost under them, right of the stair's step; where neighbours leave no room the cost
     * alone, or nothing: the table has both. Gives the foot of the last line.
     */
    private double nameUnder(Labels labels, Purchase purchase, double at, double edge) {
        List<String> lines = lines(purchase.name());
        lines.add(formats.moneyForecast(purchase.amount()));
        List<String> cost = lines.subList(lines.size() - 1, lines.size());
        for (List<String> some : List.of(lines, cost)) {
            for (double start : new double[] {at + 19, at + 34, at - 22 - some.size() * LINE, at + 49, at + 64}) {
                if (isFree(labels, some, start, edge)) {
                    for (int i = 0; i < some.size(); i++) {
                        boolean last = i == some.size() - 1;
                        labels.must(
                                last ? AheadUpright.TEXT : AheadUpright.STRONG,
                                some.get(i),
                                new Place(edge, start + i * LINE, "end"));
                    }
                    return start + (some.size() - 1) * LINE;
                }
            }
        }
        return at;
    }

    private boolean isFree(Labels labels, List<String> lines, double start, double edge) {
        boolean free = start + (lines.size() - 1) * LINE <= y(sheet.days());
        for (int i = 0; i < lines.size(); i++) {
            free &= labels.isFree(Box.ofText(Lettering.BOLD, 14, edge, start + i * LINE, "end", lines.get(i)));
        }
        return free;
    }

    private static List<String> lines(String name) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : name.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && Lettering.BOLD.width(longer, 14) > MOST_NAME) {
                lines.add(line);
                line = word;
            } else {
                line = longer;
            }
        }
        lines.add(line);
        return lines;
    }
}
