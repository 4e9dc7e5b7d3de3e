package weekwright.funds;

import static weekwright.base.RowRules.needed;
import static weekwright.base.RowRules.notBefore;
import static weekwright.base.RowRules.percent;

import weekwright.base.Money;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Refused;

/** What must hold within one row of the books, one regular item, one pledge level. */
public final class LedgerRules {
    private LedgerRules() {}

    /** @param digits of the project's currency, to write amounts with */
    public static void check(LedgerEntry entry, int digits, Problems problems) {
        if (!entry.foreignCurrency().isEmpty()) {
            try {
                Money.digits(entry.foreignCurrency());
            } catch (Refused refused) {
                problems.add(Problem.fault("foreign_currency", entry.foreignCurrency(), refused));
            }
        } else if (entry.foreignAmount().isPresent()) {
            problems.fault(
                    "foreign_currency",
                    "",
                    "is missing beside the foreign amount",
                    "write its three letters, such as USD");
        }
        if (entry.gross().isPresent() && entry.fee().isPresent()) {
            Money rest = entry.gross().get().minus(entry.fee().get());
            if (!rest.equals(entry.amount())) {
                problems.remark(
                        "amount",
                        entry.amount().text(digits),
                        "is not gross less fee, which is " + rest.text(digits),
                        "look at the three again");
            }
        }
    }

    public static void check(RegularItem item, Problems problems) {
        needed("name", item.name(), "write what it is for", problems);
        notBefore("to", item.to(), "from", item.from(), problems);
        percent("spread", item.spread(), problems);
    }

    public static void check(PledgeLevel level, Problems problems) {
        needed("name", level.name(), "write what it is called", problems);
        percent("fee_percent", level.feePercent(), problems);
        percent("declined", level.declined(), problems);
    }

    /** Of those there at the start and those who joined, no more than all can leave. */
    public static void check(SupporterMonth month, Problems problems) {
        long most = (long) month.start() + month.joined().orElse(0);
        if (month.left().orElse(0) > most) {
            problems.fault(
                    "left",
                    month.left().get().toString(),
                    "is more than the " + most + " who were there or joined",
                    "write " + most + " or less");
        }
    }
}
