package weekwright.build;

import weekwright.base.Problems;
import weekwright.base.Rejected;

/** Refuses what a person typed when it has faults; the remarks beside them are not told as if they were in the way. */
public final class Faults {
    private Faults() {}

    public static void refuse(Problems problems) throws Rejected {
        if (problems.hasFaults()) {
            throw new Rejected(problems.faults());
        }
    }
}
