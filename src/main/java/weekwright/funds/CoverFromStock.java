package weekwright.funds;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.Said;
import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Write;

/** "This covers …": a line is taken from the yard and frees its money (rule 136), or is to be had elsewhere again. */
public final class CoverFromStock {
    private CoverFromStock() {}

    /**
     * @param stock empty takes it off the yard's list again
     * @param today in the project's zone
     */
    public static SaveMaterial.Saved cover(Write write, Shown shown, Optional<Id> stock, LocalDate today)
            throws Rejected, Stale {
        Material line = MaterialChange.shown(write, shown);
        if (stock.isPresent() && line.received().isPresent()) {
            throw new Rejected(Problem.fault(
                    "material",
                    line.item(),
                    "came on " + Said.day(line.received().get()),
                    "choose a line still to come"));
        }
        if (stock.isPresent() && line.ordered().isPresent()) {
            throw new Rejected(Problem.fault(
                    "material",
                    line.item(),
                    "was ordered on " + Said.day(line.ordered().get()),
                    "call the order off on its own sheet first"));
        }
        return SaveMaterial.save(write, Optional.of(shown), MaterialChange.with(line, Map.of("stock", stock)), today);
    }
}
