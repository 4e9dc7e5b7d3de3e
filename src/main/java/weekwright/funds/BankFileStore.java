package weekwright.funds;

import weekwright.db.Table;

/** Where it is kept which files were read: the table {@code bank_files}. */
public final class BankFileStore {
    public static final Table<BankFile> TABLE = new Table<>("bank_files", BankFile.class);

    private BankFileStore() {}
}
