package weekwright.build;

import static weekwright.base.RowRules.needed;
import static weekwright.base.RowRules.rising;

import weekwright.base.Problems;

/** What must hold within one piece of equipment. */
public final class EquipmentRules {
    private EquipmentRules() {}

    public static void check(Equipment equipment, Problems problems) {
        needed("name", equipment.name(), "write what it is called", problems);
        HazardCodes.check("hazards", equipment.hazards(), problems);
        rising("back_", equipment.backLow(), equipment.backLikely(), equipment.backHigh(), problems);
        if (equipment.backLikely().isPresent() && equipment.downFrom().isEmpty()) {
            problems.remark(
                    "down_from",
                    "",
                    "is missing, so the days until it is back count for nothing",
                    "write the day from which it is down");
        }
    }
}
