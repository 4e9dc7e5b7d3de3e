package weekwright.web.trial;

import java.util.Map;
import java.util.Optional;
import weekwright.base.Hours;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** A page on which the kit is tried: edits a stage, deletes it, and fails when told to. */
public final class TrialStage implements Page {
    public record View(long version, Form form, Form hours) {}

    @Override
    public View show(Request request) {
        Stored<Stage> row = row(request);
        return new View(row.version(), request.form("", row), request.form("hours", Map.of("hours", "1")));
    }

    private static Stored<Stage> row(Request request) {
        return request.read(read -> StageStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no stage " + request.id("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        if (form.act().equals("fail")) {
            throw new IllegalStateException("a secret of the program");
        }
        if (form.act().equals("hours")) {
            form.needed("hours", Hours.class);
            form.check();
            return Answer.to("/trial/stages/weir");
        }
        if (form.act().equals("delete")) {
            request.crewOnly("Only the crew deletes a stage.");
            form.ignoringFields();
            return request.save(write -> {
                StageStore.TABLE.delete(write, row(request).row(), form.version());
                return Saved.to("/trial/stages/weir").saying("Stage deleted.");
            });
        }
        Stored<Stage> row = row(request);
        Optional<Stage> edited = form.edited(row.value(), "name", "rough_likely");
        return request.save(write -> {
            StageStore.TABLE.update(write, row.row(), form.version(), edited.orElseThrow());
            return Saved.to("/trial/stages/weir").saying("Stage saved.");
        });
    }
}
