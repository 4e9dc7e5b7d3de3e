package weekwright.render.chart;

/** Estimate against hours logged: the estimate an outline, logged solid, over the estimate hatched, left dotted to a stop. */
public final class Tally {
    private static final double WIDTH = 200;
    private static final double HEIGHT = 18;

    private Tally() {}

    /**
     * One task's tally; all of a table share the scale.
     *
     * @param estimate minutes estimated
     * @param logged minutes logged
     * @param left minutes left, as the crew or the forecast sees it; 0 for a task done
     * @param most the largest of estimate and logged plus left in the table, in minutes
     */
    public static String of(long estimate, long logged, long left, long most) {
        double scale = (WIDTH - 6) / Math.max(1.0, most);
        Svg svg = Svg.mark("tally", WIDTH, HEIGHT);
        double stop = estimate * scale;
        double worked = logged * scale;
        if (logged > 0) {
            svg.rect("tally-logged", 1, 3, Math.min(worked, stop), HEIGHT - 6);
        }
        if (logged > estimate) {
            svg.rect("tally-over", 1 + stop, 3, worked - stop, HEIGHT - 6);
        }
        if (estimate > 0) {
            svg.rect("tally-estimate", 1, 2, stop, HEIGHT - 4);
        }
        if (left > 0) {
            double end = 1 + worked + left * scale;
            svg.line("tally-left", 1 + worked + 2, HEIGHT / 2, end, HEIGHT / 2);
            svg.line("tally-stop", end, 2, end, HEIGHT - 2);
        }
        return svg.done();
    }
}
