package weekwright.web.ahead;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import weekwright.engine.explain.Cause;
import weekwright.engine.explain.WhatMoved;
import weekwright.forecast.Moved;
import weekwright.render.Formats;
import weekwright.web.parts.CauseWords;

/** Why the dates moved, in words. */
final class MovedWords {
    private MovedWords() {}

    /** {@code +9 days days passed and work logged, −1 day supporters and cash}; empty where no cause moved it by a day. */
    static String because(WhatMoved.Stage stage) {
        return CauseWords.because(Moved.wholeDays(stage));
    }

    /** The changes themselves, cause by cause. */
    static List<AheadPage.Facts> facts(Moved moved, Formats formats) {
        Map<Cause, List<String>> facts = MovedFacts.of(moved.then(), moved.now(), moved.names(), formats);
        List<AheadPage.Facts> all = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            List<String> said = facts.getOrDefault(cause, List.of());
            if (!said.isEmpty()) {
                all.add(new AheadPage.Facts(Formats.sentence(CauseWords.cause(cause)), said));
            }
        }
        return all;
    }
}
