package weekwright.episodes;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where the reasons of skipped slots are kept: the table {@code skipped}. */
public final class SkippedSlotStore {
    public static final Table<SkippedSlot> TABLE = new Table<>("skipped", SkippedSlot.class);

    private SkippedSlotStore() {}

    public static Optional<Stored<SkippedSlot>> of(Read read, LocalDate slot) {
        return TABLE.where(read, "date", slot.toString()).stream().findFirst();
    }
}
