package weekwright.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Words;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Removes equipment, and takes it out of the tasks that hold it; days that it stood stay on record without its name. */
public final class RemoveEquipment {
    private RemoveEquipment() {}

    /** The tasks that hold it, in stored order. */
    public static List<Stored<Task>> tasks(Read read, Id equipment) {
        return TaskStore.TABLE.list(read).stream()
                .filter(task -> EquipmentNeeds.of(task.value()).counts().keySet().stream()
                        .anyMatch(id -> id.same(equipment)))
                .toList();
    }

    public static void remove(Write write, Shown shown, Id equipment) throws Stale {
        for (Stored<Task> task : tasks(write, equipment)) {
            List<String> left = new ArrayList<>(task.value().equipment().list());
            left.removeIf(word -> new Id(word.replaceFirst(":.*", "")).same(equipment));
            TaskStore.TABLE.update(
                    write,
                    task.row(),
                    task.version(),
                    TaskStore.TABLE.shape().with(task.value(), "equipment", new Words(left)));
        }
        for (Stored<Stopped> day : StoppedStore.TABLE.where(write, "equipment", equipment.value())) {
            StoppedStore.TABLE.update(
                    write,
                    day.row(),
                    day.version(),
                    StoppedStore.TABLE.shape().with(day.value(), "equipment", Optional.empty()));
        }
        EquipmentStore.TABLE.delete(write, shown.row(), shown.version());
    }
}
