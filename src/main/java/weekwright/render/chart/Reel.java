package weekwright.render.chart;

/** The steps of an episode as a strip of film with joined frames: what is done is filled, what is not stays open. */
public final class Reel {
    private static final double FRAME = 27;
    private static final double HEIGHT = 22;
    private static final double EDGE = 4;

    private Reel() {}

    /**
     * A strip with one frame a step.
     *
     * @param filled share of each step that is done, 0 to 1
     */
    public static String of(double... filled) {
        double width = FRAME * filled.length + 2;
        Svg svg = Svg.mark("reel", width, HEIGHT);
        svg.rect("reel-film", 1, 0.6, width - 2, HEIGHT - 1.2);
        for (double x = 4; x + 3 < width; x += FRAME / 4) {
            svg.rect("reel-hole", x, 1.9, 2.6, 1.6).rect("reel-hole", x, HEIGHT - 3.5, 2.6, 1.6);
        }
        for (int i = 0; i < filled.length; i++) {
            double x = 1 + FRAME * i;
            svg.rect("reel-frame", x + 1.6, EDGE + 1, FRAME - 3.2, HEIGHT - 2 * EDGE - 2);
            double share = Math.max(0, Math.min(1, filled[i]));
            if (share > 0) {
                svg.rect("reel-done", x + 1.6, EDGE + 1, Math.max(1.5, (FRAME - 3.2) * share), HEIGHT - 2 * EDGE - 2);
            }
        }
        return svg.done();
    }
}
