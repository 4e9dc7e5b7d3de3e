package weekwright.render.chart;

/**
 * The rungs of the funding ladder. Each rung is one purchase: solid as far as the money is there with nine chances in ten,
 * hatched as far as it may be, a peg at even chances; it is paid for when it reaches the right-hand post.
 */
public final class Ladder {
    private static final double WIDTH = 400;
    private static final double HEIGHT = 56;
    private static final double POST = 6;
    /** How far the posts go on above and below, seen where the sheet lets them: beside a name of several lines. */
    private static final double ON = 100;

    private static final double RUNG_TOP = 12;
    private static final double RUNG_FOOT = 44;
    /** What is more than paid for passes through the post no further than this share of the rung. */
    private static final double MOST = 1.06;

    private Ladder() {}

    /**
     * One rung between its two posts.
     *
     * @param need what must be there on the day, in minor units, 1 or more
     * @param p10 what is there with nine chances in ten
     * @param p50 at even chances
     * @param p90 with one chance in ten
     */
    public static String rung(long need, double p10, double p50, double p90) {
        Svg svg = Svg.mark("rung", WIDTH, HEIGHT);
        double inner = WIDTH * 0.88;
        svg.line("rung-rail", POST, RUNG_TOP, inner, RUNG_TOP).line("rung-rail", POST, RUNG_FOOT, inner, RUNG_FOOT);
        double sure = at(p10, need, inner);
        double maybe = at(p90, need, inner);
        if (sure > POST) {
            svg.rect("rung-sure", POST, RUNG_TOP, sure - POST, RUNG_FOOT - RUNG_TOP);
        }
        if (maybe > Math.max(POST, sure)) {
            svg.rect("rung-maybe", Math.max(POST, sure), RUNG_TOP, maybe - Math.max(POST, sure), RUNG_FOOT - RUNG_TOP);
        }
        posts(svg, inner);
        if (maybe > sure) {
            double even = at(p50, need, inner);
            svg.line("rung-even", even, 4, even, HEIGHT - 4).circle("peg", even, (RUNG_TOP + RUNG_FOOT) / 2, 5);
        }
        return svg.done();
    }

    /** A rung too far off to say. */
    public static String blank() {
        Svg svg = Svg.mark("rung", WIDTH, HEIGHT);
        double inner = WIDTH * 0.88;
        svg.line("rung-rail", POST, RUNG_TOP, inner, RUNG_TOP).line("rung-rail", POST, RUNG_FOOT, inner, RUNG_FOOT);
        return posts(svg, inner).done();
    }

    private static Svg posts(Svg svg, double inner) {
        double height = HEIGHT + 2 * ON;
        return svg.rect("rung-post", 0, -ON, POST, height).rect("rung-post", inner, -ON, POST, height);
    }

    private static double at(double amount, long need, double inner) {
        double share = Math.max(0, Math.min(MOST, amount / Math.max(1, need)));
        return POST + share * (inner - POST);
    }
}
