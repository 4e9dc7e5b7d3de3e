package weekwright.funds;

import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.SettingsStore;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Adds a pledge that supporters can choose, or changes one. */
public final class SavePledgeLevel {
    private SavePledgeLevel() {}

    /**
     * @param shown the row that is changed; empty adds
     * @throws Rejected when it costs nothing, has no name, or has that of another level
     */
    public static Stored<PledgeLevel> save(Write write, Optional<Shown> shown, PledgeLevel level)
            throws Rejected, Stale {
        Faults.refuse(check(write, shown, level));
        return shown.isPresent()
                ? PledgeLevelStore.TABLE.update(
                        write, shown.get().row(), shown.get().version(), level)
                : PledgeLevelStore.TABLE.insert(write, level);
    }

    /** Everything that the rules say of such a level. */
    public static Problems check(Read read, Optional<Shown> shown, PledgeLevel level) {
        Problems problems = new Problems();
        LedgerRules.check(level, problems);
        if (level.amount().minor() <= 0) {
            problems.fault(
                    "amount",
                    level.amount().text(SettingsStore.get(read).moneyDigits()),
                    "is no pledge",
                    "write what a supporter pays, more than nothing");
        }
        boolean named = PledgeLevelStore.TABLE.list(read).stream()
                .filter(other -> shown.map(s -> s.row() != other.row()).orElse(true))
                .anyMatch(other -> other.value().name().equalsIgnoreCase(level.name()));
        if (named) {
            problems.fault("name", level.name(), "is the name of another level", "choose another name");
        }
        return problems;
    }
}
