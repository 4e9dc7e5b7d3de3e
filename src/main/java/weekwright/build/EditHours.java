package weekwright.build;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Changes an hours entry, under the rules of {@link LogHours}. */
public final class EditHours {
    private EditHours() {}

    /** @param today in the project's zone */
    public static LoggedHours edit(Write write, Shown shown, HoursEntry entry, LocalDate today) throws Rejected, Stale {
        Optional<Stored<HoursEntry>> before = HoursEntryStore.TABLE.find(write, shown.row());
        List<Problem> remarks = LoggedHours.check(write, entry, Optional.of(shown), today);
        var kept = HoursEntryStore.TABLE.update(write, shown.row(), shown.version(), entry);
        before.ifPresent(old ->
                LoggedHours.followStart(write, old.value().task(), old.value().date()));
        LoggedHours.followStart(write, entry.task(), entry.date());
        return new LoggedHours(kept, remarks);
    }
}
