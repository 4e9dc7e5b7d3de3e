package weekwright.render.chart;

import java.util.List;
import weekwright.render.Chances;

/** What holds a landing, as one bar: each cause as wide as its share, its number over it and in the list beside. */
public final class CauseBar {
    private static final double LONG = 460;
    private static final double SHORT = 300;
    private static final double HEIGHT = 40;
    private static final String[] FILLS = {"solid", "hatch", "wash", "dots", "thin", "ink-hatch"};

    private CauseBar() {}

    /** One cause: its words and its share of the whole, 0 to 1. */
    public record Cause(String words, double share) {}

    /** The bar, long and short; the style sheet shows the one that fits. Causes stand in the order given, from 1. */
    public static String of(List<Cause> causes) {
        return draw(causes, "long", LONG) + draw(causes, "short", SHORT);
    }

    private static String draw(List<Cause> causes, String kind, double length) {
        StringBuilder said = new StringBuilder();
        for (Cause cause : causes) {
            said.append(said.isEmpty() ? "" : ", ")
                    .append(cause.words())
                    .append(" ")
                    .append(Chances.percent(cause.share()));
        }
        Svg svg = new Svg("causes-" + kind, "cause-bar " + kind, length, HEIGHT, "Held by: " + said, "");
        double x = 1;
        for (int i = 0; i < causes.size(); i++) {
            double width = (length - 2) * Math.max(0, causes.get(i).share());
            svg.rect("cause " + FILLS[i % FILLS.length], x, 16, width, HEIGHT - 17);
            if (width > 9) {
                svg.text(Styles.STRONG.kind(), x + Math.min(width / 2, 10), 12, "middle", String.valueOf(i + 1));
            }
            x += width;
        }
        svg.rect("cause-outline", 1, 16, length - 2, HEIGHT - 17);
        return svg.done();
    }
}
