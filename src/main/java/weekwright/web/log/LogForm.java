package weekwright.web.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.base.Shape;
import weekwright.build.CrewMember;
import weekwright.build.HoursEntry;
import weekwright.build.LoggedHours;
import weekwright.build.Task;
import weekwright.db.Read;
import weekwright.episodes.FinishFilmed;
import weekwright.funds.LedgerEntry;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;

/**
 * What was typed into the form of Log.
 *
 * @param crew one or more people, each of whom gets an entry
 * @param entry that of the first of them, without a number as yet; no task for editing, shop and office
 * @param others people without a name here who worked the same hours beside those pressed
 * @param state how the task stands: goes, nearly (with the hours left) or done
 * @param field where the task was chosen: task, or other
 * @param found title of work that nobody had listed
 * @param foundHours a guess at it
 * @param foundFirst whether this task waits for it
 * @param after what is to become of the task: again (it has to be done once more), aside, or nothing
 * @param missed what became of once-only shots that a finished task lacks; empty where nobody was asked
 */
record LogForm(
        List<Id> crew,
        HoursEntry entry,
        int others,
        String state,
        Optional<Hours> left,
        String field,
        Optional<Money> cost,
        String payee,
        String found,
        Optional<Hours> foundHours,
        boolean foundFirst,
        String after,
        String missed) {
    private static final int OTHERS_MOST = 99;
    private static final List<String> STATES = List.of("", "goes", "nearly", "done");
    private static final List<String> AFTERS = List.of("", "again", "aside");

    /**
     * Reads every field; all faults at once.
     *
     * @param receipt whether one came with the form or waits for it
     */
    static LogForm read(Request request, FormReader form, boolean receipt) throws Rejected {
        List<Id> crew = crew(request, form);
        HoursEntry.As as = form.read("as", HoursEntry.As.class).orElse(HoursEntry.As.HANDS);
        boolean onTask = as == HoursEntry.As.HANDS || as == HoursEntry.As.CAMERA;
        String field = form.text("task").equals("other") ? "other" : "task";
        Optional<Id> task = onTask ? task(form, field) : Optional.empty();
        form.text("other");
        Optional<Id> episode = as == HoursEntry.As.EDIT ? episode(form) : Optional.empty();
        form.text("episode");
        HoursEntry entry = entry(form, crew, as, task, episode);
        Optional<Integer> others = form.read("others", Integer.class);
        if (others.map(count -> count < 0 || count > OTHERS_MOST).orElse(false)) {
            form.fault("others", form.text("others"), "is not 0 to " + OTHERS_MOST, "write how many there were");
        }
        String state = oneOf(form, "state", STATES);
        Optional<Hours> left = form.read("left", Hours.class);
        if (onTask && state.equals("nearly") && form.text("left").isEmpty()) {
            form.fault("left", "", "is missing", "say about how many hours are left");
        }
        Optional<Money> cost = form.read("cost", Money.class);
        String payee = form.text("payee", LedgerEntry.class, "payee");
        if (cost.map(money -> money.minor() <= 0).orElse(false)) {
            form.fault("cost", form.text("cost"), "is no cost", "write what was paid, more than nothing");
        } else if (receipt && form.text("cost").isEmpty()) {
            form.fault("cost", "", "is missing", "write what the receipt tells, or keep it under Receipts");
        } else if (!payee.isEmpty() && form.text("cost").isEmpty()) {
            form.fault("cost", "", "is missing", "write what was paid, or leave out to whom");
        }
        String found = form.text("found", Task.class, "title");
        Optional<Hours> foundHours = foundHours(form);
        boolean foundFirst = form.ticked("found_first");
        if (!found.isEmpty() && task.isEmpty()) {
            form.fault("found", found, "belongs to no stage", "press a task of the stage it was found in");
        } else if (form.text("found").isEmpty() && (!form.text("found_hours").isEmpty() || foundFirst)) {
            form.fault("found", "", "is missing", "write what was found");
        }
        String after = oneOf(form, "after", AFTERS);
        if (!after.isEmpty() && task.isEmpty()) {
            form.fault("after", "", "is said of no task", "press the task that is meant");
        } else if (after.equals("aside") && state.equals("done")) {
            form.fault("after", "", "is laid aside and done", "choose one of the two");
        }
        String missed = form.text(FinishFilmed.FIELD);
        form.besides(() -> request.read(read -> besides(read, crew, entry, field, request.today())));
        form.check();
        return new LogForm(
                crew,
                entry,
                others.orElse(0),
                state,
                state.equals("nearly") && onTask ? left : Optional.empty(),
                field,
                cost,
                payee,
                found,
                foundHours,
                foundFirst,
                after,
                missed);
    }

    private static List<Id> crew(Request request, FormReader form) {
        List<Id> known = LogPage.people(request).stream().map(CrewMember::id).toList();
        List<Id> crew = new ArrayList<>();
        List<String> pressed = form.texts("who");
        for (String text : pressed) {
            Optional<Id> one = known.stream()
                    .filter(id -> id.value().equalsIgnoreCase(text))
                    .findFirst();
            if (one.isPresent() && !crew.contains(one.get())) {
                crew.add(one.get());
            } else if (one.isPresent()) {
                form.fault("who", text, "was sent twice", "send it once");
            } else {
                form.fault("who", text, "is not one of those here", "choose one of the list");
            }
        }
        if (pressed.isEmpty()) {
            form.fault("who", "", "nobody is pressed", "press who worked");
        }
        return crew;
    }

    private static Optional<Id> task(FormReader form, String field) {
        if (form.text(field).isEmpty()) {
            form.fault("other", "", "no task is chosen", "choose the task that was worked on");
        }
        return form.read(field, Id.class);
    }

    private static Optional<Id> episode(FormReader form) {
        if (form.text("episode").isEmpty()) {
            form.fault("episode", "", "no episode is chosen", "choose the episode that was edited");
        }
        return form.read("episode", Id.class);
    }

    /** The first person's entry, under the bounds of its record. Pieces count for hands on a task alone. */
    private static HoursEntry entry(
            FormReader form, List<Id> crew, HoursEntry.As as, Optional<Id> task, Optional<Id> episode) {
        boolean counts = task.isPresent() && as == HoursEntry.As.HANDS;
        HoursEntry standIn = new HoursEntry(
                new Id("hours.0"),
                LocalDate.EPOCH,
                crew.isEmpty() ? new Id("nobody") : crew.get(0),
                Optional.empty(),
                task,
                episode,
                as == HoursEntry.As.HANDS ? Optional.empty() : Optional.of(as),
                Hours.ZERO,
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                "");
        HoursEntry entry =
                form.draft(standIn, "date", "hours", "pieces", "spoiled", "filmed", "footage_minutes", "note");
        Shape<HoursEntry> shape = Shape.of(HoursEntry.class);
        return counts ? entry : shape.with(shape.with(entry, "pieces", Optional.empty()), "spoiled", Optional.empty());
    }

    /** What the rules say of each person's entry, at the fields of the form. */
    private static Problems besides(Read read, List<Id> crew, HoursEntry entry, String field, LocalDate today) {
        Problems all = new Problems();
        for (Id person : crew) {
            HoursEntry one = Shape.of(HoursEntry.class).with(entry, "crew", person);
            LoggedHours.problems(read, one, Optional.empty(), today).list().stream()
                    .map(problem -> placed(problem, field))
                    .filter(problem -> !all.list().contains(problem))
                    .forEach(all::add);
        }
        return all;
    }

    /** A problem of an hours entry at the field of the form that it came from. */
    static Problem placed(Problem problem, String taskField) {
        String field = problem.column().equals("crew")
                ? "who"
                : problem.column().equals("task") ? taskField : problem.column();
        return at(field, problem);
    }

    static Problem at(String field, Problem problem) {
        return new Problem(problem.grade(), "", 0, field, problem.read(), problem.rule(), problem.remedy());
    }

    /** Within what a task's likely hours may be. */
    private static Optional<Hours> foundHours(FormReader form) {
        Optional<Hours> hours = form.read("found_hours", Hours.class);
        Problems over = new Problems();
        hours.ifPresent(
                guess -> Shape.of(Task.class).field("likely").orElseThrow().parse(guess.text(), form.reading(), over));
        over.list().forEach(p -> form.fault("found_hours", form.text("found_hours"), p.rule(), p.remedy()));
        return hours;
    }

    private static String oneOf(FormReader form, String name, List<String> words) {
        String text = form.text(name);
        if (words.contains(text)) {
            return text;
        }
        form.fault(name, text, "is not one of those here", "choose one of the list");
        return "";
    }
}
