package weekwright.build;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Keeps a day, or hours of it, on which nothing was done, with its reason; adds or changes it. */
public final class SaveStopped {
    private SaveStopped() {}

    /**
     * @param shown the row that is changed; empty adds
     * @param today in the project's zone
     */
    public static Stored<Stopped> save(Write write, Optional<Shown> shown, Stopped row, LocalDate today)
            throws Rejected, Stale {
        Faults.refuse(check(write, row, today));
        return shown.isPresent()
                ? StoppedStore.TABLE.update(
                        write, shown.get().row(), shown.get().version(), row)
                : StoppedStore.TABLE.insert(write, row);
    }

    /** Everything that the rules say of such a row. */
    public static Problems check(Read read, Stopped row, LocalDate today) {
        Problems problems = new Problems();
        if (row.date().isAfter(today)) {
            problems.fault(
                    "date",
                    Said.day(row.date()),
                    "is after today, " + Said.day(today),
                    "enter days off ahead under Crew, stopped days once they have been");
        }
        References.check(read, StoppedStore.TABLE.shape(), row, problems);
        DateRules.check(
                StoppedStore.TABLE.shape(),
                row,
                SettingsStore.get(read).project().started(),
                problems);
        return problems;
    }
}
