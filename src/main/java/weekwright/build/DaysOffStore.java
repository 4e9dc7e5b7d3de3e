package weekwright.build;

import weekwright.db.Table;

/** Where days off are kept: the table {@code days_off}. */
public final class DaysOffStore {
    public static final Table<DaysOff> TABLE = new Table<>("days_off", DaysOff.class);

    private DaysOffStore() {}
}
