package weekwright.web.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.build.CrewMemberStore;
import weekwright.build.EquipmentNeeds;
import weekwright.build.EquipmentStore;
import weekwright.build.HazardCodes;
import weekwright.build.HoursEntryStore;
import weekwright.build.LayAside;
import weekwright.build.Link;
import weekwright.build.LinkStore;
import weekwright.build.MarkDropped;
import weekwright.build.MarkStarted;
import weekwright.build.Reopen;
import weekwright.build.SayLeft;
import weekwright.build.Shown;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskFigures;
import weekwright.build.TaskHazards;
import weekwright.build.TaskStore;
import weekwright.build.WhoCanDo;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.FinishFilmed;
import weekwright.episodes.Footage;
import weekwright.episodes.ShotStore;
import weekwright.forecast.Forecast;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.render.Frame;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Lands;
import weekwright.web.parts.Outlook;

/** One task: its facts, what it follows and what follows it, its hours, materials and shots; and how it stands is said here. */
public final class BuildTaskPage implements Page {
    /** A task that comes before or after, with the day it lands, the range of that day, and what the link adds. */
    public record Neighbour(String id, String title, String lands, String range, String link) {}

    /** An hours entry as a line. */
    public record HoursLine(long row, LocalDate date, String who, int minutes, String more) {}

    /** A shot as a line. */
    public record ShotLine(
            long row, String what, boolean must, boolean once, boolean captured, boolean off, String missed) {}

    /**
     * @param person who sits here and may start a clock; empty for nobody
     * @param forms by act: done, dropped, aside, left, started, open, clock
     */
    public record View(
            String id,
            String title,
            String stageId,
            String stageName,
            String state,
            String lead,
            String nobody,
            boolean open,
            boolean work,
            boolean begun,
            boolean aside,
            TaskFigures hours,
            List<Frame.Cell> facts,
            List<String> hazards,
            List<Neighbour> before,
            List<Neighbour> after,
            List<HoursLine> entries,
            List<StageMaterials.Line> materials,
            List<ShotLine> shots,
            LocalDate today,
            String person,
            Map<String, Form> forms) {}

    @Override
    public View show(Request request) {
        Stored<Task> stored = task(request);
        Task task = stored.value();
        Formats formats = request.formats();
        Optional<Forecast> forecast = Outlook.forecast(request);
        Optional<Forecast.Days> landing = forecast.flatMap(f -> f.task(task.id().value()))
                .map(Forecast.Task::landing)
                // a forecast that knew it as done says nothing of a task that was opened again
                .filter(days ->
                        days.p50().map(day -> !day.isBefore(request.today())).orElse(true));
        return request.read(read -> {
            TaskFigures figures = TaskFigures.of(read, task);
            return new View(
                    task.id().value(),
                    task.title(),
                    task.stage().value(),
                    StageStore.TABLE
                            .find(read, task.stage())
                            .map(s -> s.value().name())
                            .orElse(""),
                    TaskFacts.state(task, request.today(), formats),
                    task.isOpen()
                            ? Lands.sentence(
                                    landing,
                                    formats,
                                    forecast.map(Forecast::horizon).orElse(LocalDate.MAX))
                            : "",
                    task.isOpen() ? nobody(read, task, request.today()) : "",
                    task.isOpen(),
                    task.isWork(),
                    task.started().isPresent(),
                    LayAside.isAside(task, request.today()),
                    figures,
                    TaskFacts.of(task, figures, Footage.of(read), equipment(read, task), formats),
                    TaskHazards.of(read, task).stream()
                            .map(code -> HazardCodes.title(code).orElse(code))
                            .toList(),
                    neighbours(read, task, true, forecast, formats),
                    neighbours(read, task, false, forecast, formats),
                    entries(read, task),
                    StageMaterials.of(read, List.of(task), forecast, formats),
                    ShotStore.ofTask(read, task.id()).stream()
                            .map(shot -> new ShotLine(
                                    shot.row(),
                                    shot.value().what(),
                                    shot.value().must(),
                                    shot.value().once(),
                                    shot.value().captured().isPresent(),
                                    shot.value().calledOff(),
                                    shot.value().missed()))
                            .toList(),
                    request.today(),
                    request.person().map(person -> person.id().value()).orElse(""),
                    forms(request, stored));
        });
    }

    /** Why it never begins: nobody has a trade for it, or too few are there; empty where it can be done. */
    private static String nobody(Read read, Task task, LocalDate today) {
        return WhoCanDo.of(read, today)
                .whyNot(task, TaskHazards.of(read, task))
                .map(Problem::sentence)
                .map(sentence -> Formats.sentence(sentence) + ".")
                .orElse("");
    }

    /** {@code Bandsaw}, {@code Trestles: 2}: what it holds. */
    private static List<String> equipment(Read read, Task task) {
        return EquipmentNeeds.of(task).counts().entrySet().stream()
                .map(one -> EquipmentStore.TABLE
                                .find(read, one.getKey())
                                .map(found -> found.value().name())
                                .orElse(one.getKey().value())
                        + (one.getValue() == 1 ? "" : ": " + one.getValue()))
                .toList();
    }

