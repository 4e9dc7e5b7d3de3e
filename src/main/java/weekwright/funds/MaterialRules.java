package weekwright.funds;

import static weekwright.base.RowRules.needed;
import static weekwright.base.RowRules.notBefore;
import static weekwright.base.RowRules.percent;
import static weekwright.base.RowRules.rising;

import weekwright.base.Problems;

/** What must hold within one take-off line, and within one thing in the yard. */
public final class MaterialRules {
    private MaterialRules() {}

    public static void check(Material line, Problems problems) {
        needed("item", line.item(), "write what is needed", problems);
        rising("price_", line.priceLow(), line.priceLikely(), line.priceHigh(), problems);
        rising("lead_", line.leadLow(), line.leadLikely(), line.leadHigh(), problems);
        percent("waste", line.waste(), problems);
        percent("deposit", line.deposit(), problems);
        notBefore("promised", line.promised(), "ordered", line.ordered(), problems);
        notBefore("received", line.received(), "ordered", line.ordered(), problems);
        TakeOff.check(line, problems);
        boolean toBuy = line.sourceOrDefault() == Material.Source.BOUGHT
                && line.stock().isEmpty()
                && line.received().isEmpty();
        if (toBuy && line.quantity().isEmpty()) {
            problems.remark("quantity", "", "is missing, so the line costs nothing", "write how much is needed");
        }
        if (toBuy
                && line.priceLikely().isEmpty()
                && line.priceLow().isEmpty()
                && line.priceHigh().isEmpty()) {
            problems.remark("price_likely", "", "is missing, so the line costs nothing", "write what one costs");
        }
    }

    public static void check(StockItem item, Problems problems) {
        needed("item", item.item(), "write what lies there", problems);
        rising("ready_", item.readyLow(), item.readyLikely(), item.readyHigh(), problems);
        if (item.undated()) {
            problems.remark(
                    "ready_likely",
                    "",
                    "is missing though it is wet, so it counts as ready",
                    "write the days until it is dry, or have them worked out on its sheet");
        }
    }
}
