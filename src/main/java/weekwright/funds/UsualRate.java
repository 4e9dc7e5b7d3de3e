package weekwright.funds;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.YearMonth;
import java.util.List;

/**
 * The share of a level's supporters of the 1st that usually leaves in a month, (1 + Σ left) / (20 + Σ start) over the whole months that
 * say who left: the middle of what the forecast draws from, before older months count less (rules 76 to 79).
 *
 * @param months how many say it
 * @param left of those of the 1st, as many as were there at most
 */
public record UsualRate(int months, long left, long start) {
    private static final long PRIOR_LEFT = 1;
    private static final long PRIOR_START = 20;

    /** Who joined and who left in a month, by the usual rate. */
    public record Split(int joined, int left) {}

    /** @param thisMonth is not over and says nothing yet */
    public static UsualRate of(List<SupporterMonth> counts, PledgeLevel level, YearMonth thisMonth) {
        List<SupporterMonth> said = counts.stream()
                .filter(row -> row.level().same(level.id())
                        && row.month().isBefore(thisMonth)
                        && row.left().isPresent())
                .toList();
        return new UsualRate(
                said.size(),
                said.stream()
                        .mapToLong(row -> Math.min(row.left().orElseThrow(), row.start()))
                        .sum(),
                said.stream().mapToLong(SupporterMonth::start).sum());
    }

    /**
     * Splits what a month's count and the next one's say: left = start × rate, half to even, joined = next − start + left. Where more are
     * missing than usually leave, all of them left and nobody joined.
     */
    public Split split(int start, int next) {
        int usual = BigDecimal.valueOf(start)
                .multiply(BigDecimal.valueOf(PRIOR_LEFT + left))
                .divide(BigDecimal.valueOf(PRIOR_START + this.start), 0, RoundingMode.HALF_EVEN)
                .intValueExact();
        int gone = Math.max(usual, start - next);
        return new Split(next - start + gone, gone);
    }
}
