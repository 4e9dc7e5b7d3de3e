package weekwright.build;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Rejected;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Brings back an hours entry that was taken away, if that person's day still has room for it. */
public final class RestoreHours {
    private RestoreHours() {}

    /**
     * @param today in the project's zone
     * @return the entry, or empty when it was never removed or stands again
     */
    public static Optional<Stored<HoursEntry>> restore(Write write, long row, LocalDate today) throws Rejected {
        Optional<Stored<HoursEntry>> back = HoursEntryStore.TABLE.restore(write, row);
        if (back.isPresent()) {
            HoursEntry entry = back.get().value();
            LoggedHours.check(write, entry, Optional.of(Shown.of(back.get())), today);
            LoggedHours.followStart(write, entry.task(), entry.date());
        }
        return back;
    }
}
