package weekwright.build;

import static weekwright.base.RowRules.needed;
import static weekwright.base.RowRules.rising;

import weekwright.base.Problems;

/** What must hold within one stage. */
public final class StageRules {
    private StageRules() {}

    public static void check(Stage stage, Problems problems) {
        needed("name", stage.name(), "write what the stage is called", problems);
        rising("rough_", stage.roughLow(), stage.roughLikely(), stage.roughHigh(), problems);
    }
}
