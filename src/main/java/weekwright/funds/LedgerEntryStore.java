package weekwright.funds;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import weekwright.base.Id;
import weekwright.build.ReferenceStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where ledger entries are kept: the table {@code ledger}. */
public final class LedgerEntryStore {
    public static final Table<LedgerEntry> TABLE = new Table<>("ledger", LedgerEntry.class);

    private LedgerEntryStore() {}

    /** The next id of the series {@code ledger.1}, {@code ledger.2} …; never that of an entry that was taken away. */
    public static Id nextId(Read read) {
        return ReferenceStore.unusedId(read, TABLE.name(), "ledger");
    }

    /** Entries from one day to another, both included, by day, then in stored order. */
    public static List<Stored<LedgerEntry>> between(Read read, LocalDate from, LocalDate to) {
        return TABLE.select(
                read,
                "WHERE \"date\" BETWEEN :from AND :to ORDER BY \"date\", \"row\"",
                Map.of("from", from.toString(), "to", to.toString()));
    }
}
