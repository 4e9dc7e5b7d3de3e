package weekwright.funds;

import java.time.YearMonth;
import java.util.List;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where supporter months are kept: the table {@code supporters}. */
public final class SupporterMonthStore {
    public static final Table<SupporterMonth> TABLE = new Table<>("supporters", SupporterMonth.class);

    private SupporterMonthStore() {}

    /** The counts of one month, a row a level at most. */
    public static List<Stored<SupporterMonth>> of(Read read, YearMonth month) {
        return TABLE.where(read, "month", month.toString());
    }
}
