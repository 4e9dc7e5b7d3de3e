package weekwright.build;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import weekwright.base.Id;
import weekwright.db.Read;

/** The hazards of a task and of the equipment that it needs, and the company that they ask for (rules 119 and 125). */
public final class TaskHazards {
    private TaskHazards() {}

    public static Set<String> of(Read read, Task task) {
        Map<Id, Equipment> equipment = new HashMap<>();
        EquipmentStore.TABLE.values(read).forEach(one -> equipment.put(one.id(), one));
        return EquipmentNeeds.hazards(task, equipment);
    }

    /** The company that the crew set, else the one that the hazards ask for. */
    public static Task.Company company(Read read, Task task) {
        return task.company().orElseGet(() -> HazardCodes.company(of(read, task)));
    }
}
