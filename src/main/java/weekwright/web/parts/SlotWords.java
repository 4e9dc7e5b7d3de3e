package weekwright.web.parts;

import weekwright.build.Settings;
import weekwright.render.Formats;

/** What slots are called. */
public final class SlotWords {
    /** Of a slot for which nothing is planned. */
    public static final String COULD_FILL = "The story bank or a standby could fill it, where there is one.";
    /** Before the first forecast, of slots. */
    public static final String NOT_SAID = "There is no forecast yet, so nothing is said about how safe they are.";

    private SlotWords() {}

    /** {@code Fridays}, or {@code slots} where not every such day is one. */
    public static String several(Settings settings) {
        return settings.everyWeeks() == 1 ? Formats.weekdays(settings.weekday()) : "slots";
    }

    /** {@code one Friday}, {@code 12 Fridays}, {@code no slots}. */
    public static String counted(long number, Settings settings) {
        return Formats.counted(number, one(settings), several(settings));
    }

    /** {@code Friday}, or {@code slot} where not every such day is one. */
    public static String one(Settings settings) {
        return settings.everyWeeks() == 1 ? Formats.weekday(settings.weekday()) : "slot";
    }
}
