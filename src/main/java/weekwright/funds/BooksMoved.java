package weekwright.funds;

import java.time.Instant;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.build.Settings;
import weekwright.db.History;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.funds.StatementLine.Part;

/**
 * By how much the books of a closed month moved since its statement was kept. Costs stand as in the books: minus is money that
 * went out.
 *
 * @param apart what is neither income nor cost
 * @param end the balance at the month's end
 */
public record BooksMoved(Money income, Money cost, Money apart, Money end) {

    /** @param kept the lines of the statement */
    public static BooksMoved of(
            YearMonth month, List<StatementLine> kept, Settings settings, List<LedgerEntry> ledger) {
        List<LedgerEntry> entries = MonthStatement.movements(ledger, settings, month);
        Money income = Money.ZERO;
        Money cost = Money.ZERO;
        Money apart = Money.ZERO;
        for (LedgerEntry entry : entries) {
            if (entry.isIncome()) {
                income = income.plus(entry.amount());
            } else if (entry.isCost()) {
                cost = cost.plus(entry.amount());
            } else if (entry.isApart()) {
                apart = apart.plus(entry.amount());
            }
        }
        Money end = kept.stream()
                .filter(line -> line.part() == Part.BALANCE && line.name().equals(MonthStatement.END))
                .flatMap(line -> line.amount().stream())
                .findFirst()
                .orElse(Money.ZERO);
        return new BooksMoved(
                income.minus(sum(kept, Part.INCOME)),
                cost.minus(sum(kept, Part.COST)),
                apart.minus(sum(kept, Part.APART)),
                Balance.on(month.atEndOfMonth(), settings, ledger).minus(end));
    }

    private static Money sum(List<StatementLine> lines, Part part) {
        return lines.stream()
                .filter(line -> line.part() == part)
                .flatMap(line -> line.amount().stream())
                .reduce(Money.ZERO, Money::plus);
    }

    public boolean isNothing() {
        return income.equals(Money.ZERO)
                && cost.equals(Money.ZERO)
                && apart.equals(Money.ZERO)
                && end.equals(Money.ZERO);
    }

    /** When an entry of the month was first changed after it was closed; empty where the log names none. */
    public static Optional<Instant> since(Read read, Stored<ClosedMonth> closed) {
        return History.last(read, ClosedMonthStore.TABLE.name(), closed.row())
                .flatMap(closing -> History.firstAfter(
                        read,
                        LedgerEntryStore.TABLE.name(),
                        closing.projectVersion(),
                        "date",
                        closed.value().month().toString()));
    }
}
