package weekwright.web.parts;

import java.util.Locale;
import java.util.Optional;
import weekwright.forecast.Lessons;
import weekwright.render.Formats;

/** How long editing takes, in words. */
public final class EditingWords {
    private static final int QUARTER = 15;

    private EditingWords() {}

    public static String of(Lessons.Editing editing) {
        Lessons.Ratio ratio = editing.ratio();
        if (ratio.finished() == 0) {
            return "No episode with hours of editing is ready yet. Until then editing is taken to last what is written"
                    + " down for it.";
        }
        String each = perFinished(editing).map(words -> ", " + words).orElse("");
        return "Editing takes " + times(ratio.p50()) + " times its estimate, four chances in five between "
                + times(ratio.p10()) + " and " + times(ratio.p90()) + each + ", from "
                + Formats.counted(ratio.finished(), "episode", "episodes") + ".";
    }

    /** "¾ hour for each finished minute"; empty while no episode with hours of editing has a length. */
    public static Optional<String> perFinished(Lessons.Editing editing) {
        return editing.perFinished() == 0
                ? Optional.empty()
                : Optional.of(Formats.hoursLong(Math.round(editing.perFinished() / QUARTER) * QUARTER)
                        + " for each finished minute");
    }

    private static String times(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
