package weekwright.build;

import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Keeps a day with unnamed helpers; adds or changes it. */
public final class SaveGathering {
    private SaveGathering() {}

    /**
     * @param shown the row that is changed; empty adds
     */
    public static Stored<Gathering> save(Write write, Optional<Shown> shown, Gathering row) throws Rejected, Stale {
        Faults.refuse(check(write, row));
        return shown.isPresent()
                ? GatheringStore.TABLE.update(
                        write, shown.get().row(), shown.get().version(), row)
                : GatheringStore.TABLE.insert(write, row);
    }

    /** Everything that the rules say of such a row. */
    public static Problems check(Read read, Gathering row) {
        Problems problems = new Problems();
        References.check(read, GatheringStore.TABLE.shape(), row, problems);
        DateRules.check(
                GatheringStore.TABLE.shape(),
                row,
                SettingsStore.get(read).project().started(),
                problems);
        return problems;
    }
}
