package weekwright.funds;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.base.Shares;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * What was paid for a line before a part of it came goes with the parts, by quantity: the running sums are rounded half to even
 * ({@link Shares}), so that the shares add up to what was paid. The payment itself stays in the books as the bank has it; two
 * entries that cancel out carry the share of the rest from one line to the other.
 */
final class DepositShare {
    private static final String NOTE = "No payment: the share of what was paid that goes with the part of ";
    /** Quantities have at most four places. */
    private static final int PLACES = 4;

    private DepositShare() {}

    /** Whether an entry carries such a share; no bank knows of it. */
    static boolean is(LedgerEntry entry) {
        return entry.note().startsWith(NOTE);
    }

    /**
     * @param line with all of its quantity, its payments those before the part came
     * @param came the quantity that came
     * @param rest the line of what is still to come
     */
    static void move(Write write, LocalDate day, Material line, Quantity came, Material rest) {
        Money paid = CancelMaterial.paid(write, line);
        if (paid.minor() <= 0) {
            return;
        }
        Money share = Shares.split(
                        paid, List.of(weight(came), weight(rest.quantity().orElseThrow())))
                .get(1);
        if (share.minor() == 0) {
            return;
        }
        String account = LedgerEntryStore.TABLE
                .where(write, "material", line.id().value())
                .stream()
                .map(Stored::value)
                .filter(entry -> entry.amount().isNegative())
                .reduce((first, last) -> last)
                .map(LedgerEntry::account)
                .orElse("");
        enter(write, day, share, account, line, line);
        enter(write, day, share.negated(), account, rest, line);
    }

    private static void enter(Write write, LocalDate day, Money amount, String account, Material of, Material line) {
        LedgerEntry entry = Ledger.entry(
                LedgerEntryStore.nextId(write),
                day,
                amount,
                LedgerEntry.Kind.MATERIAL,
                account,
                Optional.of(of),
                line.supplier());
        LedgerEntryStore.TABLE.insert(
                write, LedgerEntryStore.TABLE.shape().with(entry, "note", NOTE + line.item() + " still to come."));
    }

    private static long weight(Quantity quantity) {
        return quantity.value().movePointRight(PLACES).longValueExact();
    }
}
