package weekwright.web.build;

import java.util.Map;
import java.util.Optional;
import weekwright.base.Shape;
import weekwright.build.SaveStage;
import weekwright.build.Shown;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.db.Stored;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** The form of a stage, for adding one and for changing one. */
final class StageFields {
    private static final String[] COLUMNS = {
        "name", "order", "weight", "side", "rough_low", "rough_likely", "rough_high", "rough_cost", "description"
    };

    private StageFields() {}

    static Answer add(Request request) throws Exception {
        FormReader form = request.form();
        // an id is proposed when the row is written; until then any stands in its place
        Optional<Stage> read = form.record(Stage.class, Map.of("id", "new"), COLUMNS);
        return request.save(write -> {
            Stage stage = Shape.of(Stage.class)
                    .with(
                            read.orElseThrow(),
                            "id",
                            StageStore.nextId(write, read.get().name()));
            Stored<Stage> kept = SaveStage.save(write, Optional.empty(), stage);
            return Saved.to("/build/stages/" + kept.value().id()).saying("The stage is added. Now its tasks.");
        });
    }

    static Answer change(Request request, Stored<Stage> old) throws Exception {
        FormReader form = request.form();
        Optional<Stage> edited = form.edited(old.value(), COLUMNS);
        return request.save(write -> {
            SaveStage.save(write, Optional.of(new Shown(old.row(), form.version())), edited.orElseThrow());
            return Saved.to("/build/stages/" + old.value().id()).saying("The stage is saved.");
        });
    }
}
