package weekwright.forecast;

import weekwright.db.Table;

/** Where named levers are kept: the table {@code levers}. */
public final class KeptLeversStore {
    public static final Table<KeptLevers> TABLE = new Table<>("levers", KeptLevers.class);

    private KeptLeversStore() {}
}
