package weekwright.engine.simulate;

import java.util.List;
import java.util.function.IntPredicate;
import org.apache.commons.statistics.distribution.BetaDistribution;
import weekwright.engine.Inputs;
import weekwright.engine.Inputs.SupporterMonth;

/**
 * Months driven by one film (rule 123). Each publication sets off a surge with a chance c ~ Beta(1 + surges, 39 + others), before any is
 * known one in forty; its size, in months of usual joining and the same for all levels, is lognormal with the middle 3 and a standard
 * deviation of the logarithm of 0.6, worth two surges of the crew's own. People come while it halves every three weeks, and leave
 * two and a half times as often in their first three months. The figures are trade judgement, no source.
 */
final class Surges {
    /** Months in which newcomers leave more often. */
    static final int NEW_MONTHS = 3;

    private static final double CHANCE_SURGES = 1;
    private static final double CHANCE_OTHERS = 39;
    private static final double MIDDLE = 3;
    private static final double DEVIATION = 0.6;
    private static final double WORTH = 2;
    private static final double LEAST_SIZE = 0.25;
    private static final double HALVING_DAYS = 21;
    private static final double NEWCOMERS_LEAVE = 2.5;

    /** Whether there is anybody to come. */
    final boolean any;

    private final QuantileTable chance;
    final double middle;
    private final long chanceKey = Streams.key(Streams.Purpose.SURGE_CHANCE, "");
    private final long key = Streams.key(Streams.Purpose.SURGE, "");
    private final long sizeKey = Streams.key(Streams.Purpose.SURGE_SIZE, "");
    /** Middle of the chance at a publication and how many were seen, of how many films. */
    final double meanChance;

    final int seen;
    final int films;
    final long[] joinedKey;
    final long[] leftKey;

    Surges(Inputs inputs, int thisMonth) {
        IntPredicate surged = month -> rows(inputs, month).stream().anyMatch(SupporterMonth::surge);
        List<Integer> months = inputs.supporters().stream()
                .map(SupporterMonth::month)
                .filter(month -> month < thisMonth)
                .distinct()
                .sorted()
                .toList();
        any = !months.isEmpty() || !rows(inputs, thisMonth).isEmpty();
        double usual = months.stream()
                .filter(month -> !surged.test(month))
                .mapToInt(month -> joined(inputs, month))
                .average()
                .orElse(0);
        int known = 0;
        double logs = 0;
        for (int month : months) {
            if (surged.test(month)) {
                known++;
                double size = usual <= 0 ? MIDDLE : joined(inputs, month) / usual - 1;
                logs += StrictMath.log(StrictMath.max(LEAST_SIZE, size));
            }
        }
        long published = inputs.episodes().stream()
                .filter(e -> e.published() != Inputs.NONE && e.published() <= inputs.asOf())
                .count();
        int surges = known;
        seen = known;
        films = (int) published;
        meanChance =
                (CHANCE_SURGES + known) / (CHANCE_SURGES + CHANCE_OTHERS + StrictMath.max(known, (double) published));
        double others = CHANCE_OTHERS + StrictMath.max(0, published - surges);
        chance = QuantileTable.of(
                "surge",
                CHANCE_SURGES + surges,
                others,
                u -> BetaDistribution.of(CHANCE_SURGES + surges, others).inverseCumulativeProbability(u));
        middle = StrictMath.exp((WORTH * StrictMath.log(MIDDLE) + logs) / (WORTH + known));
        joinedKey = inputs.levels().stream()
                .mapToLong(level -> Streams.key(Streams.Purpose.SURGE_JOINED, level.id()))
                .toArray();
        leftKey = inputs.levels().stream()
                .mapToLong(level -> Streams.key(Streams.Purpose.SURGE_LEFT, level.id()))
                .toArray();
    }

    private static List<SupporterMonth> rows(Inputs inputs, int month) {
        return inputs.supporters().stream().filter(row -> row.month() == month).toList();
    }

    private static int joined(Inputs inputs, int month) {
        return rows(inputs, month).stream().mapToInt(SupporterMonth::joined).sum();
    }

    /** The chance of a surge at a publication, of a trial. */
    double chance(long trialKey) {
        return chance.at(Streams.uniform(trialKey, chanceKey, 0));
    }

    /** The size of the surge that a publication on a date sets off, in months of usual joining; 0 for none. */
    double size(long trialKey, double chance, int date) {
        if (Streams.uniform(trialKey, key, date) >= chance) {
            return 0;
        }
        return middle * StrictMath.exp(DEVIATION * Inverse.normal(Streams.uniform(trialKey, sizeKey, date)));
    }

    /** Share of a surge that is still to come after so many days. */
    static double rest(int days) {
        return StrictMath.exp(-StrictMath.log(2) * days / HALVING_DAYS);
    }

    /** Share of newcomers that leave in a month in which others leave with {@code c}. */
    static double newcomersLeave(double c) {
        return StrictMath.min(1, NEWCOMERS_LEAVE * c);
    }
}
