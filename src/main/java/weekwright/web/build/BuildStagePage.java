package weekwright.web.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.CloseTasks;
import weekwright.build.HoursEntry;
import weekwright.build.LayAside;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskFigures;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.FinishFilmed;
import weekwright.forecast.Forecast;
import weekwright.forecast.HeldWords;
import weekwright.forecast.MovedStore;
import weekwright.forecast.Names;
import weekwright.funds.StageCosts;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.render.chart.CauseBar;
import weekwright.render.chart.Tally;
import weekwright.web.kit.Access;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.CauseWords;
import weekwright.web.parts.CostLines;
import weekwright.web.parts.HeldBy;
import weekwright.web.parts.Lands;
import weekwright.web.parts.Outlook;

/** One stage: its strip, what holds it, its tasks with their tallies, its materials, its notes. */
public final class BuildStagePage implements Page {
    private static final int NOTES_MOST = 6;

    /**
     * @param moved by how much its date moved since a week ago and by what; empty where that is not known
     * @param timber it as a drawing; empty without a forecast or a day
     * @param causes the bar of what holds it; empty where nothing does
     */
    public record View(
            String id,
            String name,
            String above,
            String lead,
            String description,
            String workFirst,
            String moved,
            Optional<StageTimber> timber,
            String causes,
            List<CauseBar.Cause> causeList,
            List<Line> tasks,
            Optional<TaskFigures> sum,
            List<StageMaterials.Line> materials,
            String materialsRemark,
            StageCosts costs,
            String costsSaid,
            List<CostLines.Line> costLines,
            Optional<StageEarned.Table> earned,
            List<NoteLine> notes,
            boolean anyOpen,
            LocalDate today,
            Form close) {}

    /** A task as a line; {@code state}: done, dropped, under way, laid aside, waiting, to come. */
    public record Line(
            String id,
            String title,
            String state,
            boolean open,
            boolean idle,
            TaskFigures hours,
            String tally,
            String lands) {}

    /** A note as a line. */
    public record NoteLine(String id, LocalDate date, String title) {}

    @Override
    public View show(Request request) {
        Id id = request.id("id");
        return request.read(read -> {
            Stage stage = StageStore.TABLE
                    .find(read, id)
                    .map(Stored::value)
                    .orElseThrow(() -> new NotFound("There is no stage " + id + "."));
            return view(request, read, stage);
        });
    }

    private View view(Request request, Read read, Stage stage) {
        Formats formats = request.formats();
        var shown = Outlook.shown(request);
        Optional<Forecast> forecast = shown.map(s -> s.forecast());
        Optional<Forecast.Stage> ahead =
                forecast.flatMap(f -> f.stage(stage.id().value()));
        List<Task> tasks =
                TaskStore.ofStage(read, stage.id()).stream().map(Stored::value).toList();
        List<Task> kept =
                tasks.stream().filter(task -> task.dropped().isEmpty()).toList();
        Map<String, List<HoursEntry>> entries = TaskFigures.entries(read);
        Map<String, TaskFigures> figures = new HashMap<>();
        tasks.forEach(task -> figures.put(
                task.id().value(),
                TaskFigures.of(task, entries.getOrDefault(task.id().folded(), List.of()))));
        int most = figures.values().stream().mapToInt(TaskFigures::most).max().orElse(0);
        List<Line> lines = new ArrayList<>();
        for (Task task : tasks) {
            TaskFigures hours = figures.get(task.id().value());
            Optional<Forecast.Days> days =
                    forecast.flatMap(f -> f.task(task.id().value())).map(Forecast.Task::landing);
            lines.add(new Line(
                    task.id().value(),
                    task.title(),
                    state(task, request.today()),
                    task.isOpen(),
                    !task.isWork(),
                    hours,
                    task.isWork() && task.dropped().isEmpty()
                            ? Tally.of(hours.estimate(), hours.logged(), hours.left(), most)
                            : "",
                    task.dropped()
                            .map(day -> "dropped " + formats.dateShort(day))
                            .orElseGet(() -> Lands.brief(task.done(), forecast, days, formats))));
        }
        TaskFigures sum =
                kept.stream().map(task -> figures.get(task.id().value())).reduce(TaskFigures.none(), TaskFigures::plus);
        Optional<LocalDate> done = StageDays.done(kept);
        List<StageMaterials.Line> materials = StageMaterials.of(read, tasks, forecast, formats);
        StageCosts costs = StageCosts.of(read, stage.id());
        return new View(
                stage.id().value(),
                stage.name(),
                above(read, stage, kept, formats),
                lead(sum, done, kept, ahead, formats, forecast),
                stage.description(),
                done.isPresent() ? "" : workFirst(ahead, formats),
                done.isPresent()
                        ? ""
                        : MovedStore.find(read, stage.id().value(), request.today())
                                .map(found -> CauseWords.since(found, formats))
                                .orElse(""),
                StageTimber.of(stage, kept, ahead, done, forecast, request.today(), formats),
                causes(ahead, shown.map(s -> s.names()), formats, done),
                done.isPresent() ? List.of() : causeList(ahead, shown.map(s -> s.names()), formats),
                lines,
                lines.isEmpty() ? Optional.empty() : Optional.of(sum),
                materials,
                StageMaterials.remark(materials),
                costs,
                CostLines.said(costs, formats),
                CostLines.of(costs, formats),
                request.access() == Access.CREW && sum.estimate() > 0
                        ? Optional.of(StageEarned.of(
                                read,
                                kept,
                                figures,
                                request.today(),
                                request.settings().moneyDigits()))
                        : Optional.empty(),
                notes(read, stage),
                lines.stream().anyMatch(Line::open),
                request.today(),
                request.form("close", Map.of("day", request.today().toString())));
    }

