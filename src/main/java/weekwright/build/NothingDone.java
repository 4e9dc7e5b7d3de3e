package weekwright.build;

import java.time.LocalDate;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Keeps a day, or hours of it, on which nothing was done, with its reason. */
public final class NothingDone {
    private NothingDone() {}

    /** @param today in the project's zone */
    public static Stored<Stopped> record(Write write, Stopped stopped, LocalDate today) throws Rejected {
        Problems problems = new Problems();
        if (stopped.date().isAfter(today)) {
            problems.fault(
                    "date",
                    Said.day(stopped.date()),
                    "is after today, " + Said.day(today),
                    "enter days off ahead under Crew, stopped days once they have been");
        }
        References.check(write, StoppedStore.TABLE.shape(), stopped, problems);
        Faults.refuse(problems);
        return StoppedStore.TABLE.insert(write, stopped);
    }
}
