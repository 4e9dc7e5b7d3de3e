package weekwright.build;

import weekwright.db.Table;

/** Where lines of the week that the crew wrote are kept: the table {@code week}. */
public final class WeekLineStore {
    public static final Table<WeekLine> TABLE = new Table<>("week", WeekLine.class);

    private WeekLineStore() {}
}
