package weekwright.funds;

import weekwright.db.Table;

/** Where it is kept how files are read: the table {@code bank_sources}. */
public final class BankSourceStore {
    public static final Table<BankSource> TABLE = new Table<>("bank_sources", BankSource.class);

    private BankSourceStore() {}
}
