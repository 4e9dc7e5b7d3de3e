package weekwright.funds;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.Said;
import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Says that a material line was ordered (or asked for, when it is given); a deposit paid goes into the books. */
public final class OrderMaterial {
    private OrderMaterial() {}

    /**
     * @param promised the day the supplier named, if any
     * @param paid the deposit, in money that has left the account
     * @param today in the project's zone
     */
    public static Stored<Material> order(
            Write write,
            Shown shown,
            LocalDate day,
            Optional<LocalDate> promised,
            Optional<Money> paid,
            LocalDate today)
            throws Rejected, Stale {
        Material line = MaterialChange.shown(write, shown);
        Problems problems = new Problems();
        MaterialChange.notReceived(line, problems);
        line.ordered()
                .ifPresent(ordered -> problems.fault(
                        "ordered",
                        line.item(),
                        "was ordered on " + Said.day(ordered),
                        "nothing is to be ordered twice"));
        MaterialChange.mustBePast("ordered", day, today, problems);
        promised.ifPresent(to -> MaterialChange.notBefore("promised", to, Optional.of(day), "ordered", problems));
        MaterialChange.someMoney(paid, problems);
        Faults.refuse(problems);
        Material ordered = MaterialChange.with(line, Map.of("ordered", Optional.of(day), "promised", promised));
        MaterialChange.pay(write, day, paid, line);
        return MaterialStore.TABLE.update(write, shown.row(), shown.version(), ordered);
    }
}
