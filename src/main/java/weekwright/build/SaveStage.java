package weekwright.build;

import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Adds a stage or changes one. */
public final class SaveStage {
    private SaveStage() {}

    /** @param shown the row that is changed; empty adds */
    public static Stored<Stage> save(Write write, Optional<Shown> shown, Stage stage) throws Rejected, Stale {
        Problems problems = new Problems();
        StageRules.check(stage, problems);
        boolean named = StageStore.TABLE.list(write).stream()
                .filter(other -> shown.map(s -> s.row() != other.row()).orElse(true))
                .anyMatch(other -> other.value().name().equalsIgnoreCase(stage.name()));
        if (named) {
            problems.fault("name", stage.name(), "is the name of another stage", "choose another name");
        }
        Faults.refuse(problems);
        return shown.isPresent()
                ? StageStore.TABLE.update(write, shown.get().row(), shown.get().version(), stage)
                : StageStore.TABLE.insert(write, stage);
    }
}
