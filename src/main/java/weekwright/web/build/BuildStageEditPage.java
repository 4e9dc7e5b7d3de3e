package weekwright.web.build;

import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Changes a stage. */
public final class BuildStageEditPage implements Page {
    /** @param currency its mark */
    public record View(Form form, String id, String name, String currency) {}

    @Override
    public View show(Request request) {
        Stored<Stage> stage = stage(request);
        return new View(
                request.form("", stage),
                stage.value().id().value(),
                stage.value().name(),
                new Formats(request.settings().project().currency(), request.today()).currencyMark());
    }

    private static Stored<Stage> stage(Request request) {
        return request.read(read -> StageStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no stage " + request.part("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return StageFields.change(request, stage(request));
    }
}
