package weekwright.web.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.base.Shape;
import weekwright.build.SaveStage;
import weekwright.build.SaveTask;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** The second step of the guided start: stages with rough hours only, and the first tasks of the first stage. */
public final class StartBuildPage implements Page {
    static final List<Integer> STAGES = List.of(1, 2, 3, 4);
    static final List<Integer> TASKS = List.of(1, 2, 3);

    /**
     * @param stages numbers of the lines for stages
     * @param tasks numbers of the lines for tasks
     * @param there what was entered before, with where it is changed
     * @param first the stage that the tasks will belong to; empty while there is none
     */
    public record View(
            Form form, List<Integer> stages, List<Integer> tasks, List<Form.Choice> there, Optional<String> first) {}

    private record Row(String name, Optional<Hours> hours, String field) {}

    @Override
    public View show(Request request) {
        return request.read(read -> {
            List<Form.Choice> there = new ArrayList<>();
            for (Stored<Stage> stage : StageStore.inOrder(read)) {
                there.add(new Form.Choice(
                        "/build/stages/" + stage.value().id() + "/edit",
                        stage.value().name(),
                        hours("roughly", stage.value().roughLikely())));
                TaskStore.ofStage(read, stage.value().id())
                        .forEach(task -> there.add(new Form.Choice(
                                "/build/tasks/" + task.value().id() + "/edit",
                                stage.value().name() + ": " + task.value().title(),
                                task.value().likely().isPresent() ? "" : "no hours, guessed")));
            }
            return new View(request.form(""), STAGES, TASKS, there, first(read).map(Stage::name));
        });
    }

    private static String hours(String word, Optional<Hours> hours) {
        return hours.map(h -> word + " " + Formats.hoursLong(h.minutes())).orElse("");
    }

    private static Optional<Stage> first(Read read) {
        return StageStore.inOrder(read).stream().map(Stored::value).findFirst();
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        List<Row> stages = rows(form, "stage", "Stage", STAGES);
        List<Row> tasks = rows(form, "task", "Task", TASKS);
        return request.save(write -> {
            Problems problems = new Problems();
            for (Row row : stages) {
                told(problems, row.field(), () -> stage(write, row));
            }
            Optional<Stage> first = first(write);
            if (first.isEmpty() && !tasks.isEmpty() && problems.list().isEmpty()) {
                problems.fault("stage1", "", "is missing", "name the stage that these tasks belong to");
            }
            for (Row row : first.isEmpty() ? List.<Row>of() : tasks) {
                told(problems, row.field(), () -> task(write, first.get().id(), row, request));
            }
            Rejected.ifFaults(problems);
            int count = stages.size() + tasks.size();
            Saved next = Saved.to("/start/money");
            return count == 0 ? next : next.saying("Kept: " + Formats.counted(count, "line", "lines") + ".");
        });
    }

    private static List<Row> rows(FormReader form, String word, String line, List<Integer> numbers) {
        List<Row> rows = new ArrayList<>();
        for (int number : numbers) {
            String field = word + number;
            String name = form.text(field);
            Optional<Hours> hours = form.read(field + "_hours", Hours.class);
            if (!name.isEmpty()) {
                rows.add(new Row(name, hours, field));
            } else if (!form.text(field + "_hours").isEmpty()) {
                form.fault(field, "", line + " " + number + " has hours but no name", "write what it is called");
            }
        }
        return rows;
    }

    private static void stage(Write write, Row row) throws Rejected, Stale {
        String hours = row.hours().map(Hours::text).orElse("");
        Map<String, String> texts = Map.of("id", "new", "name", row.name(), "rough_likely", hours);
        Stage stage = parsed(write, StageStore.TABLE.shape(), texts);
        SaveStage.save(
                write,
                Optional.empty(),
                StageStore.TABLE.shape().with(stage, "id", StageStore.nextId(write, row.name())));
    }

    private static void task(Write write, Id stage, Row row, Request request) throws Rejected, Stale {
        Map<String, String> texts = Map.of(
                "id",
                TaskStore.nextId(write, stage).value(),
                "stage",
                stage.value(),
                "title",
                row.name(),
                "kind",
                "work",
                "likely",
                row.hours().map(Hours::text).orElse(""));
        Task task = parsed(write, TaskStore.TABLE.shape(), texts);
        SaveTask.save(write, Optional.empty(), task, List.of(), request.today());
    }

    private static <R extends Record> R parsed(Write write, Shape<R> shape, Map<String, String> texts) throws Rejected {
        Settings settings = SettingsStore.get(write);
        Problems problems = new Problems();
        Optional<R> row = shape.parse(texts, settings.typed(), problems);
        Rejected.ifFaults(problems);
        return row.orElseThrow();
    }

    /** One row's write. */
    interface Work {
        void run() throws Rejected, Stale;
    }

    /** Does one row; its faults are told at its own field, so that all rows are told at once. */
    static void told(Problems all, String field, Work work) throws Stale {
        try {
            work.run();
        } catch (Rejected rejected) {
            for (Problem problem : rejected.problems()) {
                all.fault(field, problem.read(), problem.rule(), problem.remedy());
            }
        }
    }
}
