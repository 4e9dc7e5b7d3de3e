package weekwright.web.parts;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import weekwright.forecast.Forecast;
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
                causes.add(new CauseBar.Cause(words(one, names), one.share()));
            } else {
                rest += one.share();
            }
        }
        if (rest > 0) {
            causes.add(new CauseBar.Cause("other causes", rest));
        }
        return causes;
    }

    /** One cause, in words that follow "held by". */
    public static String words(Forecast.HeldBy held, Names names) {
        return switch (held.kind()) {
            case "person" -> names.person(held.what()) + "’s hours";
            case "camera" -> "somebody for the camera";
            case "company" -> "a second person";
            case "equipment" -> "the " + names.equipment(held.what());
            case "material" -> names.material(held.what());
            case "funds" -> held.what().isEmpty() ? "money" : "money for " + names.material(held.what());
            case "weather" -> "weather" + month(held.what());
            case "season" -> "the season";
            case "booking" -> "a booked date";
            case "wait" -> "waiting: " + names.task(held.what());
            default -> held.kind();
        };
    }

    private static String month(String what) {
        return what.matches("[0-9]{4}-[0-9]{2}")
                ? " in " + Month.of(Integer.parseInt(what.substring(5))).getDisplayName(TextStyle.FULL, Locale.ENGLISH)
                : "";
    }
}
