package weekwright.web.build;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import weekwright.base.Id;
import weekwright.base.Quantity;
import weekwright.build.Link;
import weekwright.build.LinkStore;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskFigures;
import weekwright.build.TaskNetwork;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.forecast.Forecast;
import weekwright.render.Formats;
import weekwright.render.chart.OrderRod;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.Lands;
import weekwright.web.parts.Outlook;

/** What waits for what in a stage, as a marked rod and as a table, with the longest way through what is left. */
public final class BuildStageNetworkPage implements Page {
    private static final double MINUTES_A_DAY = 480;

    /**
     * @param longest the longest way in words; empty where nothing is left
     * @param drawing empty where nothing waits for anything here
     */
    public record View(String id, String name, String longest, String drawing, List<Line> lines) {}

    /** A task; {@code waits} are what it waits for, in words. */
    public record Line(String id, String title, List<Waits> waits, String lands, boolean longest) {}

    /** Something waited for. */
    public record Waits(String id, String title, String link) {}

    @Override
    public View show(Request request) {
        Id id = request.id("id");
        Formats formats = request.formats();
        Optional<Forecast> forecast = Outlook.forecast(request);
        return request.read(read -> {
            Stage stage = StageStore.TABLE
                    .find(read, id)
                    .map(Stored::value)
                    .orElseThrow(() -> new NotFound("There is no stage " + id + "."));
            return view(read, stage, forecast, formats);
        });
    }

    private static View view(Read read, Stage stage, Optional<Forecast> forecast, Formats formats) {
        List<Task> tasks = TaskStore.ofStage(read, stage.id()).stream()
                .map(Stored::value)
                .filter(task -> task.dropped().isEmpty())
                .toList();
        Map<String, Task> all = new HashMap<>();
        TaskStore.TABLE.values(read).forEach(task -> all.put(task.id().folded(), task));
        List<Link> links = LinkStore.TABLE.values(read);
        TaskNetwork network = TaskNetwork.of(tasks, links);
        Map<String, Double> days = days(read, tasks, formats.today());
        TaskNetwork.Longest longest = network.longest(task -> days.get(task.id().folded()));
        Set<Integer> heavy = longest.days() > 0
                ? longest.places().stream()
                        .filter(place -> network.order().get(place).isOpen())
                        .collect(Collectors.toSet())
                : Set.of();
        List<Line> lines = new ArrayList<>();
        for (Task task : network.order()) {
            lines.add(line(task, all, links, heavy.contains(lines.size()), forecast, formats));
        }
        return new View(
                stage.id().value(),
                stage.name(),
                heavy.isEmpty() ? "" : said(network, longest),
                network.arcs().isEmpty() ? "" : drawing(stage, network, lines, longest, heavy),
                lines);
    }

    /** Days that are left of each task: of work at eight hours of all its hands a day, of a wait its days. */
    private static Map<String, Double> days(Read read, List<Task> tasks, LocalDate today) {
        var entries = TaskFigures.entries(read);
        Map<String, Double> days = new HashMap<>();
        for (Task task : tasks) {
            double left = !task.isOpen()
                    ? 0
                    : task.isWork()
                            ? TaskFigures.of(
                                                    task,
                                                    entries.getOrDefault(
                                                            task.id().folded(), List.of()))
                                            .left()
                                    / MINUTES_A_DAY
                                    / task.handsOrDefault()
                            : waitLeft(task, today);
            days.put(task.id().folded(), left);
        }
        return days;
    }

    private static double waitLeft(Task wait, LocalDate today) {
        double days = wait.likely().map(Quantity::doubleValue).orElse(0.0);
        long gone = wait.started()
                .map(began -> ChronoUnit.DAYS.between(began, today))
                .orElse(0L);
        return Math.max(0, days - gone);
    }

    private static Line line(
            Task task,
            Map<String, Task> all,
            List<Link> links,
            boolean longest,
            Optional<Forecast> forecast,
            Formats formats) {
        List<Waits> waits = links.stream()
                .filter(link -> link.task().same(task.id()))
                .map(link -> {
                    Task after = all.get(link.after().folded());
                    return new Waits(after.id().value(), after.title(), TaskFacts.link(link));
                })
                .toList();
        return new Line(
                task.id().value(),
                task.title(),
                waits,
                Lands.brief(
                        task.done(),
                        forecast,
                        forecast.flatMap(f -> f.task(task.id().value())).map(Forecast.Task::landing),
                        formats),
                longest);
    }

    private static String said(TaskNetwork network, TaskNetwork.Longest longest) {
        List<Task> open = longest.places().stream()
                .map(network.order()::get)
                .filter(Task::isOpen)
                .toList();
        return "The longest way through what is left takes about "
                + Formats.count(Math.max(1, Math.round(longest.days())), "day")
                + ", if every day had eight hours for it: "
                + open.stream().map(Task::title).collect(Collectors.joining(", then ")) + "."
                + (network.order().stream()
                                .anyMatch(task -> task.isOpen() && task.likely().isEmpty())
                        ? " Tasks without an estimate count for nothing in it."
                        : "");
    }

    private static String drawing(
            Stage stage, TaskNetwork network, List<Line> lines, TaskNetwork.Longest longest, Set<Integer> heavy) {
        List<OrderRod.Peg> pegs = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Task task = network.order().get(i);
            pegs.add(new OrderRod.Peg(
                    task.title(),
                    lines.get(i).lands(),
                    task.done().isPresent()
                            ? OrderRod.State.DONE
                            : task.started().isPresent() ? OrderRod.State.IN_HAND : OrderRod.State.TO_COME,
                    !task.isWork(),
                    heavy.contains(i)));
        }
        Map<Integer, Integer> next = new HashMap<>();
        for (int i = 0; i + 1 < longest.places().size(); i++) {
            next.put(longest.places().get(i), longest.places().get(i + 1));
        }
        List<OrderRod.Bow> bows = network.arcs().stream()
                .map(arc -> new OrderRod.Bow(
                        arc.from(),
                        arc.to(),
                        arc.link()
                                .waitLikely()
                                .filter(wait -> wait.compareTo(Quantity.ZERO) > 0)
                                .map(wait -> wait.text() + (wait.equals(Quantity.ONE) ? " day" : " days"))
                                .orElse(""),
                        arc.link()
                                .share()
                                .map(s -> s.compareTo(Quantity.ONE) < 0)
                                .orElse(false),
                        heavy.contains(arc.from()) && Integer.valueOf(arc.to()).equals(next.get(arc.from()))))
                .toList();
        return OrderRod.of("What waits for what in " + stage.name() + "; the table has the same", pegs, bows);
    }
}
