package weekwright.web.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.Said;
import weekwright.build.Shown;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.funds.LedgerEntryStore;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Shows what goes with a stage, then removes it with its tasks; a stage in which something happened stays. */
public final class BuildStageRemovePage implements Page {
    /** A task of it. */
    public record Line(String id, String title, String goes) {}

    /**
     * @param tasks those that go with it
     * @param held what happened in it, so that it cannot be removed
     * @param notes build notes that no longer name it
     */
    public record View(Form form, String id, String name, List<Line> tasks, List<String> held, int notes) {}

    @Override
    public View show(Request request) {
        Stored<Stage> stage = stage(request);
        return request.read(read -> new View(
                request.form("", stage),
                stage.value().id().value(),
                stage.value().name(),
                TaskStore.ofStage(read, stage.value().id()).stream()
                        .map(Stored::value)
                        .map(task -> new Line(
                                task.id().value(),
                                task.title(),
                                Said.list(TaskRemoval.of(read, task).goes())))
                        .toList(),
                held(read, stage.value()),
                NoteStore.TABLE.where(read, "stage", stage.value().id().value()).size()));
    }

    private static List<String> held(Read read, Stage stage) {
        List<String> held = new ArrayList<>();
        for (Stored<Task> task : TaskStore.ofStage(read, stage.id())) {
            List<String> own = TaskRemoval.of(read, task.value()).held();
            if (!own.isEmpty()) {
                held.add(task.value().title() + ": " + Said.list(own));
            }
        }
        int booked =
                LedgerEntryStore.TABLE.where(read, "stage", stage.id().value()).size();
        if (booked > 0) {
            held.add(Said.count(booked, "entry in the books", "entries in the books"));
        }
        return held;
    }

    private static Stored<Stage> stage(Request request) {
        return request.read(read -> StageStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no stage " + request.part("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<Stage> stage = stage(request);
        return request.save(write -> {
            List<String> held = held(write, stage.value());
            if (!held.isEmpty()) {
                throw new Rejected(Problem.fault(
                        "",
                        stage.value().name(),
                        "holds what happened: " + Said.list(held),
                        "move these tasks to another stage, or drop them and keep the stage"));
            }
            List<Stored<Task>> tasks = TaskStore.ofStage(write, stage.value().id());
            for (Stored<Task> task : tasks) {
                // removing one may change another of them: what was done again, say
                Stored<Task> now = TaskStore.TABLE.find(write, task.row()).orElseThrow();
                TaskRemoval.remove(write, now, now.version());
            }
            for (Stored<Note> note :
                    NoteStore.TABLE.where(write, "stage", stage.value().id().value())) {
                NoteStore.TABLE.update(
                        write,
                        note.row(),
                        note.version(),
                        NoteStore.TABLE.shape().with(note.value(), "stage", Optional.empty()));
            }
            Shown shown = new Shown(stage.row(), form.version());
            StageStore.TABLE.delete(write, shown.row(), shown.version());
            return Saved.to("/build")
                    .saying("\u201c" + stage.value().name() + "\u201d is removed"
                            + (tasks.isEmpty() ? "." : " with " + Said.count(tasks.size(), "task", "tasks") + "."));
        });
    }
}
