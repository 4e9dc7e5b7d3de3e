package weekwright.build;

import java.util.List;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * Removes a person of whom nothing is on record, with the days off and other hours that were entered ahead. Of whom
 * something is, the last day is set instead.
 */
public final class RemoveCrewMember {
    private RemoveCrewMember() {}

    /**
     * @param held what names the person beyond this package's tables, in words
     * @throws Rejected when anything on record names the person, or nobody with the access of the crew would stay
     */
    public static void remove(Write write, Shown shown, CrewMember member, List<String> held) throws Rejected, Stale {
        if (!held.isEmpty()) {
            throw new Rejected(Problem.fault(
                    "",
                    member.name(),
                    "is named by " + Said.list(held),
                    "set the last day under Until instead, so that these stay on record"));
        }
        boolean crewStays = CrewMemberStore.TABLE.list(write).stream()
                .filter(other -> other.row() != shown.row())
                .anyMatch(other -> other.value().accessOrDefault() == CrewMember.Access.CREW);
        if (!crewStays) {
            throw new Rejected(Problem.fault(
                    "", member.name(), "is the only one of the crew", "give somebody else that access first"));
        }
        for (Stored<DaysOff> row :
                DaysOffStore.TABLE.where(write, "crew", member.id().value())) {
            DaysOffStore.TABLE.delete(write, row.row(), row.version());
        }
        for (Stored<CrewHours> row :
                CrewHoursStore.TABLE.where(write, "crew", member.id().value())) {
            CrewHoursStore.TABLE.delete(write, row.row(), row.version());
        }
        CrewMemberStore.TABLE.delete(write, shown.row(), shown.version());
    }
}
