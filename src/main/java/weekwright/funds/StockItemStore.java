package weekwright.funds;

import weekwright.db.Table;

/** Where stock are kept: the table {@code stock}. */
public final class StockItemStore {
    public static final Table<StockItem> TABLE = new Table<>("stock", StockItem.class);

    private StockItemStore() {}
}
