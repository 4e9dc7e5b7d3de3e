package weekwright.build;

import weekwright.db.Table;

/** Where cautions are kept: the table {@code cautions}. */
public final class CautionStore {
    public static final Table<Caution> TABLE = new Table<>("cautions", Caution.class);

    private CautionStore() {}
}
