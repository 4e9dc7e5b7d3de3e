package weekwright.web.build;

import java.util.Optional;
import weekwright.build.MarkDropped;
import weekwright.build.Said;
import weekwright.build.Shown;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Shows what goes with a task, then removes it; where something happened on it, offers to drop it instead. */
public final class BuildTaskRemovePage implements Page {
    /** @param going what goes, what stays, and what holds it */
    public record View(Form form, Form dropped, String id, String title, boolean open, TaskRemoval.Going going) {}

    @Override
    public View show(Request request) {
        Stored<Task> task = task(request);
        return request.read(read -> new View(
                request.form("", task),
                request.form("dropped", task),
                task.value().id().value(),
                task.value().title(),
                task.value().isOpen(),
                TaskRemoval.of(read, task.value())));
    }

    private static Stored<Task> task(Request request) {
        return request.read(read -> TaskStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no task " + request.part("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<Task> task = task(request);
        if (form.act().equals("dropped")) {
            return request.save(write -> {
                MarkDropped.mark(write, new Shown(task.row(), form.version()), request.today(), request.today());
                return Saved.to("/build/tasks/" + task.value().id())
                        .saying("It is dropped: it holds nothing up any more, and its record stays.");
            });
        }
        return request.save(write -> {
            Optional<String> went = Optional.of(
                            TaskRemoval.of(write, task.value()).goes())
                    .filter(list -> !list.isEmpty())
                    .map(Said::list);
            TaskRemoval.remove(write, task, form.version());
            return Saved.to("/build/stages/" + task.value().stage())
                    .saying("\u201c" + task.value().title() + "\u201d is removed"
                            + went.map(list -> " with " + list).orElse("") + ".");
        });
    }
}
