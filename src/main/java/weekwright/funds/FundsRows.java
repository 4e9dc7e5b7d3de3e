package weekwright.funds;

import weekwright.base.Rows;
import weekwright.db.AllRows;

/** What the rules over many rows of the money side look at. */
public record FundsRows(
        Rows<Material> materials,
        Rows<StockItem> stock,
        Rows<LedgerEntry> ledger,
        Rows<SupporterMonth> supporters,
        Rows<ClosedMonth> closed,
        Rows<StatementLine> statements,
        Rows<Supplier> suppliers) {

    public static FundsRows of(AllRows all) {
        return new FundsRows(
                all.of(MaterialStore.TABLE),
                all.of(StockItemStore.TABLE),
                all.of(LedgerEntryStore.TABLE),
                all.of(SupporterMonthStore.TABLE),
                all.of(ClosedMonthStore.TABLE),
                all.of(ClosedMonthStore.LINES),
                all.of(SupplierStore.TABLE));
    }
}
