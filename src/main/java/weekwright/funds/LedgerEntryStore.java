package weekwright.funds;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where ledger entries are kept: the table {@code ledger}. */
public final class LedgerEntryStore {
    public static final Table<LedgerEntry> TABLE = new Table<>("ledger", LedgerEntry.class);

    private LedgerEntryStore() {}

    /** The first free id of the series {@code ledger.1}, {@code ledger.2} … */
    public static Id nextId(Read read) {
        return Id.next("ledger", TABLE.ids(read));
    }

    /** Entries from one day to another, both included, by day, then in stored order. */
    public static List<Stored<LedgerEntry>> between(Read read, LocalDate from, LocalDate to) {
        return TABLE.select(
                read,
                "WHERE \"date\" BETWEEN :from AND :to ORDER BY \"date\", \"row\"",
                Map.of("from", from.toString(), "to", to.toString()));
    }
}
