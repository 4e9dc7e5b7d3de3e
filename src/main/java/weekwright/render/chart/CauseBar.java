package weekwright.render.chart;

import java.util.List;
import weekwright.render.Chances;

/** What holds a landing, as one bar: each cause as wide as its share, its number over it and in the list beside. */
public final class CauseBar {
    private static final double WIDTH = 320;
    private static final double HEIGHT = 36;
    private static final String[] FILLS = {"solid", "hatch", "wash", "dots", "thin", "ink-hatch"};

    private CauseBar() {}

    /** One cause: its words and its share of the whole, 0 to 1. */
    public record Cause(String words, double share) {}

    /** The bar; causes are drawn in the order given, numbered from 1. */
    public static String of(List<Cause> causes) {
        StringBuilder said = new StringBuilder();
        for (Cause cause : causes) {
            said.append(said.isEmpty() ? "" : ", ")
                    .append(cause.words())
                    .append(" ")
                    .append(Chances.percent(cause.share()));
        }
        Svg svg = new Svg("causes", "cause-bar", WIDTH, HEIGHT, "Held by: " + said, "");
        double x = 1;
        for (int i = 0; i < causes.size(); i++) {
            double width = (WIDTH - 2) * Math.max(0, causes.get(i).share());
            svg.rect("cause " + FILLS[i % FILLS.length], x, 15, width, HEIGHT - 16);
            if (width > 9) {
                svg.text(Styles.TICK_STRONG.kind(), x + Math.min(width / 2, 10), 11, "middle", String.valueOf(i + 1));
            }
            x += width;
        }
        svg.rect("cause-outline", 1, 15, WIDTH - 2, HEIGHT - 16);
        return svg.done();
    }
}
