package weekwright.cli;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;
import weekwright.forecast.Forecast;
import weekwright.forecast.Names;

/** What a landing waits for, in words that follow "held by". */
final class HeldWords {
    private HeldWords() {}

    static String of(Forecast.HeldBy held, Names names) {
        String what = held.what();
        return switch (held.kind()) {
            case "person" -> what.isEmpty() ? "the crew's hours" : names.person(what) + "'s hours";
            case "camera" -> "the camera" + (what.isEmpty() ? "" : " (" + names.person(what) + ")");
            case "company" -> "nobody else being there";
            case "equipment" -> names.equipment(what);
            case "material" -> names.material(what);
            case "funds" -> "money" + (what.isEmpty() ? "" : " for " + names.material(what));
            case "weather" -> "the weather" + month(what);
            case "season" -> "the season";
            case "booking" -> "a booked day";
            case "wait" -> what.isEmpty() ? "waits" : names.task(what);
            default -> held.kind();
        };
    }

    /** The month as the engine names it, if it is a number. */
    private static String month(String what) {
        if (!what.matches("[0-9]{1,2}")) {
            return "";
        }
        return " in " + Month.of(Integer.parseInt(what)).getDisplayName(TextStyle.FULL, Locale.ENGLISH);
    }
}