    private static Map<String, Form> forms(Request request, Stored<Task> task) {
        Map<String, Form> forms = new LinkedHashMap<>();
        String today = request.today().toString();
        for (String act : List.of("done", "dropped", "aside", "left", "started", "open", "clock")) {
            Form form = request.form(act, Map.of("day", today));
            forms.put(
                    act,
                    new Form(form.csrf(), form.answerKey(), Optional.of(task.version()), form.values(), form.errors()));
        }
        return forms;
    }

    private static Stored<Task> task(Request request) {
        return request.read(read -> TaskStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no task " + request.part("id") + "."));
    }

    private static List<Neighbour> neighbours(
            Read read, Task task, boolean before, Optional<Forecast> forecast, Formats formats) {
        List<Neighbour> list = new ArrayList<>();
        for (Stored<Link> stored : before ? LinkStore.before(read, task.id()) : LinkStore.after(read, task.id())) {
            Link link = stored.value();
            Id other = before ? link.after() : link.task();
            Optional<Task> found = TaskStore.TABLE.find(read, other).map(Stored::value);
            found.ifPresent(one -> list.add(new Neighbour(
                    one.id().value(),
                    one.title(),
                    one.dropped()
                            .map(day -> "dropped " + formats.dateShort(day))
                            .orElseGet(() -> Lands.brief(
                                    one.done(),
                                    forecast,
                                    forecast.flatMap(f -> f.task(one.id().value()))
                                            .map(Forecast.Task::landing),
                                    formats)),
                    one.isOpen()
                            ? Lands.range(
                                    forecast.flatMap(f -> f.task(one.id().value()))
                                            .map(Forecast.Task::landing),
                                    formats)
                            : "",
                    TaskFacts.link(link))));
        }
        return list;
    }

    private static List<HoursLine> entries(Read read, Task task) {
        Map<String, String> names = new HashMap<>();
        CrewMemberStore.TABLE
                .values(read)
                .forEach(member -> names.put(member.id().folded(), member.name()));
        List<HoursLine> lines = new ArrayList<>();
        for (var stored : HoursEntryStore.ofTask(read, task.id())) {
            var entry = stored.value();
            String pieces =
                    entry.pieces().map(n -> Formats.count(n, "piece") + ". ").orElse("");
            String as = switch (entry.asOrDefault()) {
                case HANDS -> "";
                case CAMERA -> "Filming. ";
                case EDIT -> "Editing. ";
                case SHOP, OFFICE -> "Shop and office. ";
            };
            lines.add(
                    0,
                    new HoursLine(
                            stored.row(),
                            entry.date(),
                            names.getOrDefault(
                                    entry.crew().folded(), entry.crew().value()),
                            entry.hours().minutes(),
                            (as + pieces + entry.note()).strip()));
        }
        return lines;
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<Task> task = task(request);
        Shown shown = new Shown(task.row(), form.version());
        LocalDate today = request.today();
        String here = "/build/tasks/" + task.value().id();
        switch (form.act()) {
            case "done", "dropped", "started" -> {
                Optional<LocalDate> day = form.needed("day", LocalDate.class);
                String act = form.act();
                String missed = form.text(FinishFilmed.FIELD);
                return request.save(write -> {
                    List<Problem> remarks = new ArrayList<>();
                    if (act.equals("done")) {
                        remarks.addAll(FinishFilmed.finish(write, shown, day.orElseThrow(), missed, today)
                                .remarks());
                    } else if (act.equals("dropped")) {
                        MarkDropped.mark(write, shown, day.orElseThrow(), today);
                    } else {
                        MarkStarted.mark(write, shown, day.orElseThrow(), today);
                    }
                    return said(here, act.equals("started") ? "It has begun." : "It is " + act + ".", remarks);
                });
            }
            case "aside" -> {
                Optional<LocalDate> until = form.read("aside_until", LocalDate.class);
                return request.save(write -> {
                    LayAside.lay(write, shown, until, today);
                    return said(here, "It is laid aside.", List.of());
                });
            }
            case "left" -> {
                Optional<Hours> left = form.needed("left", Hours.class);
                return request.save(write -> {
                    SayLeft.say(write, shown, left.orElseThrow(), today);
                    return Saved.to(here)
                            .saying("About " + Formats.hoursLong(left.get().minutes()) + " left, as you see it today.");
                });
            }
            default -> {
                return request.save(write -> {
                    Reopen.reopen(write, shown);
                    return Saved.to(here).saying("It is open again.");
                });
            }
        }
    }

    private static Saved said(String here, String text, List<Problem> remarks) {
        StringBuilder said = new StringBuilder(text);
        remarks.forEach(remark ->
                said.append(' ').append(Formats.sentence(remark.sentence())).append('.'));
        return Saved.to(here).saying(said.toString());
    }
}
