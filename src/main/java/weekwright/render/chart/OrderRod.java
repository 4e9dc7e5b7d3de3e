package weekwright.render.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import weekwright.render.chart.Labels.Place;

/**
 * The order of work of a stage as a marked rod, such as a joiner keeps: each task is a peg on the rod, from the first at the
 * top; a bow at its side runs from what is waited for down to what waits. The longest way through is drawn heavy. Wide it is
 * 1208 pixels, medium 688; a phone has the table.
 */
public final class OrderRod {
    private static final double PITCH = 30;
    private static final double TOP = 22;
    private static final double PEG = 6;
    private static final int BOW_POINTS = 24;

    /** How far a task is. */
    public enum State {
        DONE,
        IN_HAND,
        TO_COME
    }

    /**
     * A task.
     *
     * @param remark a word or two after its title, where there is room
     * @param pause a wait, which is drawn as a gap in the rod
     */
    public record Peg(String title, String remark, State state, boolean pause, boolean longest) {}

    /**
     * A link between two pegs, the upper first.
     *
     * @param label how long the wait is; empty for none
     * @param part only a share of the upper is waited for
     */
    public record Bow(int from, int to, String label, boolean part, boolean longest) {}

    private OrderRod() {}

    /** Both drawings; the style sheet shows the one that fits. */
    public static String of(String title, List<Peg> pegs, List<Bow> bows) {
        return draw("order-rod wide", "rod-wide", 1208, title, pegs, bows)
                + draw("order-rod medium", "rod-medium", 688, title, pegs, bows);
    }

    private static String draw(String kind, String id, double width, String title, List<Peg> pegs, List<Bow> bows) {
        double height = 2 * TOP + PITCH * Math.max(0, pegs.size() - 1);
        double rod = Math.round(width * 0.34);
        Svg svg = new Svg(id, kind, width, height, title, "");
        svg.group("bows");
        int most = bows.stream().mapToInt(bow -> bow.to() - bow.from()).max().orElse(1);
        List<Bow> heavyLast = new ArrayList<>(bows);
        heavyLast.sort(Comparator.comparing(Bow::longest));
        Labels labels = new Labels(new Box(0, 0, width, height));
        for (Bow bow : heavyLast) {
            bow(svg, bow, rod, reach(bow, most, rod));
        }
        svg.end();
        rod(svg, rod, pegs);
        svg.group("written");
        for (Bow bow : heavyLast) {
            if (!bow.label().isEmpty()) {
                double at = rod - PEG - reach(bow, most, rod);
                double middle = (y(bow.from()) + y(bow.to())) / 2 + 4;
                labels.may(
                        Styles.TICK,
                        bow.label(),
                        new Place(at + 5, middle, "start"),
                        new Place(at - 5, middle, "end"),
                        new Place(at + 5, middle + 13, "start"),
                        new Place(at + 5, middle - 13, "start"));
            }
        }
        labels.draw(svg);
        for (int i = 0; i < pegs.size(); i++) {
            letters(svg, pegs.get(i), rod + 20, y(i) + 4.5, width - 4);
        }
        return svg.end().done();
    }

    private static double y(int place) {
        return TOP + PITCH * place;
    }

    /** How far a bow stands out: the more pegs it passes, the farther. */
    private static double reach(Bow bow, int most, double rod) {
        double share = Math.pow((bow.to() - bow.from()) / (double) most, 0.8);
        return 16 + (rod - PEG - 40) * share * Math.min(1, most / 8.0);
    }

    private static void bow(Svg svg, Bow bow, double rod, double reach) {
        double top = y(bow.from());
        double foot = y(bow.to());
        double[] points = new double[2 * (BOW_POINTS + 1)];
        for (int i = 0; i <= BOW_POINTS; i++) {
            double angle = Math.PI * i / BOW_POINTS;
            points[2 * i] = rod - PEG - reach * Math.sin(angle);
            points[2 * i + 1] = (top + foot) / 2 - (foot - top) / 2 * Math.cos(angle);
        }
        svg.polyline("bow" + (bow.part() ? " part" : "") + (bow.longest() ? " longest" : ""), points);
        svg.polygon(
                "bow-foot" + (bow.longest() ? " longest" : ""),
                rod - PEG + 1,
                foot,
                rod - PEG - 8,
                foot - 4.5,
                rod - PEG - 8,
                foot + 1.5);
    }

    private static void rod(Svg svg, double rod, List<Peg> pegs) {
        for (int i = 0; i + 1 < pegs.size(); i++) {
            boolean pause = pegs.get(i).pause();
            svg.line("rod-line" + (pause ? " pause" : ""), rod - 2.5, y(i), rod - 2.5, y(i + 1));
            svg.line("rod-line" + (pause ? " pause" : ""), rod + 2.5, y(i), rod + 2.5, y(i + 1));
        }
        for (int i = 0; i < pegs.size(); i++) {
            String kind = "rod-peg "
                    + pegs.get(i).state().name().toLowerCase(Locale.ROOT).replace('_', '-');
            svg.circle(kind + (pegs.get(i).longest() ? " longest" : ""), rod, y(i), PEG);
        }
    }

    private static void letters(Svg svg, Peg peg, double x, double y, double right) {
        Labels.Style style = peg.longest() ? Styles.STRONG : Styles.TEXT;
        String title = cut(style, peg.title(), right - x);
        svg.text(style.kind(), x, y, "start", title);
        double after = x + style.face().width(title, style.size()) + 10;
        if (!peg.remark().isEmpty() && right - after > 60) {
            svg.text(Styles.TICK_QUIET.kind(), after, y, "start", cut(Styles.TICK_QUIET, peg.remark(), right - after));
        }
    }

    private static String cut(Labels.Style style, String text, double room) {
        if (style.face().width(text, style.size()) <= room) {
            return text;
        }
        int end = text.length();
        while (end > 1 && style.face().width(text.substring(0, end) + "…", style.size()) > room) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end).strip() + "…";
    }
}
