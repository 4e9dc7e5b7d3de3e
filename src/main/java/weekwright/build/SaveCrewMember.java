package weekwright.build;

import java.util.List;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Adds a person or changes one; somebody with the access of the crew has to stay. */
public final class SaveCrewMember {
    private SaveCrewMember() {}

    /** @param shown the row that is changed; empty adds */
    public static Stored<CrewMember> save(Write write, Optional<Shown> shown, CrewMember member)
            throws Rejected, Stale {
        Faults.refuse(check(write, shown, member));
        return shown.isPresent()
                ? CrewMemberStore.TABLE.update(
                        write, shown.get().row(), shown.get().version(), member)
                : CrewMemberStore.TABLE.insert(write, member);
    }

    /** Everything that the rules say of such a person. */
    public static Problems check(Read read, Optional<Shown> shown, CrewMember member) {
        Problems problems = new Problems();
        CrewRules.check(member, problems);
        DateRules.check(
                CrewMemberStore.TABLE.shape(),
                member,
                SettingsStore.get(read).project().started(),
                problems);
        List<CrewMember> others = CrewMemberStore.TABLE.list(read).stream()
                .filter(other -> shown.map(s -> s.row() != other.row()).orElse(true))
                .map(Stored::value)
                .toList();
        if (others.stream().anyMatch(other -> other.name().equalsIgnoreCase(member.name()))) {
            problems.fault("name", member.name(), "is the name of somebody else here", "add a second name");
        }
        boolean crewStays = member.accessOrDefault() == CrewMember.Access.CREW
                || others.stream().anyMatch(other -> other.accessOrDefault() == CrewMember.Access.CREW);
        if (!crewStays) {
            problems.fault(
                    "access", member.name(), "is the only one of the crew", "give somebody else that access first");
        }
        return problems;
    }
}
