package weekwright.build;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Keeps what happened when somebody was hurt, or nearly; adds or changes it. Never published. */
public final class SaveIncident {
    private SaveIncident() {}

    /**
     * @param shown the row that is changed; empty adds
     * @param today in the project's zone
     */
    public static Stored<Incident> save(Write write, Optional<Shown> shown, Incident row, LocalDate today)
            throws Rejected, Stale {
        Faults.refuse(check(write, row, today));
        return shown.isPresent()
                ? IncidentStore.TABLE.update(
                        write, shown.get().row(), shown.get().version(), row)
                : IncidentStore.TABLE.insert(write, row);
    }

    /** Everything that the rules say of such a row. */
    public static Problems check(Read read, Incident row, LocalDate today) {
        Problems problems = new Problems();
        CrewRules.check(row, problems);
        if (row.date().isAfter(today)) {
            problems.fault(
                    "date", Said.day(row.date()), "is after today, " + Said.day(today), "write the day it happened");
        }
        References.check(read, IncidentStore.TABLE.shape(), row, problems);
        DateRules.check(
                IncidentStore.TABLE.shape(),
                row,
                SettingsStore.get(read).project().started(),
                problems);
        return problems;
    }
}
