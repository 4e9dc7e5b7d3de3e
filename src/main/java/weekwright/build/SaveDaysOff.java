package weekwright.build;

import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Keeps days on which a person, or everybody, works other hours than stated; adds or changes them. */
public final class SaveDaysOff {
    private SaveDaysOff() {}

    /**
     * @param shown the row that is changed; empty adds
     */
    public static Stored<DaysOff> save(Write write, Optional<Shown> shown, DaysOff row) throws Rejected, Stale {
        Faults.refuse(check(write, row));
        return shown.isPresent()
                ? DaysOffStore.TABLE.update(
                        write, shown.get().row(), shown.get().version(), row)
                : DaysOffStore.TABLE.insert(write, row);
    }

    /** Everything that the rules say of such a row. */
    public static Problems check(Read read, DaysOff row) {
        Problems problems = new Problems();
        CrewRules.check(row, problems);
        References.check(read, DaysOffStore.TABLE.shape(), row, problems);
        DateRules.check(
                DaysOffStore.TABLE.shape(),
                row,
                SettingsStore.get(read).project().started(),
                problems);
        return problems;
    }
}
