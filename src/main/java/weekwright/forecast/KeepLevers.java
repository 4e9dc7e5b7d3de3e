package weekwright.forecast;

import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.base.RowRules;
import weekwright.db.Read;
import weekwright.db.Write;

/** Keeps levers under a name. */
public final class KeepLevers {
    private KeepLevers() {}

    /** What must hold within one row. */
    public static void check(KeptLevers row, Problems problems) {
        RowRules.needed("name", row.name(), "give it a name", problems);
        if (row.pulled().isEmpty()) {
            problems.fault("pulled", "", "is missing", "pull a lever first");
        }
        for (String word : row.pulled().list()) {
            if (!word.matches("[^=]+=[^=]+")) {
                problems.fault("pulled", word, "is no lever", "write a name, = and a value, such as helper=16");
            }
        }
    }

    /** Adds them; a name that is there already is refused. */
    public static void keep(Write write, KeptLevers row) throws Rejected {
        Problems problems = new Problems();
        check(row, problems);
        if (taken(write, row.name())) {
            problems.fault("name", row.name(), "is there already", "give it another name, or remove the other first");
        }
        Rejected.ifFaults(problems);
        KeptLeversStore.TABLE.insert(write, row);
    }

    private static boolean taken(Read read, String name) {
        return KeptLeversStore.TABLE.values(read).stream()
                .anyMatch(other -> other.name().equalsIgnoreCase(name));
    }
}
