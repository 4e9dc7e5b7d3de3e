package weekwright.web.build;

import java.util.Map;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Lists a material that a task needs. */
public final class BuildTaskMaterialsNewPage implements Page {
    /** @param lists what the fields are chosen from */
    public record View(Form form, MaterialFields.Lists lists, String taskId, String task) {}

    @Override
    public View show(Request request) {
        Task task = request.read(read -> TaskStore.TABLE.find(read, request.id("id")))
                .map(Stored::value)
                .orElseThrow(() -> new NotFound("There is no task " + request.part("id") + "."));
        Form form =
                request.form(Calculators.act(request), Map.of("task", task.id().value()));
        return request.read(read -> new View(
                form, MaterialFields.lists(request, read, form), task.id().value(), task.title()));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return MaterialFields.add(request);
    }
}
