package weekwright.web.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.build.CrewMember;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.RemoveHours;
import weekwright.build.Shown;
import weekwright.build.Stopped;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.web.kit.Access;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Forbidden;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;
import weekwright.web.parts.Outlook;
import weekwright.web.parts.ReceiptField;

/** The day's hours, entered in seconds: who, what, how long, how it stands. */
public final class LogPage implements Page {
    /**
     * @param people everybody, the one at this browser pressed
     * @param tasks what is most likely worked on today, first one first
     * @param others all other open tasks
     * @param episodes not yet published
     * @param money whether costs may be entered
     * @param clocks running ones, and stopped ones whose hours are not saved
     * @param measured what the clock said whose hours stand in the form; empty without one
     */
    public record View(
            Form form,
            Form stopForm,
            LocalDate day,
            LocalDate first,
            List<Form.Choice> people,
            List<LogTasks.Line> tasks,
            List<Form.Choice> others,
            List<Form.Choice> episodes,
            List<Form.Choice> reasons,
            List<LogDay.Line> entries,
            List<LogDay.StoppedLine> stopped,
            boolean money,
            String currency,
            List<LogClocks.Line> clocks,
            String measured) {}

    @Override
    public View show(Request request) {
        LocalDate today = request.today();
        Optional<CrewMember> person = request.person();
        return request.read(read -> {
            List<LogTasks.Line> tasks = LogTasks.likely(read, today, person, Outlook.forecast(request));
            String who = person.map(p -> p.id().value()).orElse("");
            Map<String, String> first = new HashMap<>(Map.of(
                    "who",
                    who,
                    "as",
                    "hands",
                    "task",
                    tasks.isEmpty() ? "other" : tasks.get(0).id(),
                    "date",
                    today.toString(),
                    "state",
                    "goes"));
            first.putAll(LogClocks.filled(request, read));
            Form form = offered(
                    request.wasRefused(LogClocks.START) ? request.form(LogClocks.START) : request.form("", first),
                    tasks);
            return new View(
                    form,
                    request.form(LogStopped.NOTHING, Map.of("crew", who, "date", today.toString())),
                    today,
                    request.settings().project().started(),
                    people(request).stream()
                            .map(member -> new Form.Choice(member.id().value(), member.name()))
                            .toList(),
                    tasks,
                    LogTasks.others(read, today, tasks),
                    LogTasks.episodes(read),
                    Choices.words(Stopped.Reason.class, Choices.REASONS),
                    LogDay.entries(read, today),
                    LogDay.stopped(read, today, Choices.REASONS),
                    request.access() == Access.CREW,
                    request.formats().currencyMark(),
                    LogClocks.lines(request, read),
                    LogClocks.measured(request, read, form.value("clock")));
        });
    }

    /** A task that was pressed and is not among today's any more stands as another one. */
    private static Form offered(Form form, List<LogTasks.Line> tasks) {
        String pressed = form.value("task");
        boolean there = pressed.isEmpty()
                || pressed.equals("other")
                || tasks.stream().anyMatch(task -> task.id().equals(pressed));
        return there ? form : form.with("task", "other").with("other", pressed);
    }

    /** Whose hours may be logged here: a helper's own only. */
    static List<CrewMember> people(Request request) {
        return request.access() == Access.CREW
                ? request.crew()
                : request.person().stream().toList();
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        if (LogClocks.mine(form.act())) {
            return LogClocks.submit(request, form);
        }
        if (LogStopped.mine(form.act())) {
            return LogStopped.submit(request, form);
        }
        return switch (form.act()) {
            case "delete" -> delete(request, form);
            default -> log(request, form);
        };
    }

    // ---- hours

    private Answer log(Request request, FormReader form) throws Exception {
        ReceiptField receipt = ReceiptField.read(request, form);
        return receipt.saving(() -> keep(request, form, receipt));
    }

    private Answer keep(Request request, FormReader form, ReceiptField receipt) throws Exception {
        String clock = form.text("clock");
        LogForm typed = LogForm.read(request, form, receipt.given());
        if (typed.cost().isPresent() || !typed.payee().isEmpty() || receipt.given()) {
            request.crewOnly("Costs are entered by the crew. Nothing was saved; take the cost out and send it again.");
        }
        if (!typed.after().isEmpty()) {
            request.crewOnly("Whether a task is laid aside or done again is said by the crew. Nothing was saved.");
        }
        return request.save(write -> {
            KeptLog kept = KeepLog.keep(write, typed, receipt, request.today());
            LogClocks.saved(request, write, clock);
            return Saved.to("/log").saying(kept.said(request));
        });
    }

    /** A person's name; of somebody who has left, the id. */
    static String name(Request request, Id crew) {
        return request.crew().stream()
                .filter(member -> member.id().same(crew))
                .map(CrewMember::name)
                .findFirst()
                .orElse(crew.value());
    }

    private static Answer delete(Request request, FormReader form) throws Exception {
        List<Shown> rows = shown(form.text("rows"));
        return request.save(write -> {
            for (Shown row : rows) {
                mayTouch(request, HoursEntryStore.TABLE.find(write, row.row()));
                RemoveHours.remove(write, row);
            }
            return Saved.to("/log")
                    .saying(rows.size() == 1 ? "The entry is taken away." : "The entries are taken away.");
        });
    }

    /** Whether these are the hours of who is at this browser. */
    static boolean own(Request request, HoursEntry entry) {
        return request.person().map(person -> person.id().same(entry.crew())).orElse(false);
    }

    /** A helper takes away and changes their own hours only. */
    static void mayTouch(Request request, Optional<Stored<HoursEntry>> entry) {
        boolean own = entry.map(stored -> own(request, stored.value())).orElse(false);
        if (request.access() != Access.CREW && !own) {
            throw new Forbidden("These are somebody else's hours. The crew can change them.");
        }
    }

    /** Reads "12:1,13:1", rows with their versions. */
    static List<Shown> shown(String text) {
        List<Shown> rows = new ArrayList<>();
        for (String part : text.split(",")) {
            if (part.matches("[0-9]{1,15}:[0-9]{1,15}")) {
                String[] halves = part.split(":");
                rows.add(new Shown(Long.parseLong(halves[0]), Long.parseLong(halves[1])));
            }
        }
        return rows;
    }
}
