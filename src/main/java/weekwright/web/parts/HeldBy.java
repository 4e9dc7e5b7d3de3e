package weekwright.web.parts;

import java.util.ArrayList;
import java.util.List;
import weekwright.forecast.Forecast;
import weekwright.forecast.HeldWords;
import weekwright.forecast.Names;
import weekwright.render.chart.CauseBar;

/** What holds a landing, in words. */
public final class HeldBy {
    private static final int MOST = 5;

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
}
