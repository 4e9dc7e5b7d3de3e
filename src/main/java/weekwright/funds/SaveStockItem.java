package weekwright.funds;

import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.DateRules;
import weekwright.build.Faults;
import weekwright.build.SettingsStore;
import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Adds what lies in the yard or changes it. */
public final class SaveStockItem {
    private SaveStockItem() {}

    /** @param shown the row that is changed; empty adds */
    public static Stored<StockItem> save(Write write, Optional<Shown> shown, StockItem item) throws Rejected, Stale {
        Problems problems = new Problems();
        MaterialRules.check(item, problems);
        DateRules.check(
                StockItemStore.TABLE.shape(),
                item,
                SettingsStore.get(write).project().started(),
                problems);
        Faults.refuse(problems);
        return shown.isPresent()
                ? StockItemStore.TABLE.update(
                        write, shown.get().row(), shown.get().version(), item)
                : StockItemStore.TABLE.insert(write, item);
    }
}
