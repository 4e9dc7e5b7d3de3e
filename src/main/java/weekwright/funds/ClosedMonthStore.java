package weekwright.funds;

import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where closed months are kept, and their statements: the tables {@code closed_months} and {@code statements}. */
public final class ClosedMonthStore {
    public static final Table<ClosedMonth> TABLE = new Table<>("closed_months", ClosedMonth.class);
    public static final Table<StatementLine> LINES = new Table<>("statements", StatementLine.class);

    private ClosedMonthStore() {}

    public static Optional<Stored<ClosedMonth>> find(Read read, YearMonth month) {
        return TABLE.where(read, "month", month.toString()).stream().findFirst();
    }

    /** The lines of a month's statement in their order. */
    public static List<Stored<StatementLine>> lines(Read read, YearMonth month) {
        return LINES.where(read, "month", month.toString());
    }
}
