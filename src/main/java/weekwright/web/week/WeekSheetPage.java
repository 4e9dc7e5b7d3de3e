package weekwright.web.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.HoursEntryStore;
import weekwright.build.LogHours;
import weekwright.build.MarkDone;
import weekwright.build.Shown;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;
import weekwright.episodes.FinishFilmed;
import weekwright.forecast.Proposals;
import weekwright.forecast.WeekPlan;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;

/**
 * The sheet from the wall typed in: the lines of a week up to today in the order in which they were printed on its Monday,
 * each with its box for hours and its box for done, and two pencilled lines a day. All of it is kept or nothing.
 */
public final class WeekSheetPage implements Page {
    private static final int WEEKS_BACK = 4;
    /** What is filled in on a pencilled line. */
    private static final List<String> WRITTEN = List.of("crew", "what", "hours", "done");

    /**
     * @param proposed whether what the Monday proposed is known yet
     * @param what tasks and episodes to choose from on a pencilled line
     */
    public record View(
            Form form,
            String title,
            String of,
            List<Day> days,
            boolean proposed,
            List<Form.Choice> people,
            List<Form.Choice> what) {
        /** Whether anything stands in the pencilled lines of a day. */
        public boolean written(Day day) {
            return day.pencilled().stream()
                    .flatMap(line -> WRITTEN.stream().map(name -> name + "." + line.number()))
                    .anyMatch(field ->
                            !form.value(field).isEmpty() || !form.error(field).isEmpty());
        }
    }

    /** A day's lines, the printed ones first. */
    public record Day(LocalDate date, List<Line> lines) {
        public List<Line> printed() {
            return lines.stream().filter(line -> !line.pencilled()).toList();
        }

        public List<Line> pencilled() {
            return lines.stream().filter(Line::pencilled).toList();
        }
    }

    /**
     * A line.
     *
     * @param number its fields end in it
     * @param planned hours in the sheet, in minutes
     * @param logged hours of this person for this on that day that stand in the log already, in minutes
     * @param task whether it can be done
     * @param pencilled its person and work are chosen
     * @param carried the hidden fields that say which line it is
     */
    public record Line(
            int number,
            String person,
            String text,
            int planned,
            int logged,
            boolean task,
            boolean pencilled,
            Map<String, String> carried) {}

    @Override
    public View show(Request request) {
        LocalDate monday = monday(request);
        Form form = request.form("");
        request.forecast();
        Optional<Proposals> then = request.forecasts().proposedOn(monday);
        WeekPlan plan = request.read(read -> WeekPlan.of(read, monday, monday, then, Optional.empty()));
        WeekFacts facts = request.read(read -> WeekFacts.of(read, monday));
        List<Day> days = request.wasRefused("")
                ? SheetLines.posted(form, facts, monday)
                : SheetLines.planned(plan, facts, request.settings().project().started(), request.today());
        return request.read(read -> {
            List<Form.Choice> what = new ArrayList<>();
            Choices.tasks(read, Task::isOpen)
                    .forEach(task -> what.add(new Form.Choice(SheetRow.TASK + task.value(), task.label())));
            facts.episodes().values().stream()
                    .filter(episode -> episode.published().isEmpty())
                    .forEach(episode -> what.add(
                            new Form.Choice(SheetRow.EPISODE + episode.id(), "Edit " + Choices.title(episode))));
            return new View(
                    form,
                    Weeks.title(monday),
                    monday.toString(),
                    days,
                    then.isPresent(),
                    request.crew().stream()
                            .map(one -> new Form.Choice(one.id().value(), one.name()))
                            .toList(),
                    what);
        });
    }

    private static LocalDate monday(Request request) {
        LocalDate thisMonday = Weeks.monday(request.today());
        LocalDate monday = Weeks.asked(request);
        if (monday.isAfter(thisMonday) || monday.isBefore(thisMonday.minusWeeks(WEEKS_BACK))) {
            throw new NotFound("The sheets of this week and the four before it can be typed in.");
        }
        return monday;
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        List<SheetRow> rows = SheetRow.read(form);
        if (rows.isEmpty() && form.problems().isEmpty()) {
            form.fault("", "", "Nothing stands in any box", "write the hours as they stand on the wall");
        }
        return request.save(write -> {
            Problems faults = new Problems();
            List<Problem> remarks = new ArrayList<>();
            int minutes = 0;
            int done = 0;
            for (SheetRow row : rows) {
                if (row.hours().isPresent()) {
                    try {
                        remarks.addAll(LogHours.log(write, row.entry(HoursEntryStore.nextId(write)), request.today())
                                .remarks());
                        minutes += row.hours().get().minutes();
                    } catch (Rejected rejected) {
                        place(rejected, "hours." + row.number(), faults);
                    }
                }
            }
            for (SheetRow row : rows) {
                if (row.done()) {
                    done += mark(write, row, request.today(), faults, remarks);
                }
            }
            Rejected.ifFaults(faults);
            StringBuilder said = new StringBuilder(minutes == 0 ? "" : Formats.hoursLong(minutes) + " logged");
            if (done > 0) {
                said.append(said.isEmpty() ? "" : ", ")
                        .append(Formats.count(done, "task"))
                        .append(" done");
            }
            said.append('.');
            remarks.forEach(remark ->
                    said.append(' ').append(Formats.sentence(remark.sentence())).append('.'));
            return Saved.to("/week").saying(said.toString());
        });
    }

    /** A task ticked on two lines is done once, on the later day. */
    private static int mark(Write write, SheetRow row, LocalDate today, Problems faults, List<Problem> remarks)
            throws Stale {
        Optional<Stored<Task>> task = row.task().flatMap(id -> TaskStore.TABLE.find(write, id));
        if (task.isEmpty()) {
            faults.fault(
                    "done." + row.number(),
                    row.task().map(Id::value).orElse(""),
                    "is no task of this project",
                    "take the tick out, or choose another task");
            return 0;
        }
        if (task.get().value().done().isPresent()) {
            return 0;
        }
        List<Problem> unsaid = FinishFilmed.faults(write, List.of(task.get().value()), "done." + row.number());
        if (!unsaid.isEmpty()) {
            faults.addAll(unsaid);
            return 0;
        }
        try {
            remarks.addAll(MarkDone.mark(write, Shown.of(task.get()), row.date(), today)
                    .remarks());
            return 1;
        } catch (Rejected rejected) {
            place(rejected, "done." + row.number(), faults);
            return 0;
        }
    }

    private static void place(Rejected rejected, String field, Problems faults) {
        rejected.problems().forEach(p -> faults.fault(field, p.read(), p.rule(), p.remedy()));
    }
}
