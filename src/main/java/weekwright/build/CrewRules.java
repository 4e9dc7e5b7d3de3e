package weekwright.build;

import static weekwright.base.RowRules.needed;
import static weekwright.base.RowRules.notBefore;

import java.time.temporal.ChronoUnit;
import weekwright.base.Problems;

/** What must hold within one row about people: a crew member, other hours, days off, a stopped day, an incident. */
public final class CrewRules {
    private static final int MOST_YEARS_OFF = 5;

    private CrewRules() {}

    public static void check(CrewMember member, Problems problems) {
        needed("name", member.name(), "write what the person is called", problems);
        notBefore("to", member.to(), "from", member.from(), problems);
        HazardCodes.check("not_for", member.notFor(), problems);
    }

    public static void check(CrewHours hours, Problems problems) {
        notBefore("to", hours.to(), "from", hours.from(), problems);
    }

    /** Days off may not end before they begin, nor last over five years. */
    public static void check(DaysOff off, Problems problems) {
        if (off.to().isBefore(off.from())) {
            problems.fault(
                    "to",
                    off.to().toString(),
                    "is before from " + off.from(),
                    "write " + off.from() + " or later, or change from");
        } else if (ChronoUnit.DAYS.between(off.from(), off.to()) > 366L * MOST_YEARS_OFF) {
            problems.fault(
                    "to", off.to().toString(), "is over five years after from " + off.from(), "write it in parts");
        }
    }

    public static void check(Incident incident, Problems problems) {
        needed("what", incident.what(), "write what happened", problems);
    }

    public static void check(Caution caution, Problems problems) {
        needed("hazard", caution.hazard(), "choose the hazard that it is about", problems);
        if (!caution.hazard().isBlank()) {
            HazardCodes.check("hazard", caution.hazard(), problems);
        }
        needed("text", caution.text(), "write the caution", problems);
    }
}
