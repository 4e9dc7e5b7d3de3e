package weekwright.funds;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Bounds;
import weekwright.base.Id;
import weekwright.base.Lines;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.base.Ref;

/**
 * A row of the books: plus in, minus out; a counted row is the account's balance at that day's end.
 *
 * @param account nothing means the project's one account
 * @param gross before fees, of a pay-out
 * @param once never drawn again
 * @param payee of a pay-out the pledge level's id, where it is known
 * @param receipt file in receipts/
 */
public record LedgerEntry(
        Id id,
        LocalDate date,
        Money amount,
        Kind kind,
        String account,
        @Bounds(min = 0) Optional<Money> gross,
        @Bounds(min = 0) Optional<Money> fee,
        boolean once,
        @Ref("stages") Optional<Id> stage,
        @Ref("tasks") Optional<Id> task,
        @Ref("materials") Optional<Id> material,
        String payee,
        @Bounds(min = 0) Optional<Quantity> foreignAmount,
        String foreignCurrency,
        @Bounds(min = 0) Optional<Quantity> rate,
        String receipt,
        @Lines @Bounds(max = 2000) String note) {
    /** Neither income nor cost of the work: taken out, put in, lent, taxed, moved between accounts. */
    private static final Set<Kind> APART = Set.of(Kind.DRAWINGS, Kind.OWN_MONEY, Kind.LOAN, Kind.TAX, Kind.TRANSFER);

    /** A cost, a refund of one, or what comes again and goes out. */
    public boolean isCost() {
        return switch (kind) {
            case MATERIAL, EQUIPMENT, WAGES, OTHER_COST, REFUND -> true;
            case REGULAR -> amount.isNegative();
            default -> false;
        };
    }

    public boolean isApart() {
        return APART.contains(kind);
    }

    public boolean isIncome() {
        return !isCost() && !isApart() && kind != Kind.COUNTED;
    }

    /**
     * What one unit of the other currency cost: the rate that was paid, else from the two amounts, six digits, half to even.
     *
     * @param digits of the project's currency
     */
    public Optional<String> ratePaid(int digits) {
        return rate.map(Quantity::text)
                .or(() -> foreignAmount
                        .filter(paid -> !paid.equals(Quantity.ZERO))
                        .map(paid -> BigDecimal.valueOf(Math.abs(amount.minor()), digits)
                                .divide(paid.value(), new MathContext(6, RoundingMode.HALF_EVEN))
                                .stripTrailingZeros()
                                .toPlainString()));
    }

    /** What the money was for. */
    public enum Kind {
        PAYOUT,
        OTHER_INCOME,
        MATERIAL,
        EQUIPMENT,
        WAGES,
        REGULAR,
        OTHER_COST,
        DRAWINGS,
        OWN_MONEY,
        LOAN,
        TAX,
        REFUND,
        TRANSFER,
        COUNTED
    }
}
