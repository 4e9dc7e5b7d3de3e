package weekwright.web.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import weekwright.engine.explain.Cause;
import weekwright.forecast.MovedStore;
import weekwright.render.Formats;

/** Why dates moved, in words. */
public final class CauseWords {
    private CauseWords() {}

    /** A cause. */
    public static String cause(Cause cause) {
        return switch (cause) {
            case WORK -> "days passed and work logged";
            case ESTIMATES -> "estimates";
            case PLAN -> "the plan";
            case MATERIALS -> "materials and prices";
            case MONEY -> "supporters and cash";
        };
    }

    /** {@code +9 days} after each cause that moved it by a day or more; empty where none did. */
    public static String because(long[] days) {
        return Formats.sentence(String.join(", ", parts(days)));
    }

    /** {@code Since 18 November it moved +8 days: the plan +9 days, estimates −1 day.} */
    public static String since(MovedStore.Kept kept, Formats formats) {
        String since = "Since the forecast of " + formats.dateLong(kept.since()) + " ";
        List<String> parts = parts(kept.days());
        if (parts.isEmpty()) {
            return since + "it has not moved.";
        }
        boolean still = kept.sum() == 0;
        return since + (still ? "it has not moved in all" : "it moved " + Formats.daysMoved(kept.sum())) + ": "
                + String.join(", ", parts) + ".";
    }

    private static List<String> parts(long[] days) {
        return new ArrayList<>(IntStream.range(0, days.length)
                .filter(k -> days[k] != 0)
                .mapToObj(k -> cause(Cause.values()[k]) + " " + Formats.daysMoved(days[k]))
                .toList());
    }
}
