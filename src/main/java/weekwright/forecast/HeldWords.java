package weekwright.forecast;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.Locale;

/** What a landing waits for, in words that follow "held by"; pages and command line say the same. */
public final class HeldWords {
    private HeldWords() {}

    public static String of(Forecast.HeldBy held, Names names) {
        String what = held.what();
        return switch (held.kind()) {
            case "person" -> what.isEmpty() ? "the crew’s hours" : names.person(what) + "’s hours";
            case "camera" -> "somebody for the camera";
            case "company" -> "a second person";
            case "equipment" -> "the " + names.equipment(what);
            case "material" -> names.material(what);
            case "funds" -> what.isEmpty() ? "money" : "money for " + names.material(what);
            case "weather" -> "the weather" + month(what);
            case "season" -> "the season";
            case "booking" -> "a booked day";
            case "wait" -> what.isEmpty() ? "waits" : "waiting: " + names.task(what);
            default -> held.kind();
        };
    }

    /** Both answers to the question of money: the date with what there is, and what it would be with enough. */
    public static String money(String held, String free) {
        return "With the money as it is: " + held + ". " + enoughMoney(free);
    }

    /** The date if money held nothing up. */
    public static String enoughMoney(String free) {
        return "If money were there: " + free + ".";
    }

    /** The month as the engine names it, 1 to 12. */
    private static String month(String what) {
        return what.matches("[0-9]{1,2}")
                ? " in " + Month.of(Integer.parseInt(what)).getDisplayName(TextStyle.FULL, Locale.ENGLISH)
                : "";
    }
}
