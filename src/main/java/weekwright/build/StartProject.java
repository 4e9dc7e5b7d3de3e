package weekwright.build;

import java.util.List;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Write;

/** Writes the settings and the crew of a new project into its empty store. */
public final class StartProject {
    private StartProject() {}

    /** @throws Rejected with every fault of settings and crew; nothing is kept */
    public static void start(Write write, Settings settings, List<CrewMember> crew) throws Rejected {
        Rejected.ifFaults(check(settings, crew));
        SettingsStore.insert(write, settings);
        crew.forEach(member -> CrewMemberStore.TABLE.insert(write, member));
    }

    /** Everything that the rules say of such a beginning. */
    public static Problems check(Settings settings, List<CrewMember> crew) {
        Problems problems = new Problems();
        SettingsRules.check(settings, problems);
        crew.forEach(member -> CrewRules.check(member, problems));
        return problems;
    }
}
