package weekwright.web.parts;

import weekwright.build.Settings;
import weekwright.render.Formats;

/** What slots are called. */
public final class SlotWords {
    private SlotWords() {}

    /** {@code Fridays}, or {@code slots} where not every such day is one. */
    public static String several(Settings settings) {
        return settings.everyWeeks() == 1 ? Formats.weekdays(settings.weekday()) : "slots";
    }

    /** {@code Friday}, or {@code slot} where not every such day is one. */
    public static String one(Settings settings) {
        return settings.everyWeeks() == 1 ? Formats.weekday(settings.weekday()) : "slot";
    }
}
