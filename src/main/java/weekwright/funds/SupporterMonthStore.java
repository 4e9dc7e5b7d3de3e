package weekwright.funds;

import weekwright.db.Table;

/** Where supporters are kept: the table {@code supporters}. */
public final class SupporterMonthStore {
    public static final Table<SupporterMonth> TABLE = new Table<>("supporters", SupporterMonth.class);

    private SupporterMonthStore() {}
}
