package weekwright.funds;

import java.util.List;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.Said;
import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Takes something off the yard's list; refused while material lines are taken from it. */
public final class RemoveStockItem {
    private RemoveStockItem() {}

    public static void remove(Write write, Shown shown, StockItem item) throws Rejected, Stale {
        List<String> lines = MaterialStore.TABLE.where(write, "stock", item.id().value()).stream()
                .map(Stored::value)
                .map(Material::item)
                .toList();
        if (!lines.isEmpty()) {
            throw new Rejected(Problem.fault(
                    "",
                    item.item(),
                    "covers " + Said.list(lines),
                    "take " + (lines.size() == 1 ? "that line" : "those lines") + " off it first"));
        }
        StockItemStore.TABLE.delete(write, shown.row(), shown.version());
    }
}
