package weekwright.funds;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Keeps the day for which a supplier promised an ordered line. */
public final class PromiseMaterial {
    private PromiseMaterial() {}

    public static Stored<Material> promise(Write write, Shown shown, LocalDate promised) throws Rejected, Stale {
        Material line = MaterialChange.shown(write, shown);
        Problems problems = new Problems();
        MaterialChange.notReceived(line, problems);
        if (line.ordered().isEmpty()) {
            problems.fault("promised", line.item(), "is not ordered yet", "say first when it was ordered");
        }
        MaterialChange.notBefore("promised", promised, line.ordered(), "ordered", problems);
        Faults.refuse(problems);
        return MaterialStore.TABLE.update(
                write,
                shown.row(),
                shown.version(),
                MaterialChange.with(line, Map.of("promised", Optional.of(promised))));
    }
}
