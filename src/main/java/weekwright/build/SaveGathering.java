package weekwright.build;

import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
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
        Problems problems = new Problems();
        References.check(write, GatheringStore.TABLE.shape(), row, problems);
        DateRules.check(
                GatheringStore.TABLE.shape(),
                row,
                SettingsStore.get(write).project().started(),
                problems);
        Faults.refuse(problems);
        return shown.isPresent()
                ? GatheringStore.TABLE.update(
                        write, shown.get().row(), shown.get().version(), row)
                : GatheringStore.TABLE.insert(write, row);
    }
}