    /** Several tasks are done on one day, or none of them. */
    @Override
    public Answer submit(Request request) throws Exception {
        request.crewOnly("That a task is done is the crew's to say.");
        FormReader form = request.form();
        Id stage = request.id("id");
        Optional<LocalDate> day = form.needed("day", LocalDate.class);
        List<String> ticked = form.texts("task");
        if (ticked.isEmpty()) {
            form.fault("task", "", "no task is ticked", "tick those that are done");
        }
        return request.save(write -> {
            List<Stored<Task>> tasks = TaskStore.ofStage(write, stage).stream()
                    .filter(task -> ticked.contains(task.value().id().value()))
                    .toList();
            Problems unsaid = new Problems();
            unsaid.addAll(
                    FinishFilmed.faults(write, tasks.stream().map(Stored::value).toList(), "task"));
            try {
                CloseTasks.close(write, tasks, day.orElseThrow(), request.today());
            } catch (Rejected rejected) {
                List<Problem> all = new ArrayList<>(rejected.problems());
                all.addAll(unsaid.list());
                throw new Rejected(all);
            }
            Rejected.ifFaults(unsaid);
            return Saved.to("/build/stages/" + stage)
                    .saying(Formats.list(tasks.stream()
                                    .map(task -> task.value().title())
                                    .toList())
                            + (tasks.size() == 1 ? " is done." : " are done."));
        });
    }

    private static String state(Task task, LocalDate today) {
        if (task.done().isPresent()) {
            return "done";
        }
        if (task.dropped().isPresent()) {
            return "dropped";
        }
        if (LayAside.isAside(task, today)) {
            return "laid aside";
        }
        return task.started().isPresent() ? "under way" : "to come";
    }

    private static String above(Read read, Stage stage, List<Task> tasks, Formats formats) {
        List<Stored<Stage>> all = StageStore.inOrder(read).stream()
                .filter(one -> one.value().side() == stage.side())
                .toList();
        int place = 1;
        for (Stored<Stage> one : all) {
            if (one.value().id().equals(stage.id())) {
                break;
            }
            place++;
        }
        String order = stage.side() ? "a side stage" : "stage " + place + " of " + all.size();
        return order
                + StageDays.began(tasks)
                        .map(day -> ", begun " + formats.dateLong(day))
                        .orElse("");
    }

    private static String lead(
            TaskFigures sum,
            Optional<LocalDate> done,
            List<Task> tasks,
            Optional<Forecast.Stage> ahead,
            Formats formats,
            Optional<Forecast> forecast) {
        if (tasks.isEmpty()) {
            return "It has no tasks yet. Give it two with an estimate, and a landing date appears.";
        }
        if (done.isPresent()) {
            return LoggedWords.logged(sum) + " against " + Formats.hoursLong(sum.estimate()) + " estimated. It was"
                    + " done on "
                    + formats.dateLong(done.get()) + ".";
        }
        String rough = ahead.map(StageDays::rough)
                .filter(r -> !r.isEmpty())
                .map(r -> " That is " + r + ".")
                .orElse("");
        return LoggedWords.loggedAndLeft(sum) + ". "
                + Lands.sentence(
                        ahead.map(Forecast.Stage::landing),
                        formats,
                        forecast.map(Forecast::horizon).orElse(LocalDate.MAX))
                + rough;
    }

    /** Where money costs a week or more, both answers. */
    private static String workFirst(Optional<Forecast.Stage> ahead, Formats formats) {
        Optional<LocalDate> held = ahead.flatMap(stage -> stage.landing().p50());
        Optional<LocalDate> free = ahead.flatMap(stage -> stage.workFirst().p50());
        if (free.isEmpty() || held.isPresent() && !held.get().isAfter(free.get().plusDays(6))) {
            return "";
        }
        return HeldWords.money(
                held.map(formats::far).orElse("not before the end of what is drawn"), formats.far(free.get()));
    }

    private static List<CauseBar.Cause> causeList(
            Optional<Forecast.Stage> ahead, Optional<Names> names, Formats formats) {
        if (ahead.isEmpty() || names.isEmpty()) {
            return List.of();
        }
        return HeldBy.causes(ahead.get().heldBy(), names.get());
    }

    private static String causes(
            Optional<Forecast.Stage> ahead, Optional<Names> names, Formats formats, Optional<LocalDate> done) {
        List<CauseBar.Cause> list = causeList(ahead, names, formats);
        return list.isEmpty() || done.isPresent() ? "" : CauseBar.of(list);
    }

    private static List<NoteLine> notes(Read read, Stage stage) {
        return NoteStore.TABLE.where(read, "stage", stage.id().value()).stream()
                .map(Stored::value)
                .sorted(Comparator.comparing(Note::date).reversed())
                .limit(NOTES_MOST)
                .map(note -> new NoteLine(note.id().value(), note.date(), note.title()))
                .toList();
    }
}
