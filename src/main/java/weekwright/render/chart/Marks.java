package weekwright.render.chart;

import weekwright.render.chart.AheadPicture.Safety;
import weekwright.render.chart.AheadPicture.Slot;

/** Single marks that several drawings share. */
final class Marks {
    private Marks() {}

    /** An episode's frame; it fills from the foot as far as it is shot. A past one is a grey block. */
    static void frame(Svg svg, Slot slot, double x, double y, double width, double height) {
        svg.rect("frame " + slot.safety().kind(), x, y, width, height);
        if (slot.safety() != Safety.OUT && slot.safety() != Safety.OPEN && slot.filled() > 0) {
            double inside = height - 5;
            double filled = Math.max(1, inside * Math.min(1, slot.filled()));
            svg.rect("frame-fill", x + 2.5, y + 2.5 + inside - filled, width - 5, filled);
        }
    }

    /** A dimension line with oblique ends, from x to x. */
    static void dimension(Svg svg, double from, double to, double y) {
        svg.line("dimension", from, y, to, y);
        for (double end : new double[] {from, to}) {
            svg.line("dimension", end, y - 6, end, y + 6);
            svg.line("dimension", end - 4, y + 4, end + 4, y - 4);
        }
    }

    /** A dimension line running down, with oblique ends, from y to y. */
    static void dimensionDown(Svg svg, double from, double to, double x) {
        svg.line("dimension", x, from, x, to);
        for (double end : new double[] {from, to}) {
            svg.line("dimension", x - 6, end, x + 6, end);
            svg.line("dimension", x - 4, end + 4, x + 4, end - 4);
        }
    }

    /** What is short, lying: a level line with end bars. */
    static void gapAcross(Svg svg, double from, double to, double y) {
        svg.line("gap", from, y, to, y);
        svg.line("gap", from, y - 6, from, y + 6);
        svg.line("gap", to, y - 6, to, y + 6);
    }

    /** What is short: an upright with end bars. */
    static void gap(Svg svg, double x, double upper, double lower) {
        svg.line("gap", x, upper, x, lower);
        svg.line("gap", x - 6, upper, x + 6, upper);
        svg.line("gap", x - 6, lower, x + 6, lower);
    }

    /** A break line (ISO 128): the part goes on past this edge. */
    static void breakLine(Svg svg, double x, double top, double foot) {
        double middle = (top + foot) / 2;
        svg.polyline(
                "break-line",
                x,
                top - 4,
                x,
                middle - 5,
                x + 4,
                middle - 2,
                x - 4,
                middle + 2,
                x,
                middle + 5,
                x,
                foot + 4);
    }

    /** The same across a timber that stands on end. */
    static void breakLineAcross(Svg svg, double y, double left, double right) {
        double middle = (left + right) / 2;
        svg.polyline(
                "break-line",
                left - 4,
                y,
                middle - 5,
                y,
                middle - 2,
                y + 4,
                middle + 2,
                y - 4,
                middle + 5,
                y,
                right + 4,
                y);
    }
}
