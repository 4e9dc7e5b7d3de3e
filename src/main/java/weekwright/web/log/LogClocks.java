package weekwright.web.log;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.build.CrewMember;
import weekwright.build.RunningClock;
import weekwright.build.RunningClockStore;
import weekwright.build.StartClock;
import weekwright.build.StopClock;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Write;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Access;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Forbidden;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** The clocks of Log: started on a task, stopped into the filled form, thrown away, asked about when left running. */
final class LogClocks {
    static final String START = "start-clock";
    private static final String STOP = "stop-clock";
    private static final String UNTIL = "until-clock";
    private static final String DROP = "drop-clock";

    private LogClocks() {}

    /**
     * A clock as a line.
     *
     * @param key names it in forms: person and task
     * @param words since when, or from when to when
     * @param minutes measured so far
     * @param count the same in words
     * @param runs whether it still does
     * @param left whether it was left running: over midnight or for more than twelve hours
     * @param form asks until when was worked
     */
    record Line(
            String key,
            String who,
            String task,
            String taskId,
            String words,
            int minutes,
            String count,
            boolean runs,
            boolean left,
            Form form) {}

    static boolean mine(String act) {
        return act.equals(START) || act.equals(STOP) || act.equals(UNTIL) || act.equals(DROP);
    }

    /** The clocks this person sees: the crew all, a helper the own. */
    static List<Line> lines(Request request, Read read) {
        Instant now = request.clock().instant();
        ZoneId zone = request.settings().zone();
        Map<String, String> names = new HashMap<>();
        request.crew().forEach(member -> names.put(member.id().folded(), member.name()));
        List<Line> lines = new ArrayList<>();
        for (RunningClock clock : RunningClockStore.all(read)) {
            if (!allowed(request, clock.crew())) {
                continue;
            }
            boolean runs = clock.stopped().isEmpty();
            Form typed = request.form(UNTIL);
            Form form = typed.value("clock").equals(key(clock)) ? typed : request.form("clock of " + key(clock));
            lines.add(new Line(
                    key(clock),
                    names.getOrDefault(clock.crew().folded(), clock.crew().value()),
                    title(read, clock.task()),
                    clock.task().value(),
                    words(clock, zone, now),
                    clock.minutes(now),
                    count(clock.minutes(now)),
                    runs,
                    runs && leftRunning(clock, zone, now),
                    form));
        }
        return lines;
    }

    private static String key(RunningClock clock) {
        return clock.crew().value() + "~" + clock.task().value();
    }

    private static String title(Read read, Id task) {
        return TaskStore.TABLE
                .find(read, task)
                .map(Stored::value)
                .map(Task::title)
                .orElse(task.value());
    }

    private static boolean leftRunning(RunningClock clock, ZoneId zone, Instant now) {
        boolean overNight = !clock.started()
                .atZone(zone)
                .toLocalDate()
                .equals(now.atZone(zone).toLocalDate());
        return overNight || clock.minutes(now) > RunningClock.LONGEST.toMinutes();
    }

    private static String words(RunningClock clock, ZoneId zone, Instant now) {
        ZonedDateTime from = clock.started().atZone(zone);
        boolean today = from.toLocalDate().equals(now.atZone(zone).toLocalDate());
        String day = today
                ? ""
                : Formats.weekdayShort(from.toLocalDate()) + " " + Formats.dayMonth(from.toLocalDate()) + ", ";
        return clock.stopped()
                .map(stopped -> day + time(from) + " to " + time(stopped.atZone(zone)))
                .orElseGet(() -> "since " + day + time(from));
    }

    private static String count(int minutes) {
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }

    private static String time(ZonedDateTime when) {
        return "%d:%02d".formatted(when.getHour(), when.getMinute());
    }

    /** What a stopped clock fills into the form; nothing where the address names none. */
    static Map<String, String> filled(Request request, Read read) {
        Optional<RunningClock> found = named(request, read, request.query("clock"))
                .filter(c -> c.stopped().isPresent());
        if (found.isEmpty()) {
            return Map.of();
        }
        RunningClock clock = found.get();
        int minutes = clock.minutes(clock.stopped().get());
        Map<String, String> values = new HashMap<>();
        values.put("clock", key(clock));
        values.put("who", clock.crew().value());
        values.put("task", clock.task().value());
        values.put("date", day(clock, request).toString());
        values.put(
                "hours",
                Formats.hours(RunningClock.rounded(minutes))
                        .replace(Formats.NBSP, " ")
                        .replaceAll(" ?h$", ""));
        return values;
    }

    private static LocalDate day(RunningClock clock, Request request) {
        return clock.started().atZone(request.settings().zone()).toLocalDate();
    }

