package weekwright.render.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * The shape of a stage along its days: its depth at a day is the chance that it is in hand then. The upper edge runs
 * from the earliest start to the earliest landing, the lower one from the latest start to the latest landing, both cuts
 * pass half depth at the even chance, so that a stage's end and the next one's start fit like timbers.
 *
 * @param begins where it starts, 10, 50 and 90 %; three equal days for a stage that has begun
 * @param ends where it lands, 10, 50 and 90 %
 */
record Timber(double[] begins, double[] ends) {
    private static final double HALF = 0.5;

    /** The corners as day and depth (0 upper edge, 1 lower edge), cut off at the sheet's edges, clockwise. */
    double[][] corners(double days) {
        return clip(
                new double[][] {
                    {begins[0], 0}, {ends[0], 0}, {ends[1], HALF}, {ends[2], 1}, {begins[2], 1}, {begins[1], HALF}
                },
                days);
    }

    /** The cut at the landing alone: from where the upper edge starts down to the point. */
    double[][] endCut(double days) {
        double from = Math.max(ends[0], lowerLeft());
        return clip(new double[][] {{ends[0], 0}, {ends[1], HALF}, {ends[2], 1}, {from, 1}}, days);
    }

    /** The cut at the start alone. */
    double[][] startCut(double days) {
        return clip(
                new double[][] {{begins[0], 0}, {Math.min(begins[2], ends[0]), 0}, {begins[2], 1}, {begins[1], HALF}},
                days);
    }

    boolean hasStartCut() {
        return begins[2] > begins[0];
    }

    boolean hasEndCut() {
        return ends[2] > ends[0];
    }

    /** The upper edge of the wood at a day, 0 to 1; above 1 there is none. */
    double upperEdge(double day) {
        if (day <= ends[0]) {
            return 0;
        }
        if (day <= ends[1]) {
            return HALF * share(day, ends[0], ends[1]);
        }
        return day <= ends[2] ? HALF + HALF * share(day, ends[1], ends[2]) : 2;
    }

    /** The lower edge of the wood at a day, 0 to 1; below 0 there is none. */
    double lowerEdge(double day) {
        if (day >= begins[2]) {
            return 1;
        }
        if (day >= begins[1]) {
            return HALF + HALF * share(day, begins[1], begins[2]);
        }
        return day >= begins[0] ? HALF * share(day, begins[0], begins[1]) : -1;
    }

    private double lowerLeft() {
        return Math.min(begins[2], ends[2]);
    }

    private static double share(double day, double from, double to) {
        return to == from ? 1 : (day - from) / (to - from);
    }

    /** Cuts a shape off at the left and the right edge of the sheet (Sutherland and Hodgman 1974). */
    private static double[][] clip(double[][] corners, double days) {
        return clip(clip(corners, 0, true), days, false);
    }

    private static double[][] clip(double[][] corners, double edge, boolean keepsAbove) {
        List<double[]> kept = new ArrayList<>();
        for (int i = 0; i < corners.length; i++) {
            double[] here = corners[i];
            double[] before = corners[(i + corners.length - 1) % corners.length];
            boolean hereIn = keepsAbove ? here[0] >= edge : here[0] <= edge;
            boolean beforeIn = keepsAbove ? before[0] >= edge : before[0] <= edge;
            if (hereIn != beforeIn) {
                double share = (edge - before[0]) / (here[0] - before[0]);
                kept.add(new double[] {edge, before[1] + share * (here[1] - before[1])});
            }
            if (hereIn) {
                kept.add(here);
            }
        }
        return kept.toArray(new double[0][]);
    }
}
