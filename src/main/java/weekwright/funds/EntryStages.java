package weekwright.funds;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import weekwright.build.TaskStore;
import weekwright.db.Read;

/** Which stage an entry of the books belongs to: its own, else that of its task, else that of its material line's task. */
public final class EntryStages {
    private final Map<String, String> ofTask = new HashMap<>();
    private final Map<String, String> ofMaterial = new HashMap<>();

    public EntryStages(Read read) {
        TaskStore.TABLE
                .values(read)
                .forEach(task -> ofTask.put(task.id().folded(), task.stage().folded()));
        MaterialStore.TABLE
                .values(read)
                .forEach(line -> ofMaterial.put(
                        line.id().folded(), ofTask.getOrDefault(line.task().folded(), "")));
    }

    /** The stage's id in lower case; empty where the entry belongs to none. */
    public Optional<String> of(LedgerEntry entry) {
        return entry.stage()
                .map(id -> id.folded())
                .or(() -> entry.task().map(task -> ofTask.get(task.folded())))
                .or(() -> entry.material().map(line -> ofMaterial.get(line.folded())));
    }
}
