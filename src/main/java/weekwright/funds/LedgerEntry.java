package weekwright.funds;

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
