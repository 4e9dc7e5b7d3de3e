package weekwright.funds;

import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.SettingsStore;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Adds a pledge that supporters can choose. */
public final class AddPledgeLevel {
    private AddPledgeLevel() {}

    /** @throws Rejected when it costs nothing, has no name, or has that of another level */
    public static Stored<PledgeLevel> add(Write write, PledgeLevel level) throws Rejected {
        Problems problems = new Problems();
        LedgerRules.check(level, problems);
        if (level.amount().minor() <= 0) {
            problems.fault(
                    "amount",
                    level.amount().text(SettingsStore.get(write).moneyDigits()),
                    "is no pledge",
                    "write what a supporter pays, more than nothing");
        }
        if (PledgeLevelStore.TABLE.values(write).stream()
                .anyMatch(other -> other.name().equalsIgnoreCase(level.name()))) {
            problems.fault("name", level.name(), "is the name of another level", "choose another name");
        }
        Faults.refuse(problems);
        return PledgeLevelStore.TABLE.insert(write, level);
    }
}
