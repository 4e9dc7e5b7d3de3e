package weekwright.funds;

import java.time.YearMonth;
import java.util.Optional;
import weekwright.base.Bounds;
import weekwright.base.Hours;
import weekwright.base.Money;

/**
 * A line of a closed month's statement, kept as it was said.
 *
 * @param name what it counts; of a missing thing its sentence
 * @param gross before fees, of pay-outs
 * @param count of episodes, or of entries
 */
public record StatementLine(
        YearMonth month,
        Part part,
        @Bounds(max = 500) String name,
        Optional<Money> amount,
        @Bounds(min = 0) Optional<Money> gross,
        @Bounds(min = 0) Optional<Money> fee,
        Optional<Hours> hours,
        @Bounds(min = 0, max = 1_000_000) Optional<Integer> count) {
    /** The parts of a statement, in their order. */
    public enum Part {
        INCOME,
        COST,
        STAGE,
        APART,
        BALANCE,
        HOURS,
        FIGURE,
        MISSING
    }

    static StatementLine money(YearMonth month, Part part, String name, Money amount) {
        return new StatementLine(
                month,
                part,
                name,
                Optional.of(amount),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    static StatementLine words(
            YearMonth month, Part part, String name, Optional<Hours> hours, Optional<Integer> count) {
        return new StatementLine(month, part, name, Optional.empty(), Optional.empty(), Optional.empty(), hours, count);
    }
}
