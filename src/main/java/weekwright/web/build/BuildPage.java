package weekwright.web.build;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.build.MoveStage;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskFigures;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.forecast.Forecast;
import weekwright.funds.StageCosts;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.render.chart.Tally;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Lands;
import weekwright.web.parts.Outlook;

/** All stages: when each is done, hours against estimate, what was spent. */
public final class BuildPage implements Page {
    /** @param head how many stages are done, in hand and to come, in words */
    public record View(String head, String lead, List<Line> stages, Optional<Line> sum, boolean guessed, Form move) {}

    /**
     * A stage as a line.
     *
     * @param state done, in hand or to come
     * @param rough why its date is rough; empty if it is not
     * @param tally its hours as a drawing; empty for all together
     */
    public record Line(
            int number,
            String id,
            String name,
            boolean side,
            String state,
            String lands,
            String range,
            String rough,
            TaskFigures hours,
            int tasks,
            int tasksDone,
            Money spent,
            String tally) {
        Line drawn(int most) {
            return new Line(
                    number,
                    id,
                    name,
                    side,
                    state,
                    lands,
                    range,
                    rough,
                    hours,
                    tasks,
                    tasksDone,
                    spent,
                    Tally.of(hours.estimate(), hours.logged(), state.equals("done") ? 0 : hours.left(), most));
        }
    }

    @Override
    public View show(Request request) {
        Formats formats = request.formats();
        Optional<Forecast> forecast = Outlook.forecast(request);
        List<Line> lines = request.read(read -> lines(read, forecast, formats));
        long done = lines.stream().filter(line -> line.state().equals("done")).count();
        long begun =
                lines.stream().filter(line -> line.state().equals("in hand")).count();
        TaskFigures all = lines.stream().map(Line::hours).reduce(TaskFigures.none(), TaskFigures::plus);
        Money spent = lines.stream().map(Line::spent).reduce(Money.ZERO, Money::plus);
        String head = Formats.sentence(Formats.counted(done, "stage", "stages") + " done, " + some(begun) + " in hand, "
                + some(lines.size() - done - begun) + " to come");
        String lead = LoggedWords.loggedAndLeft(all) + "."
                + (forecast.isEmpty() ? " There is no forecast yet, so no stage has a date." : "");
        Optional<Line> sum = lines.isEmpty()
                ? Optional.empty()
                : Optional.of(new Line(0, "", "All stages", false, "", "", "", "", all, 0, 0, spent, ""));
        int most = lines.stream().mapToInt(line -> line.hours().most()).max().orElse(0);
        return new View(
                lines.isEmpty() ? "No stages yet" : head,
                lines.isEmpty() ? "" : lead,
                lines.stream().map(line -> line.drawn(most)).toList(),
                sum,
                lines.stream().anyMatch(line -> !line.rough().isEmpty()),
                request.form(""));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        request.crewOnly("The order of the stages is the crew's to change.");
        FormReader form = request.form();
        boolean earlier = form.act().equals("earlier");
        Optional<Id> stage = form.needed("stage", Id.class);
        return request.save(write -> {
            Id id = stage.orElseThrow();
            int place =
                    MoveStage.move(write, id, earlier).orElseThrow(() -> new NotFound("There is no stage " + id + "."));
            boolean first = place == 0;
            boolean last = place == StageStore.TABLE.count(write) - 1;
            String button = earlier && !first || last ? "earlier-" : "later-";
            return Saved.to("/build#" + button + URLEncoder.encode(id.value(), StandardCharsets.UTF_8))
                    .saying(StageStore.TABLE
                                    .find(write, id)
                                    .orElseThrow()
                                    .value()
                                    .name() + " is stage " + (place + 1) + " now.");
        });
    }

    private static String some(long count) {
        return count == 0 ? "none" : Formats.number(count);
    }

    private static List<Line> lines(Read read, Optional<Forecast> forecast, Formats formats) {
        var entries = TaskFigures.entries(read);
        Map<String, StageCosts> costs = StageCosts.all(read);
        List<Line> lines = new ArrayList<>();
        for (Stored<Stage> stored : StageStore.inOrder(read)) {
            Stage stage = stored.value();
            List<Task> tasks = TaskStore.ofStage(read, stage.id()).stream()
                    .map(Stored::value)
                    .filter(task -> task.dropped().isEmpty())
                    .toList();
            TaskFigures sum = TaskFigures.sum(tasks, entries);
            Optional<Forecast.Stage> ahead =
                    forecast.flatMap(f -> f.stage(stage.id().value()));
            var days = ahead.map(Forecast.Stage::landing);
            var done = StageDays.done(tasks);
            boolean begun = StageDays.began(tasks).isPresent();
            lines.add(new Line(
                    lines.size() + 1,
                    stage.id().value(),
                    stage.name(),
                    stage.side(),
                    done.isPresent() ? "done" : begun ? "in hand" : "to come",
                    Lands.brief(done, forecast, days, formats),
                    done.isPresent() ? "" : Lands.range(days, formats),
                    ahead.map(StageDays::rough).orElse(""),
                    sum,
                    tasks.size(),
                    (int) tasks.stream().filter(task -> task.done().isPresent()).count(),
                    Optional.ofNullable(costs.get(stage.id().folded()))
                            .map(StageCosts::spent)
                            .orElse(Money.ZERO),
                    ""));
        }
        return lines;
    }
}
