package weekwright.funds;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.Rejected;
import weekwright.build.DateRules;
import weekwright.build.Faults;
import weekwright.build.References;
import weekwright.build.SettingsStore;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Adds a material line or changes one; money that was paid for it is no matter of this. */
public final class SaveMaterial {
    private SaveMaterial() {}

    /** A line as it was kept, and what was odd but possible. */
    public record Saved(Stored<Material> line, List<Problem> remarks) {}

    /**
     * @param shown the row that is changed; empty adds
     * @param today in the project's zone
     */
    public static Saved save(Write write, Optional<Shown> shown, Material line, LocalDate today)
            throws Rejected, Stale {
        Problems problems = new Problems();
        MaterialRules.check(line, problems);
        DateRules.check(
                MaterialStore.TABLE.shape(),
                line,
                SettingsStore.get(write).project().started(),
                problems);
        References.check(write, MaterialStore.TABLE.shape(), line, problems);
        line.ordered().ifPresent(day -> MaterialChange.mustBePast("ordered", day, today, problems));
        line.received().ifPresent(day -> MaterialChange.mustBePast("received", day, today, problems));
        overdrawn(write, line, problems);
        Faults.refuse(problems);
        Stored<Material> kept = shown.isPresent()
                ? MaterialStore.TABLE.update(
                        write, shown.get().row(), shown.get().version(), line)
                : MaterialStore.TABLE.insert(write, line);
        return new Saved(kept, problems.remarks());
    }

    /** More taken out of the yard than lies there, as far as the units are the same; a remark. */
    static void overdrawn(Read read, Material line, Problems problems) {
        Optional<StockItem> item =
                line.stock().flatMap(id -> StockItemStore.TABLE.find(read, id)).map(Stored::value);
        if (item.isEmpty() || item.get().quantity().isEmpty()) {
            return;
        }
        if (!item.get().unit().equals(line.unit())) {
            problems.remark(
                    "stock",
                    item.get().item(),
                    "is counted in "
                            + (item.get().unit().isEmpty()
                                    ? "no unit"
                                    : item.get().unit()) + ", so nobody can say whether it is enough",
                    "");
            return;
        }
        BigDecimal taken = line.quantity().orElse(Quantity.ZERO).value();
        for (Material other : MaterialStore.TABLE
                .where(read, "stock", item.get().id().value())
                .stream()
                .map(Stored::value)
                .toList()) {
            if (!other.id().same(line.id()) && other.unit().equals(line.unit())) {
                taken = taken.add(other.quantity().orElse(Quantity.ZERO).value());
            }
        }
        if (taken.compareTo(item.get().quantity().get().value()) > 0) {
            problems.remark(
                    "stock",
                    item.get().item(),
                    "has " + item.get().quantity().get() + " " + item.get().unit() + ", and its lines take "
                            + new Quantity(taken),
                    "take less, or buy the rest");
        }
    }
}
