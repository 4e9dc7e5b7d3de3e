package weekwright.web.ahead;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import weekwright.engine.explain.Cause;
import weekwright.engine.explain.WhatMoved;
import weekwright.forecast.Moved;
import weekwright.render.Formats;

/** Why the dates moved, in words. */
final class MovedWords {
    private MovedWords() {}

    static String cause(Cause cause) {
        return switch (cause) {
            case WORK -> "days passed and work logged";
            case ESTIMATES -> "estimates";
            case PLAN -> "the plan";
            case MATERIALS -> "materials and prices";
            case MONEY -> "supporters and cash";
        };
    }

    /** {@code +9 days days passed and work logged, −1 day supporters and cash}; empty where no cause moved it by a day. */
    static String because(WhatMoved.Stage stage) {
        long[] days = Moved.wholeDays(stage);
        List<String> parts = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            if (days[cause.ordinal()] != 0) {
                parts.add(cause(cause) + " " + Formats.daysMoved(days[cause.ordinal()]));
            }
        }
        return Formats.sentence(String.join(", ", parts));
    }

    /** The changes themselves, cause by cause. */
    static List<AheadPage.Facts> facts(Moved moved, Formats formats) {
        Map<Cause, List<String>> facts = MovedFacts.of(moved.then(), moved.now(), moved.names(), formats);
        List<AheadPage.Facts> all = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            List<String> said = facts.getOrDefault(cause, List.of());
            if (!said.isEmpty()) {
                all.add(new AheadPage.Facts(Formats.sentence(cause(cause)), said));
            }
        }
        return all;
    }
}
