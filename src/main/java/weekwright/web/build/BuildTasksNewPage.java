package weekwright.web.build;

import java.util.Map;
import java.util.Optional;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Adds a task, to the stage named after the question mark. */
public final class BuildTasksNewPage implements Page {
    /** @param lists what the fields are chosen from */
    public record View(Form form, TaskLists lists, String stage) {}

    @Override
    public View show(Request request) {
        String stage = request.query("stage");
        Form form = request.form("", Map.of("stage", stage, "kind", "work"));
        return request.read(read -> new View(form, TaskLists.of(read, Optional.empty(), form), stage));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return TaskFields.add(request);
    }
}
