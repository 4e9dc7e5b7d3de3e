package weekwright.funds;

import java.util.List;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where material lines are kept: the table {@code materials}. */
public final class MaterialStore {
    public static final Table<Material> TABLE = new Table<>("materials", Material.class);

    private MaterialStore() {}

    /** The lines of one task in stored order. */
    public static List<Stored<Material>> ofTask(Read read, Id task) {
        return TABLE.where(read, "task", task.value());
    }

    /** A free id of the series of a line, for a part of it that comes later. */
    public static Id nextPart(Read read, Id line) {
        return Id.next(line.value().replaceFirst("\\.[0-9]+$", "").replace('.', '-'), TABLE.ids(read));
    }
}
