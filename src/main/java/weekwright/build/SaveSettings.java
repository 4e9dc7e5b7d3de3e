package weekwright.build;

import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.db.Write;

/** Changes one of the eight tables of settings. */
public final class SaveSettings {
    private SaveSettings() {}

    /**
     * @param table one of the tables of {@link SettingsStore}
     * @param version as it was shown
     */
    public static <R extends Record> Stored<R> save(Write write, Table<R> table, long version, R row)
            throws Rejected, Stale {
        Faults.refuse(check(write, row));
        return SettingsStore.update(write, table, version, row);
    }

    /** Everything that the rules say of such a table of settings. */
    public static Problems check(Read read, Record row) {
        Problems problems = new Problems();
        if (row instanceof Project project) {
            Project now = SettingsStore.get(read).project();
            if (!project.currency().isBlank() && !project.currency().equals(now.currency())) {
                problems.fault(
                        "currency",
                        project.currency(),
                        "is not " + now.currency() + ", in which all amounts here stand",
                        "export the project, change it there, and import it again");
            }
        }
        if (row instanceof Publishing publishing) {
            SettingsRules.dates(publishing, SettingsStore.get(read).project(), problems);
        }
        check(row, problems);
        return problems;
    }

    private static void check(Record row, Problems problems) {
        if (row instanceof Project project) {
            SettingsRules.check(project, problems);
        } else if (row instanceof Publishing publishing) {
            SettingsRules.check(publishing, problems);
        } else if (row instanceof Weather weather) {
            SettingsRules.check(weather, problems);
        } else if (row instanceof MoneySettings money) {
            SettingsRules.check(money, problems);
        } else if (row instanceof BuildLog log) {
            SettingsRules.check(log, problems);
        }
    }
}
