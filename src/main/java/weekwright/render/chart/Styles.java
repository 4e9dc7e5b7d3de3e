package weekwright.render.chart;

import weekwright.render.chart.Labels.Style;

/** The letters of the drawings: class of the style sheet, face and size belong together. Never under 12 pixels. */
final class Styles {
    /** Names of stages. */
    static final Style NAME = new Style("letters name", Lettering.HEAD, 15);
    /** The even chance of a landing. */
    static final Style LANDING = new Style("letters landing", Lettering.BOLD, 14.5);

    static final Style TEXT = new Style("letters", Lettering.TEXT, 13);
    static final Style STRONG = new Style("letters strong", Lettering.BOLD, 13);
    static final Style SHORT = new Style("letters strong short", Lettering.BOLD, 13);
    static final Style QUIET = new Style("letters quiet", Lettering.TEXT, 13);
    static final Style TICK = new Style("letters tick", Lettering.TEXT, 12);
    static final Style TICK_QUIET = new Style("letters tick quiet", Lettering.TEXT, 12);
    static final Style TICK_STRONG = new Style("letters tick strong", Lettering.BOLD, 12);
    static final Style TICK_SHORT = new Style("letters tick strong short", Lettering.BOLD, 12);
    static final Style MONTH = new Style("letters name", Lettering.HEAD, 15);

    private Styles() {}
}
