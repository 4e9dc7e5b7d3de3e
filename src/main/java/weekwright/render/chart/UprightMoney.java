package weekwright.render.chart;

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

    void drawShapes(Svg svg) {
        double foot = y(sheet.days());
        svg.group("money");
        if (band.hasFan()) {
            svg.polygon("fan-thin", band.band(this, Fan::p10, Fan::p90));
            svg.polygon("fan-wash", band.band(this, Fan::p25, Fan::p75));
        }
        for (double[] field : band.shortFields(this)) {
            svg.polygon("short-field", field);
        }
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
        labels.must(
                AheadUpright.STRONG,
                formats.moneyForecast(model.cash().now()),
                new Place(x(model.cash().now()) - 5, today - 6, "end"),
                new Place(x(model.cash().now()) + 5, today - 6, "start"));
        for (Step step : band.steps()) {
            letterStep(labels, step, balloons);
        }
    }

    private void letterStep(Labels labels, Step step, Balloons balloons) {
        Purchase purchase = purchase(step);
        double at = y(step.day());
        double edge = right + 6;
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
        labels.must(
                AheadUpright.STRONG,
                purchase.name(),
                new Place(edge, at + 19, "end"),
                new Place(edge, at + 27, "end"),
                new Place(edge, at + 35, "end"));
        labels.must(
                AheadUpright.TEXT,
                formats.moneyForecast(purchase.amount()),
                new Place(edge, at + 35, "end"),
                new Place(edge, at + 43, "end"),
                new Place(edge, at + 51, "end"));
        if (model.pointers().orderBy().isPresent() && model.pointers().orderBy().getAsInt() == step.purchase()) {
            double x = left - 2;
            labels.room(new Box(x - 11, at + 8, x + 11, at + 30));
            balloons.put("E", x, at + 44, x + 10, at);
        }
    }
}