    /** What was measured and what became of it; empty where the form was filled by no clock. */
    static String measured(Request request, Read read, String key) {
        return named(request, read, key)
                .filter(clock -> clock.stopped().isPresent())
                .map(clock -> {
                    int minutes = clock.minutes(clock.stopped().get());
                    String quarter = minutes == RunningClock.rounded(minutes)
                            ? ""
                            : "; to the nearest quarter of an hour, at least one";
                    return "The clock ran "
                            + words(
                                    clock,
                                    request.settings().zone(),
                                    request.clock().instant()) + ": " + count(minutes) + quarter + ".";
                })
                .orElse("");
    }

    private static Optional<RunningClock> named(Request request, Read read, String key) {
        int tilde = key.indexOf('~');
        if (tilde < 0) {
            return Optional.empty();
        }
        String crew = key.substring(0, tilde);
        String task = key.substring(tilde + 1);
        return RunningClockStore.all(read).stream()
                .filter(clock -> clock.crew().value().equalsIgnoreCase(crew)
                        && clock.task().value().equalsIgnoreCase(task))
                .filter(clock -> allowed(request, clock.crew()))
                .findFirst();
    }

    private static boolean allowed(Request request, Id crew) {
        return request.access() == Access.CREW
                || request.person().map(person -> person.id().same(crew)).orElse(false);
    }

    /** The hours of a clock are saved: it is over. */
    static void saved(Request request, Write write, String key) {
        named(request, write, key).ifPresent(clock -> RunningClockStore.remove(write, clock.crew(), clock.task()));
    }

    static Answer submit(Request request, FormReader form) throws Exception {
        return switch (form.act()) {
            case START -> start(request, form.ignoringFields());
            case STOP -> stop(request, form);
            case UNTIL -> until(request, form);
            default -> drop(request, form);
        };
    }

    private static Answer start(Request request, FormReader form) throws Exception {
        List<Id> known = LogPage.people(request).stream().map(CrewMember::id).toList();
        List<Id> who = form.texts("who").stream()
                .flatMap(text -> known.stream().filter(id -> id.value().equalsIgnoreCase(text)))
                .toList();
        if (who.size() != 1) {
            form.fault(
                    "who",
                    "",
                    who.isEmpty() ? "nobody is pressed" : "the clock counts for one person",
                    who.isEmpty()
                            ? "press whose clock is to run"
                            : "press one, and name the others when it is stopped");
        }
        String id = form.text("task").equals("other") ? form.text("other") : form.text("task");
        if (id.isEmpty()) {
            form.fault("other", "", "no task is chosen", "choose the task that is worked on");
        }
        Optional<Id> task = id.isEmpty()
                ? Optional.empty()
                : form.read(form.text("task").equals("other") ? "other" : "task", Id.class);
        return request.save(write -> {
            Optional<RunningClock> before = StartClock.start(write, who.get(0), task.orElseThrow());
            String said = "The clock runs on " + title(write, task.get()) + ".";
            return before.isEmpty()
                    ? Saved.to("/log").saying(said)
                    : Saved.to(address(before.get()))
                            .saying(said + " The one on "
                                    + title(write, before.get().task()) + " is stopped; its hours are below.");
        });
    }

    private static String address(RunningClock clock) {
        return "/log?clock=" + key(clock);
    }

    private static Answer stop(Request request, FormReader form) throws Exception {
        RunningClock clock = asked(request, form);
        return request.save(write -> {
            RunningClock stopped = StopClock.stop(write, clock.crew(), clock.task(), write.at());
            return Saved.to(address(stopped)).saying("The clock is stopped. Its hours are in the form, not saved yet.");
        });
    }

    private static Answer until(Request request, FormReader form) throws Exception {
        RunningClock clock = asked(request, form);
        Optional<LocalTime> time = form.needed("until", LocalTime.class);
        ZoneId zone = request.settings().zone();
        return request.save(write -> {
            ZonedDateTime from = clock.started().atZone(zone);
            ZonedDateTime at = from.with(time.orElseThrow());
            // a time before the start is of the next morning
            ZonedDateTime end = at.isBefore(from) ? at.plusDays(1) : at;
            RunningClock stopped = StopClock.stop(write, clock.crew(), clock.task(), end.toInstant());
            return Saved.to(address(stopped)).saying("The clock is stopped. Its hours are in the form, not saved yet.");
        });
    }

    private static Answer drop(Request request, FormReader form) throws Exception {
        RunningClock clock = asked(request, form);
        return request.save(write -> {
            RunningClockStore.remove(write, clock.crew(), clock.task());
            return Saved.to("/log")
                    .saying("The clock on " + title(write, clock.task()) + " is thrown away; nothing is logged.");
        });
    }

    private static RunningClock asked(Request request, FormReader form) {
        String key = form.text("clock");
        return request.read(read -> named(request, read, key)
                .orElseThrow(() -> new Forbidden(
                        "This clock is not there any more, or it is somebody else's. Look at Log for what runs.")));
    }
}
