package weekwright.funds;

import weekwright.base.Rows;
import weekwright.db.Read;

/** What the rules over many rows of the money side look at, out of plain files with places or out of the store without. */
public record FundsRows(
        Rows<Material> materials,
        Rows<StockItem> stock,
        Rows<LedgerEntry> ledger,
        Rows<SupporterMonth> supporters,
        Rows<ClosedMonth> closed,
        Rows<StatementLine> statements,
        Rows<Supplier> suppliers) {

    /** The rows as the store has them. */
    public static FundsRows of(Read read) {
        return new FundsRows(
                Rows.of(MaterialStore.TABLE.values(read)),
                Rows.of(StockItemStore.TABLE.values(read)),
                Rows.of(LedgerEntryStore.TABLE.values(read)),
                Rows.of(SupporterMonthStore.TABLE.values(read)),
                Rows.of(ClosedMonthStore.TABLE.values(read)),
                Rows.of(ClosedMonthStore.LINES.values(read)),
                Rows.of(SupplierStore.TABLE.values(read)));
    }
}
