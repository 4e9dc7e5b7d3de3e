package weekwright.web.parts;

import java.util.Locale;
import weekwright.engine.Score;
import weekwright.forecast.TrackRecord;
import weekwright.render.Formats;

/** What a track record says, in sentences that page and command line share. */
public final class RecordWords {
    /** What is compared, each against what happened. */
    public static final String OURS = "The forecast with its ranges";

    public static final String PLAN = "The plan as one date";
    public static final String PACE = "The last eight weeks’ pace carried on";
    public static final String LIKELY = "Likely hours over stated hours";
    /** What the comparison is called. */
    public static final String OFF = "How far off, in days";

    private RecordWords() {}

    /** Whether the ranges have been too narrow. */
    public static String verdict(TrackRecord record) {
        int n = record.decided().size();
        if (n == 0) {
            return record.fridays().isEmpty()
                    ? "Nothing to look back on yet: a forecast of a past Friday needs work that had begun on it."
                    : "No range of a past Friday has run out yet, so none can be judged.";
        }
        String held = record.count(TrackRecord.Fell.WITHIN) + " of " + n
                + (n == 1 ? " range that has run out held, " : " ranges that have run out held, ")
                + percent(record.coverage()) + "; eight in ten should. ";
        return held
                + switch (record.verdict()) {
                    case TOO_NARROW -> "The ranges have been too narrow: take them as less certain than they look.";
                    case TOO_WIDE -> "The ranges have been wider than they need be.";
                    case TOO_FEW ->
                        "They are of too few stages (" + Formats.number(record.stages())
                                + ") to say whether the ranges have been too narrow.";
                    default -> "That is no sign that the ranges have been too narrow.";
                };
    }

    /** On which side those lay that did not hold. */
    public static String sides(TrackRecord record) {
        return "Landed before the range " + record.count(TrackRecord.Fell.EARLIER) + ", after it "
                + record.count(TrackRecord.Fell.LATER)
                + " (what is still open after the last day of its range among them).";
    }

    /** How much chance is in it. */
    public static String tolerance(TrackRecord record) {
        Score.Span span = record.expected();
        return "Were the ranges right and each its own case, between " + span.from() + " and " + span.to() + " of "
                + record.decided().size()
                + " would hold, nineteen times in twenty. Forecasts of one stage a week apart are much alike: these"
                + " are of "
                + Formats.counted(record.stages(), "stage", "stages")
                + ", and the sentence above counts each stage once.";
    }

    /** What was known of what. */
    public static String basis(TrackRecord record) {
        return record.estimatesFrom()
                .map(day -> "Tasks, estimates, links, crew and prices are those of the change log, which begins on "
                        + Formats.dayMonthLong(day) + " " + day.getYear()
                        + "; before that day they count as first recorded. Settings stand as they do now.")
                .orElse("Plain files have no history: tasks, estimates, links, crew and prices are taken as they stand"
                        + " now, which knows more than was known then. Only what carries a date is taken as of"
                        + " each Friday.");
    }

    /** A loss in days. */
    public static String days(double loss) {
        return String.format(Locale.ROOT, "%.1f", loss);
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " in a hundred";
    }
}
