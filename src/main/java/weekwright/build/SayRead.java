package weekwright.build;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Keeps that somebody has read the cautions of a hazard; read again, the day moves on. */
public final class SayRead {
    private SayRead() {}

    /** What must hold within one row. */
    public static void check(HazardRead row, Problems problems) {
        HazardCodes.check("hazard", row.hazard(), problems);
    }

    public static void say(Write write, String hazard, Id crew, LocalDate day) throws Rejected, Stale {
        HazardRead row = new HazardRead(hazard, crew, day);
        Problems problems = new Problems();
        check(row, problems);
        References.check(write, HazardReadStore.TABLE.shape(), row, problems);
        Rejected.ifFaults(problems);
        Optional<Stored<HazardRead>> stands = HazardReadStore.of(write, crew, hazard);
        if (stands.isEmpty()) {
            HazardReadStore.TABLE.insert(write, row);
        } else if (!stands.get().value().equals(row)) {
            HazardReadStore.TABLE.update(write, stands.get().row(), stands.get().version(), row);
        }
    }
}
