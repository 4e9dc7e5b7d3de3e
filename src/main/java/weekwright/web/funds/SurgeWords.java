package weekwright.web.funds;

import java.util.List;
import weekwright.funds.SurgeHints;
import weekwright.render.Formats;

/**
 * Which months look as if one film had filled them, and by which rule.
 *
 * @param rule the rule with its figures; empty while there are too few months
 * @param lines the months that stand out
 */
public record SurgeWords(String rule, List<Line> lines) {
    public SurgeWords {
        lines = List.copyOf(lines);
    }

    /**
     * A month that stands out.
     *
     * @param mark the month to mark; empty where it is marked
     */
    public record Line(String said, String month, String mark) {}

    static SurgeWords of(SurgeHints hints) {
        if (!hints.known()) {
            return new SurgeWords("", List.of());
        }
        String middle = Formats.grouped(hints.middleTwice() / 2) + (hints.middleTwice() % 2 == 0 ? "" : "½");
        return new SurgeWords(
                "A month is suggested in which at least twice as many joined as in the middle one of the months that"
                        + " are not marked, and at least three times the square root of that middle more. The middle of "
                        + Formats.count(hints.months(), "month") + " is " + middle + " joined, so it takes "
                        + Formats.grouped(hints.least()) + ".",
                hints.found().stream()
                        .map(one -> {
                            String month = Formats.monthYear(one.month().atDay(1));
                            return new Line(
                                    month + ": " + Formats.grouped(one.joined()) + " joined"
                                            + (one.marked() ? ", and it is marked." : ". Did one film bring them?"),
                                    month,
                                    one.marked() ? "" : one.month().toString());
                        })
                        .toList());
    }
}
