package weekwright.build;

import java.util.List;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where it is kept who has read of a hazard: the table {@code hazards_read}. */
public final class HazardReadStore {
    public static final Table<HazardRead> TABLE = new Table<>("hazards_read", HazardRead.class);

    private HazardReadStore() {}

    /** The row of a person and a hazard. */
    public static Optional<Stored<HazardRead>> of(Read read, Id crew, String hazard) {
        List<Stored<HazardRead>> all = TABLE.where(read, "crew", crew.value());
        return all.stream()
                .filter(row -> row.value().hazard().equalsIgnoreCase(hazard))
                .findFirst();
    }
}
