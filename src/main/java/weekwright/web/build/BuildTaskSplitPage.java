package weekwright.web.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Quantity;
import weekwright.build.CrewMemberStore;
import weekwright.build.HoursEntryStore;
import weekwright.build.Shown;
import weekwright.build.SplitTask;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Tell;
import weekwright.episodes.TellStore;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Makes two tasks of one, with the hours that belong to each; an episode that tells the whole tells both. */
public final class BuildTaskSplitPage implements Page {
    /**
     * @param asked what the second part is asked for: its pieces, hours or days; empty where there is no estimate
     * @param unit beside it
     * @param hours the entries, to tick those of the second part
     */
    public record View(
            Form form, String id, String title, String asked, String unit, String whole, List<Form.Choice> hours) {}

    @Override
    public View show(Request request) {
        Stored<Task> stored = task(request);
        Task task = stored.value();
        Form first = request.form(
                "", Map.of("first", task.title() + ", first part", "second", task.title() + ", second part"));
        Form form = new Form(
                first.csrf(), first.answerKey(), Optional.of(stored.version()), first.values(), first.errors());
        boolean pieces = task.pieces().isPresent();
        return new View(
                request.wasRefused("") ? first : form,
                task.id().value(),
                task.title(),
                pieces ? "Pieces of the second part" : task.likely().isEmpty() ? "" : "Of it, in the second part",
                pieces ? "" : task.isWork() ? "h" : "days",
                pieces
                        ? Formats.count(task.piecesOrDefault(), "piece")
                        : task.likely()
                                .map(q -> q.text()
                                        + (task.isWork() ? " hour" : " day")
                                        + (q.equals(Quantity.ONE) ? "" : "s"))
                                .orElse(""),
                request.read(read -> hours(read, task)));
    }

    private static List<Form.Choice> hours(Read read, Task task) {
        Map<String, String> names = new HashMap<>();
        CrewMemberStore.TABLE
                .values(read)
                .forEach(member -> names.put(member.id().folded(), member.name()));
        List<Form.Choice> choices = new ArrayList<>();
        for (var entry : HoursEntryStore.ofTask(read, task.id())) {
            choices.add(new Form.Choice(
                    String.valueOf(entry.row()),
                    Formats.dayMonth(entry.value().date()) + ", "
                            + names.getOrDefault(entry.value().crew().folded(), "") + ", "
                            + Formats.hoursShort(entry.value().hours().minutes())));
        }
        return choices;
    }

    private static Stored<Task> task(Request request) {
        return request.read(read -> TaskStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no task " + request.part("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<Task> task = task(request);
        String first = form.neededText("first");
        String second = form.neededText("second");
        Optional<Quantity> rest = form.read("rest", Quantity.class);
        Optional<LocalDate> from = form.read("from", LocalDate.class);
        List<String> ticked = form.texts("hours");
        return request.save(write -> {
            Set<Long> rows = new HashSet<>();
            for (var entry : HoursEntryStore.ofTask(write, task.value().id())) {
                boolean late =
                        from.map(day -> !entry.value().date().isBefore(day)).orElse(false);
                if (late || ticked.contains(String.valueOf(entry.row()))) {
                    rows.add(entry.row());
                }
            }
            Stored<Task> part = SplitTask.split(
                    write, new Shown(task.row(), form.version()), new SplitTask.Parts(first, second, rest, rows));
            for (Stored<Tell> tell : TellStore.ofTask(write, task.value().id())) {
                if (tell.value().share().map(Quantity.ONE::equals).orElse(true)) {
                    TellStore.TABLE.insert(
                            write,
                            new Tell(
                                    tell.value().episode(),
                                    part.value().id(),
                                    tell.value().share()));
                }
            }
            return Saved.to("/build/tasks/" + part.value().id())
                    .saying("It is two tasks now. Materials, shots and lines of the week stay with the first part"
                            + (rows.isEmpty()
                                    ? ""
                                    : "; " + Formats.count(rows.size(), "entry", "entries")
                                            + " of hours went with this")
                            + ".");
        });
    }
}
