package weekwright.funds;

import weekwright.db.Table;

/** Where ledger are kept: the table {@code ledger}. */
public final class LedgerEntryStore {
    public static final Table<LedgerEntry> TABLE = new Table<>("ledger", LedgerEntry.class);

    private LedgerEntryStore() {}
}
