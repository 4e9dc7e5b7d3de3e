package weekwright.funds;

import weekwright.db.Table;

/** Where regular are kept: the table {@code regular}. */
public final class RegularItemStore {
    public static final Table<RegularItem> TABLE = new Table<>("regular", RegularItem.class);

    private RegularItemStore() {}
}
