package weekwright.build;

import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Keeps other weekday hours of a person for a season or a job; adds or changes them. */
public final class SaveCrewHours {
    private SaveCrewHours() {}

    /**
     * @param shown the row that is changed; empty adds
     */
    public static Stored<CrewHours> save(Write write, Optional<Shown> shown, CrewHours row) throws Rejected, Stale {
        Faults.refuse(check(write, row));
        return shown.isPresent()
                ? CrewHoursStore.TABLE.update(
                        write, shown.get().row(), shown.get().version(), row)
                : CrewHoursStore.TABLE.insert(write, row);
    }

    /** Everything that the rules say of such a row. */
    public static Problems check(Read read, CrewHours row) {
        Problems problems = new Problems();
        CrewRules.check(row, problems);
        References.check(read, CrewHoursStore.TABLE.shape(), row, problems);
        DateRules.check(
                CrewHoursStore.TABLE.shape(),
                row,
                SettingsStore.get(read).project().started(),
                problems);
        return problems;
    }
}
