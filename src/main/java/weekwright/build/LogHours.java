package weekwright.build;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.Write;

/**
 * Keeps one person's hours of one day. The day lies within the project and not in the future; that person's day holds at
 * most 24 hours; the first hours of a task set the day on which it began. Hours on a task that is done or dropped are
 * accepted with a remark.
 */
public final class LogHours {
    private LogHours() {}

    /** @param today in the project's zone */
    public static LoggedHours log(Write write, HoursEntry entry, LocalDate today) throws Rejected {
        List<Problem> remarks = LoggedHours.check(write, entry, Optional.empty(), today);
        var kept = HoursEntryStore.TABLE.insert(write, entry);
        LoggedHours.followStart(write, entry.task(), entry.date());
        return new LoggedHours(kept, remarks);
    }
}
