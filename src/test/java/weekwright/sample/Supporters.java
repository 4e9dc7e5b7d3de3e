package weekwright.sample;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Twenty months of the sample's supporters by pledge level: who joined and left is written by hand, the starts follow. The
 * last month is under way. Also what a charge brings: gross and fee of one level's supporters at once.
 */
final class Supporters {
    private static final YearMonth FIRST = YearMonth.of(2025, 4);
    private static final YearMonth SURGE = YearMonth.of(2026, 3);

    /** id, supporters at the start, joined a month, left a month. */
    private record Level(String id, int start, int[] joined, int[] left) {}

    private static final List<Level> LEVELS = List.of(
            new Level(
                    "peg",
                    31,
                    new int[] {22, 17, 13, 12, 9, 11, 12, 13, 16, 21, 18, 46, 24, 15, 13, 12, 5, 13, 16, 10},
                    new int[] {1, 1, 2, 2, 3, 2, 3, 3, 4, 4, 5, 6, 12, 9, 7, 6, 12, 6, 6, 4}),
            new Level("beam", 40, new int[] {9, 7, 6, 5, 4, 5, 6, 5, 7, 10, 8, 19, 11, 7, 6, 5, 2, 6, 7, 4}, new int[] {
                0, 0, 1, 1, 1, 1, 1, 2, 1, 2, 2, 2, 5, 4, 3, 3, 6, 3, 3, 2
            }),
            new Level("bucket", 27, new int[] {8, 6, 5, 4, 4, 4, 5, 4, 6, 9, 7, 16, 9, 6, 5, 4, 2, 5, 6, 3}, new int[] {
                0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 2, 2, 4, 3, 3, 2, 5, 2, 2, 1
            }));

    private final Map<String, Map<String, String>> terms = new HashMap<>();
    private final Map<String, Integer> starts = new HashMap<>();
    private final List<List<String>> rows = new ArrayList<>();

    Supporters(Path folder) {
        for (Map<String, String> level : Csv.read(folder.resolve("pledge-levels.csv"))) {
            terms.put(level.get("id"), level);
        }
        int[] now = LEVELS.stream().mapToInt(Level::start).toArray();
        for (int month = 0; month < LEVELS.get(0).joined().length; month++) {
            YearMonth at = FIRST.plusMonths(month);
            for (int i = 0; i < now.length; i++) {
                Level level = LEVELS.get(i);
                starts.put(level.id() + at, now[i]);
                rows.add(List.of(
                        at.toString(),
                        level.id(),
                        Integer.toString(now[i]),
                        Integer.toString(level.joined()[month]),
                        Integer.toString(level.left()[month]),
                        at.equals(SURGE) ? "yes" : ""));
                now[i] += level.joined()[month] - level.left()[month];
            }
        }
    }

    /** The text of supporters.csv. */
    String text() {
        return Csv.text("month,level,start,joined,left,surge", rows);
    }

    /** Gross and net of one charge to those of a level at the start of the month, in whole cents. */
    BigDecimal[] charge(String level, YearMonth month) {
        Map<String, String> term = terms.get(level);
        BigDecimal hundred = BigDecimal.valueOf(100);
        BigDecimal paying = BigDecimal.valueOf(starts.get(level + month))
                .multiply(hundred.subtract(new BigDecimal(term.get("declined"))))
                .divide(hundred);
        BigDecimal amount = new BigDecimal(term.get("amount"));
        BigDecimal kept = amount.multiply(hundred.subtract(new BigDecimal(term.get("fee_percent"))))
                .divide(hundred)
                .subtract(new BigDecimal(term.get("fee_fixed")));
        return new BigDecimal[] {
            paying.multiply(amount).setScale(2, RoundingMode.HALF_UP),
            paying.multiply(kept).setScale(2, RoundingMode.HALF_UP)
        };
    }
}
