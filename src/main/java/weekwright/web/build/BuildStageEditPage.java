package weekwright.web.build;

import java.util.Map;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.TaskStore;
import weekwright.db.Stored;
import weekwright.funds.DuplicateStage;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Changes a stage. */
public final class BuildStageEditPage implements Page {
    /** @param currency its mark */
    public record View(Form form, Form duplicate, String id, String name, String currency) {}

    @Override
    public View show(Request request) {
        Stored<Stage> stage = stage(request);
        return new View(
                request.form("", stage),
                request.form("duplicate", Map.of("copy", stage.value().name() + ", again")),
                stage.value().id().value(),
                stage.value().name(),
                request.formats().currencyMark());
    }

    private static Stored<Stage> stage(Request request) {
        return request.read(read -> StageStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no stage " + request.part("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<Stage> stage = stage(request);
        if (!form.act().equals("duplicate")) {
            return StageFields.change(request, stage);
        }
        String name = form.neededText("copy");
        return request.save(write -> {
            try {
                Stored<Stage> copy = DuplicateStage.duplicate(write, stage, name, request.today());
                int tasks = TaskStore.ofStage(write, copy.value().id()).size();
                return Saved.to("/build/stages/" + copy.value().id())
                        .saying("It is made anew with " + Formats.count(tasks, "task")
                                + ", their links and materials; hours, days and orders stay with the first.");
            } catch (Rejected rejected) {
                throw new Rejected(rejected.problems().stream()
                        .map(p -> Problem.fault(
                                p.column().equals("name") ? "copy" : p.column(), p.read(), p.rule(), p.remedy()))
                        .toList());
            }
        });
    }
}
