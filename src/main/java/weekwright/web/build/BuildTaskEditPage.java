package weekwright.web.build;

import java.util.Optional;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Changes a task and what it follows. */
public final class BuildTaskEditPage implements Page {
    /** @param lists what the fields are chosen from */
    public record View(Form form, TaskLists lists, String id, String title) {}

    @Override
    public View show(Request request) {
        Stored<Task> task = task(request);
        return request.read(read -> {
            Form form = request.form("", task);
            if (!request.wasRefused("")) {
                form = TaskFields.filled(read, task.value(), form);
            }
            return new View(
                    form,
                    TaskLists.of(read, Optional.of(task.value().id()), form),
                    task.value().id().value(),
                    task.value().title());
        });
    }

    private static Stored<Task> task(Request request) {
        return request.read(read -> TaskStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no task " + request.part("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        return TaskFields.change(request, task(request));
    }
}
