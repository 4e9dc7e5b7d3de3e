package weekwright.funds;

import weekwright.db.Table;

/** Where pledge levels are kept: the table {@code pledge_levels}. */
public final class PledgeLevelStore {
    public static final Table<PledgeLevel> TABLE = new Table<>("pledge_levels", PledgeLevel.class);

    private PledgeLevelStore() {}
}
