package weekwright.funds;

import java.util.Optional;
import weekwright.base.Money;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.DateRules;
import weekwright.build.Faults;
import weekwright.build.SettingsStore;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Adds a cost or an income that comes again, or changes one. */
public final class SaveRegularItem {
    private SaveRegularItem() {}

    /** @param shown the row that is changed; empty adds */
    public static Stored<RegularItem> save(Write write, Optional<Shown> shown, RegularItem item)
            throws Rejected, Stale {
        Faults.refuse(check(write, item));
        return shown.isPresent()
                ? RegularItemStore.TABLE.update(
                        write, shown.get().row(), shown.get().version(), item)
                : RegularItemStore.TABLE.insert(write, item);
    }

    /** Everything that the rules say of such an item. */
    public static Problems check(Read read, RegularItem item) {
        Problems problems = new Problems();
        LedgerRules.check(item, problems);
        DateRules.check(
                RegularItemStore.TABLE.shape(),
                item,
                SettingsStore.get(read).project().started(),
                problems);
        if (item.amount().equals(Money.ZERO)) {
            problems.fault("amount", "0", "is nothing", "write what it costs or brings each time");
        }
        return problems;
    }
}
