package weekwright.web.parts;

import java.util.ArrayList;
import java.util.List;
import weekwright.forecast.Forecast;
import weekwright.forecast.HeldWords;
import weekwright.forecast.Names;
import weekwright.render.Chances;
import weekwright.render.Formats;
import weekwright.render.chart.CauseBar;

/** What holds a landing, in words. */
public final class HeldBy {
    private static final int MOST = 5;

    /** From this share on nothing else is worth a word. */
    private static final double ALL = 0.95;

    private HeldBy() {}

    /** The largest causes and the rest as one; shares sum to 1. */
    public static List<CauseBar.Cause> causes(List<Forecast.HeldBy> held, Names names) {
        List<CauseBar.Cause> causes = new ArrayList<>();
        double rest = 0;
        for (Forecast.HeldBy one : held) {
            if (causes.size() < MOST) {
                causes.add(new CauseBar.Cause(HeldWords.of(one, names), one.share()));
            } else {
                rest += one.share();
            }
        }
        if (rest > 0) {
            causes.add(new CauseBar.Cause("other causes", rest));
        }
        return causes;
    }

    /** {@code Held mostly by Ilse’s hours, four parts in ten, then the oak.} @param others in words, what comes after it */
    public static String sentence(Forecast.HeldBy first, List<String> others, Names names) {
        if (others.isEmpty() && first.share() >= ALL) {
            return "Held by " + HeldWords.of(first, names) + ".";
        }
        return "Held mostly by " + HeldWords.of(first, names) + ", " + Chances.parts(first.share())
                + (others.isEmpty() ? "" : ", then " + Formats.list(others)) + ".";
    }
}
