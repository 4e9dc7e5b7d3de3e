package weekwright.web.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.build.SaveTasks;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.TaskStore;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Remarks;

/** The tasks of a stage as one table to type in; a block from a spreadsheet can be pasted. All of it is saved, or nothing. */
public final class BuildStageTasksEditPage implements Page {
    /** A row; {@code number} counts from 0, {@code place} from 1. */
    public record Row(int number, int place) {}

    public record View(
            Form form,
            String id,
            String name,
            List<Row> rows,
            List<String> columns,
            Map<String, String> heads,
            List<RowHazards.Line> proposed) {}

    private static final Map<String, String> HEADS = Map.of(
            "title", "What is done",
            "likely", "Hours or days",
            "low", "at best",
            "high", "at worst",
            "pieces", "Pieces",
            "kind", "work or wait",
            "hands", "Hands",
            "trades", "Trades",
            "after", "After");

    @Override
    public View show(Request request) {
        Stage stage = stage(request);
        Form form = request.form("");
        if (!request.wasRefused("")) {
            Map<String, List<String>> cells = request.read(read -> TaskCells.filled(
                    read,
                    TaskStore.ofStage(read, stage.id()).stream()
                            .filter(task -> task.value().dropped().isEmpty())
                            .toList()));
            form = new Form(form.csrf(), form.answerKey(), form.version(), cells, form.errors());
        } else if (form.isRefused()) {
            Form refused = form;
            Map<String, List<String>> cells = request.read(read -> StaleCells.told(read, refused));
            form = new Form(form.csrf(), form.answerKey(), form.version(), cells, form.errors());
        }
        List<Row> rows = new ArrayList<>();
        while (form.values().containsKey("title." + rows.size())) {
            rows.add(new Row(rows.size(), rows.size() + 1));
        }
        return new View(form, stage.id().value(), stage.name(), rows, TaskCells.COLUMNS, HEADS, RowHazards.shown(form));
    }

    private static Stage stage(Request request) {
        return request.read(read -> StageStore.TABLE.find(read, request.id("id")))
                .map(Stored::value)
                .orElseThrow(() -> new NotFound("There is no stage " + request.part("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stage stage = stage(request);
        if (form.act().equals("more")) {
            return TaskCells.more(form);
        }
        if (form.act().equals("paste") || !form.texts("paste").isEmpty()) {
            return TaskCells.paste(form);
        }
        List<SaveTasks.Row> rows = request.read(read -> TaskCells.read(form, read, stage.id()));
        Optional<Answer> proposal = form.problems().isEmpty()
                ? request.read(read -> RowHazards.proposal(form, read, rows))
                : Optional.empty();
        if (proposal.isPresent()) {
            return proposal.get();
        }
        List<SaveTasks.Row> withHazards = RowHazards.ticked(form, rows);
        return request.save(write -> {
            SaveTasks.Saved saved = SaveTasks.save(write, withHazards, request.today());
            return Saved.to("/build/stages/" + stage.id())
                    .saying(said(saved)
                            + Remarks.said(
                                    saved.remarks().stream().distinct().limit(5).toList()));
        });
    }

    private static String said(SaveTasks.Saved saved) {
        if (saved.added() + saved.changed() == 0) {
            return "Nothing was changed.";
        }
        String added = saved.added() == 0 ? "" : Formats.count(saved.added(), "task") + " added";
        String changed = saved.changed() == 0 ? "" : Formats.count(saved.changed(), "task") + " changed";
        return added + (added.isEmpty() || changed.isEmpty() ? "" : ", ") + changed + ".";
    }
}
