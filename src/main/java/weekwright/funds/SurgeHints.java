package weekwright.funds;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Whole months that look as if one film had filled them: at least twice as many joined as the median of the months that are not marked, and
 * at least 3 √median more (three standard deviations of a Poisson count; the rule is ours, no source). A median below one counts as one; with
 * fewer than three unmarked months nothing is said.
 *
 * @param months how many are not marked
 * @param middleTwice twice their median of joined, so that it is whole
 * @param found oldest first, marked ones too
 */
public record SurgeHints(int months, long middleTwice, List<Found> found) {
    private static final int FEWEST = 3;

    public SurgeHints {
        found = List.copyOf(found);
    }

    /** A month that stands out, and how many joined in it. */
    public record Found(YearMonth month, long joined, boolean marked) {}

    /** @param thisMonth is not over and says nothing yet */
    public static SurgeHints of(List<SupporterMonth> counts, YearMonth thisMonth) {
        Map<YearMonth, Long> joined = new TreeMap<>();
        counts.stream()
                .filter(row -> row.month().isBefore(thisMonth))
                .forEach(row -> row.joined().ifPresent(some -> joined.merge(row.month(), (long) some, Math::addExact)));
        Set<YearMonth> marked = counts.stream()
                .filter(SupporterMonth::surge)
                .map(SupporterMonth::month)
                .collect(Collectors.toSet());
        List<Long> usual = joined.entrySet().stream()
                .filter(entry -> !marked.contains(entry.getKey()))
                .map(Map.Entry::getValue)
                .sorted()
                .toList();
        int size = usual.size();
        if (size < FEWEST) {
            return new SurgeHints(size, 0, List.of());
        }
        SurgeHints rule = new SurgeHints(size, usual.get((size - 1) / 2) + usual.get(size / 2), List.of());
        List<Found> found = new ArrayList<>();
        joined.forEach((month, some) -> {
            if (some >= rule.least()) {
                found.add(new Found(month, some, marked.contains(month)));
            }
        });
        return new SurgeHints(size, rule.middleTwice, found);
    }

    /** Whether there are months enough to say anything. */
    public boolean known() {
        return months >= FEWEST;
    }

    /** The fewest who have to join: n ≥ 2m and n − m ≥ 3 √m, that is (2n − 2m)² ≥ 36 m, in whole numbers. */
    public long least() {
        long twice = Math.max(2, middleTwice);
        long least = twice;
        while ((2 * least - twice) * (2 * least - twice) < 18 * twice) {
            least++;
        }
        return least;
    }
}
