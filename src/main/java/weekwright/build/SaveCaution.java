package weekwright.build;

import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Keeps a caution of the crew's own for a hazard; adds or changes it. */
public final class SaveCaution {
    private SaveCaution() {}

    /**
     * @param shown the row that is changed; empty adds
     */
    public static Stored<Caution> save(Write write, Optional<Shown> shown, Caution row) throws Rejected, Stale {
        Faults.refuse(check(write, row));
        return shown.isPresent()
                ? CautionStore.TABLE.update(
                        write, shown.get().row(), shown.get().version(), row)
                : CautionStore.TABLE.insert(write, row);
    }

    /** Everything that the rules say of such a row. */
    public static Problems check(Read read, Caution row) {
        Problems problems = new Problems();
        CrewRules.check(row, problems);
        References.check(read, CautionStore.TABLE.shape(), row, problems);
        DateRules.check(
                CautionStore.TABLE.shape(),
                row,
                SettingsStore.get(read).project().started(),
                problems);
        return problems;
    }
}
