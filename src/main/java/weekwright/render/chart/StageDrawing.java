package weekwright.render.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import weekwright.render.chart.AheadPicture.Notch;
import weekwright.render.chart.AheadPicture.Range;
import weekwright.render.chart.AheadPicture.Stage;

/** One stage drawn as a timber: past part with grain, uncut part, cuts, notches, break lines, peg. */
final class StageDrawing {
    /** Notches closer than this, in pixels, would run into each other. */
    private static final double NOTCH_APART = 9;

    private final AheadSheet sheet;
    private final Stage stage;
    private final DoubleUnaryOperator x;
    private final double top;
    private final double depth;
    private final Timber timber;

    /**
     * Its timber as a place to be touched, at least 24 pixels long: first day, last day of it on the sheet; empty where
     * nothing of it is.
     */
    Optional<double[]> reach() {
        double from = Math.max(0, timber.begins()[0]);
        double to = Math.min(sheet.days(), timber.ends()[2]);
        return to <= from ? Optional.empty() : Optional.of(new double[] {from, to});
    }

    /** The landing as it was said before, as corners on the sheet and the place of its peg; empty where off the sheet. */
    Optional<double[][]> ghost(Optional<Range> before) {
        if (before.isEmpty() || stage.done().isPresent()) {
            return Optional.empty();
        }
        Timber then = new Timber(timber.begins(), days(before.get()));
        double[][] corners = then.hasEndCut() ? then.endCut(sheet.days()) : new double[0][];
        return corners.length < 3 || then.ends()[0] >= sheet.days() || then.ends()[2] <= 0
                ? Optional.empty()
                : Optional.of(corners);
    }

    /** Where the even chance lay before; empty where off the sheet. */
    Optional<Double> ghostPeg(Optional<Range> before) {
        return stage.done().isPresent()
                ? Optional.empty()
                : before.flatMap(Range::p50).map(sheet::day).filter(day -> day >= 0 && day <= sheet.days());
    }

    void drawGhost(Svg svg, Optional<Range> before) {
        ghost(before).ifPresent(corners -> svg.polygon("ghost", flat(corners)));
        ghostPeg(before).ifPresent(day -> svg.circle("ghost-peg", x(day), top + depth / 2, 4.6));
    }

    StageDrawing(AheadSheet sheet, Stage stage, DoubleUnaryOperator x, double top, double depth) {
        this.sheet = sheet;
        this.stage = stage;
        this.x = x;
        this.top = top;
        this.depth = depth;
        double[] begins = stage.began()
                .map(d -> same(sheet.day(d)))
                .orElseGet(() -> stage.start()
                        .map(this::days)
                        .orElseGet(() -> same(stage.done().map(sheet::day).orElse(sheet.today()))));
        double[] ends = stage.done()
                .map(d -> same(Math.max(sheet.day(d), begins[0] + 1)))
                .orElseGet(() -> stage.landing()
                        .map(this::days)
                        .orElseGet(() -> days(new Range(Optional.empty(), Optional.empty(), Optional.empty()))));
        this.timber = new Timber(begins, ends);
    }

    Stage stage() {
        return stage;
    }

    Timber timber() {
        return timber;
    }

    double top() {
        return top;
    }

    double foot() {
        return top + depth;
    }

    double x(double day) {
        return x.applyAsDouble(day);
    }

    AheadSheet sheet() {
        return sheet;
    }

    /** The even chance, where it lies on the sheet and the stage is not done. */
    Optional<Double> peg() {
        return stage.done().isEmpty() && timber.ends()[1] >= 0 && timber.ends()[1] <= sheet.days()
                ? Optional.of(timber.ends()[1])
                : Optional.empty();
    }

    /** The notches that are drawn: inside the sheet, at wood, not upon each other or the peg. */
    List<Notch> notches() {
        List<Notch> kept = new ArrayList<>();
        for (Notch notch : stage.notches()) {
            double at = sheet.day(notch.day());
            boolean onWood = at > 0 && at < sheet.days() && at <= timber.ends()[2] && timber.lowerEdge(at) >= 1;
            boolean besidePeg = peg().isEmpty() || Math.abs(x(peg().get()) - x(at)) >= NOTCH_APART;
            boolean apart = kept.stream().allMatch(k -> Math.abs(x(sheet.day(k.day())) - x(at)) >= NOTCH_APART);
            if (onWood && besidePeg && apart) {
                kept.add(notch);
            }
        }
        return kept;
    }

    void draw(Svg svg) {
        int days = sheet.days();
        svg.polygon("timber", flat(timber.corners(days)));
        double worked = stage.done().isPresent() ? timber.ends()[2] : sheet.today();
        if (stage.began().isPresent() || stage.done().isPresent()) {
            past(svg, Math.max(0, timber.begins()[0]), Math.min(Math.min(days, worked), timber.ends()[2]));
        }
        if (timber.hasStartCut() && timber.begins()[0] < days) {
            cut(svg, timber.startCut(days));
        }
        if (timber.hasEndCut() && timber.ends()[0] < days) {
            cut(svg, timber.endCut(days));
        }
        svg.polygon("timber-line", flat(timber.corners(days)));
        for (Notch notch : notches()) {
            double at = x(sheet.day(notch.day()));
            svg.polygon("notch", at - 4, foot(), at, foot() - 8, at + 4, foot());
        }
        if (timber.begins()[0] < 0) {
            Marks.breakLine(svg, x(0), top, foot());
        }
        if (timber.ends()[2] > days) {
            Marks.breakLine(svg, x(days), top, foot());
        }
        peg().ifPresent(day -> svg.circle("peg", x(day), top + depth / 2, 4.6));
    }

    private void past(Svg svg, double from, double to) {
        if (to <= from) {
            return;
        }
        svg.rect("timber-past", x(from), top, x(to) - x(from), depth);
        double length = x(to) - x(from);
        if (length > 14) {
            svg.line("grain", x(from) + 4, top + depth * .3, x(from) + 4 + (length - 8) * .86, top + depth * .3);
            svg.line("grain", x(from) + 4 + (length - 8) * .18, top + depth * .66, x(to) - 4, top + depth * .66);
        }
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
            points[2 * i] = x(corners[i][0]);
            points[2 * i + 1] = top + corners[i][1] * depth;
        }
        return points;
    }

    private double[] days(Range range) {
        double p10 = sheet.day(range.p10());
        double p50 = Math.max(p10, sheet.day(range.p50()));
        return new double[] {p10, p50, Math.max(p50, sheet.day(range.p90()))};
    }

    private static double[] same(double day) {
        return new double[] {day, day, day};
    }
}
