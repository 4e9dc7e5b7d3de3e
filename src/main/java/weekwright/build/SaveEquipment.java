package weekwright.build;

import java.util.List;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Adds a machine or a set of things, or changes one. */
public final class SaveEquipment {
    private SaveEquipment() {}

    /** Equipment as it was kept, and what was odd but possible. */
    public record Saved(Stored<Equipment> equipment, List<Problem> remarks) {}

    /** @param shown the row that is changed; empty adds */
    public static Saved save(Write write, Optional<Shown> shown, Equipment equipment) throws Rejected, Stale {
        Problems problems = new Problems();
        EquipmentRules.check(equipment, problems);
        DateRules.check(
                EquipmentStore.TABLE.shape(),
                equipment,
                SettingsStore.get(write).project().started(),
                problems);
        References.check(write, EquipmentStore.TABLE.shape(), equipment, problems);
        boolean named = EquipmentStore.TABLE.list(write).stream()
                .filter(other -> shown.map(s -> s.row() != other.row()).orElse(true))
                .anyMatch(other -> other.value().name().equalsIgnoreCase(equipment.name()));
        if (named) {
            problems.fault("name", equipment.name(), "is the name of other equipment", "choose another name");
        }
        Faults.refuse(problems);
        Stored<Equipment> kept = shown.isPresent()
                ? EquipmentStore.TABLE.update(
                        write, shown.get().row(), shown.get().version(), equipment)
                : EquipmentStore.TABLE.insert(write, equipment);
        return new Saved(kept, problems.remarks());
    }
}
