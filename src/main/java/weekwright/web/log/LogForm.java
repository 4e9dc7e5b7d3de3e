package weekwright.web.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Problem;
import weekwright.base.Quantity;
import weekwright.base.Rejected;
import weekwright.base.Shape;
import weekwright.build.CrewMember;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.LayAside;
import weekwright.build.Link;
import weekwright.build.LinkStore;
import weekwright.build.LogHours;
import weekwright.build.LoggedHours;
import weekwright.build.MarkDone;
import weekwright.build.SaveTask;
import weekwright.build.SayLeft;
import weekwright.build.Shown;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.SpendMoney;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.parts.Choices;
import weekwright.web.parts.ReceiptField;

/**
 * What was typed into the form of Log.
 *
 * @param crew one or more people, each of whom gets an entry
 * @param task none for editing, shop and office
 * @param state how the task stands: goes, nearly (with the hours left) or done
 * @param others people without a name here who worked the same hours beside those pressed
 * @param found title of work that nobody had listed
 * @param foundHours a guess at it
 * @param foundFirst whether this task waits for it
 * @param after what is to become of the task: again (it has to be done once more), aside, or nothing
 */
record LogForm(
        List<Id> crew,
        HoursEntry.As as,
        Optional<Id> task,
        Optional<Id> episode,
        LocalDate date,
        Hours hours,
        int others,
        Optional<Integer> pieces,
        Optional<Integer> spoiled,
        String state,
        Optional<Hours> left,
        boolean filmed,
        Optional<Quantity> footage,
        Optional<Money> cost,
        String payee,
        String found,
        Optional<Hours> foundHours,
        boolean foundFirst,
        String after,
        String note) {
    private static final int OTHERS_MOST = 99;

    /** What came of it. */
    record Kept(
            List<Stored<HoursEntry>> entries,
            String what,
            Optional<Stored<Task>> done,
            Optional<Task> found,
            Optional<Task> again,
            List<Problem> remarks) {}

    /** Reads every field; faults stay with the reader until it is checked. */
    static LogForm read(Request request, FormReader form) throws Rejected {
        List<Id> known = LogPage.people(request).stream().map(CrewMember::id).toList();
        List<Id> crew = new ArrayList<>();
        for (String text : form.texts("who")) {
            Optional<Id> one = known.stream()
                    .filter(id -> id.value().equalsIgnoreCase(text))
                    .findFirst();
            if (one.isPresent()) {
                crew.add(one.get());
            } else {
                form.fault("who", text, "is not one of those here", "choose one of the list");
            }
        }
        if (crew.isEmpty() && form.problems().isEmpty()) {
            form.fault("who", "", "nobody is pressed", "press who worked");
        }
        HoursEntry.As as = form.read("as", HoursEntry.As.class).orElse(HoursEntry.As.HANDS);
        String pressed = form.text("task");
        String other = form.text("other");
        Optional<Id> episode = form.read("episode", Id.class);
        boolean onTask = as == HoursEntry.As.HANDS || as == HoursEntry.As.CAMERA;
        Optional<Id> task = Optional.empty();
        if (onTask) {
            String id = pressed.equals("other") ? other : pressed;
            if (id.isEmpty()) {
                form.fault("other", "", "no task is chosen", "choose the task that was worked on");
            } else {
                task = form.read(pressed.equals("other") ? "other" : "task", Id.class);
            }
        } else if (as == HoursEntry.As.EDIT && episode.isEmpty()) {
            form.fault("episode", "", "no episode is chosen", "choose the episode that was edited");
        }
        Optional<Hours> hours = form.needed("hours", Hours.class);
        if (hours.map(h -> h.minutes() == 0).orElse(false)) {
            form.fault("hours", "", "is nothing yet", "write at least one minute, such as 3.5 or 3:30");
        }
        if (hours.map(h -> h.minutes() > 24 * 60).orElse(false)) {
            form.fault("hours", form.text("hours"), "is more than a day", "at most 24 fit in one");
        }
        Optional<LocalDate> date = form.needed("date", LocalDate.class);
        String state = form.text("state");
        Optional<Hours> left = form.read("left", Hours.class);
        Optional<Integer> pieces = form.read("pieces", Integer.class);
        Optional<Integer> spoiled = form.read("spoiled", Integer.class);
        nothingNegative(form, "pieces", pieces);
        nothingNegative(form, "spoiled", spoiled);
        boolean filmed = form.ticked("filmed");
        Optional<Quantity> footage = form.read("footage_minutes", Quantity.class);
        Optional<Money> cost = form.read("cost", Money.class);
        String payee = form.text("payee");
        if (cost.map(money -> money.minor() <= 0).orElse(false)) {
            form.fault("cost", form.text("cost"), "is no cost", "write what was paid, more than nothing");
        }
        if (onTask
                && state.equals("nearly")
                && left.isEmpty()
                && form.text("left").isEmpty()) {
            form.fault("left", "", "is missing", "say about how many hours are left");
        }
        String found = form.text("found");
        if (!found.isEmpty() && task.isEmpty()) {
            form.fault("found", found, "belongs to no stage", "press a task of the stage it was found in");
        }
        Optional<Hours> foundHours = form.read("found_hours", Hours.class);
        boolean foundFirst = form.ticked("found_first");
        if (found.isEmpty() && (foundHours.isPresent() || foundFirst)) {
            form.fault("found", "", "is missing", "write what was found");
        }
        Optional<Integer> others = form.read("others", Integer.class);
        if (others.map(count -> count < 0 || count > OTHERS_MOST).orElse(false)) {
            form.fault("others", form.text("others"), "is not 0 to " + OTHERS_MOST, "write how many there were");
        }
        String after = form.text("after");
        if (!after.isEmpty() && !after.equals("again") && !after.equals("aside")) {
            form.fault("after", after, "is not one of those here", "choose one of the list");
        } else if (!after.isEmpty() && task.isEmpty()) {
            form.fault("after", "", "is said of no task", "press the task that is meant");
        } else if (after.equals("aside") && state.equals("done")) {
            form.fault("after", "", "is laid aside and done", "choose one of the two");
        }
        String note = form.text("note");
        form.check();
        return new LogForm(
                crew,
                as,
                task,
                as == HoursEntry.As.EDIT ? episode : Optional.empty(),
                date.orElseThrow(),
                hours.orElseThrow(),
                others.orElse(0),
                task.isPresent() && as == HoursEntry.As.HANDS ? pieces : Optional.empty(),
                task.isPresent() && as == HoursEntry.As.HANDS ? spoiled : Optional.empty(),
                state,
                state.equals("nearly") && onTask ? left : Optional.empty(),
                filmed,
                footage,
                cost,
                payee,
                found,
                foundHours,
                foundFirst,
                after,
                note);
    }

    private static void nothingNegative(FormReader form, String name, Optional<Integer> count) {
        if (count.map(n -> n < 0).orElse(false)) {
            form.fault(name, form.text(name), "is under 0", "write 0 or more");
        }
    }

    /** Writes all of it as one act. Pieces, footage and note go with the first person's entry, so that none counts twice. */
    Kept keep(Write write, Request request, ReceiptField receipt) throws Rejected, Stale {
        LocalDate today = request.today();
        List<Stored<HoursEntry>> entries = new ArrayList<>();
        List<Problem> remarks = new ArrayList<>();
        for (Id person : crew) {
            boolean chief = entries.isEmpty();
            HoursEntry entry = new HoursEntry(
                    HoursEntryStore.nextId(write),
                    date,
                    person,
                    chief && others > 0 ? Optional.of(others + 1) : Optional.empty(),
                    task,
                    episode,
                    as == HoursEntry.As.HANDS ? Optional.empty() : Optional.of(as),
                    hours,
                    chief ? pieces : Optional.empty(),
                    chief ? spoiled : Optional.empty(),
                    filmed,
                    chief ? footage : Optional.empty(),
                    chief ? note : "");
            LoggedHours logged = LogHours.log(write, entry, today);
            entries.add(logged.entry());
            logged.remarks().stream()
                    .filter(remark -> !remarks.contains(remark))
                    .forEach(remarks::add);
        }
        Optional<Stored<Task>> stored = task.flatMap(id -> TaskStore.TABLE.find(write, id));
        Optional<Stored<Task>> done = Optional.empty();
        if (stored.isPresent() && stored.get().value().isOpen()) {
            if (state.equals("done") || after.equals("again")) {
                MarkDone.Done marked = MarkDone.mark(write, Shown.of(stored.get()), date, today);
                done = Optional.of(marked.task());
                remarks.addAll(marked.remarks());
                remarks.addAll(missedShots(write, marked.task().value()));
            } else if (left.isPresent()) {
                SayLeft.say(write, Shown.of(stored.get()), left.get(), today);
            }
            if (after.equals("aside")) {
                LayAside.lay(write, now(write, stored.get()), Optional.empty(), today);
            }
        }
        if (cost.isPresent()) {
            SpendMoney.spend(write, costEntry(write, receipt.keep("")), today);
        }
        Optional<Task> listed = found.isEmpty() ? Optional.empty() : Optional.of(list(write, stored, today));
        Optional<Task> again = after.equals("again")
                ? Optional.of(again(write, stored.orElseThrow().value(), today))
                : Optional.empty();
        return new Kept(entries, what(write, stored), done, listed, again, remarks);
    }

    /** Once-only must-have shots of a finished task that nobody captured. */
    static List<Problem> missedShots(Write write, Task task) {
        return ShotStore.ofTask(write, task.id()).stream()
                .map(Stored::value)
                .filter(shot -> shot.isMissed() && shot.once())
                .map(Shot::what)
                .map(what -> Problem.remark("", what, "happens once, is a must-have shot and is not captured", ""))
                .toList();
    }

    private LedgerEntry costEntry(Write write, String receipt) {
        Map<String, String> texts = new java.util.HashMap<>();
        texts.put("id", LedgerEntryStore.nextId(write).value());
        texts.put("date", date.toString());
        texts.put(
                "amount",
                cost.orElseThrow()
                        .negated()
                        .text(weekwright.build.SettingsStore.get(write).moneyDigits()));
        texts.put("kind", "other-cost");
        texts.put("payee", payee);
        texts.put("receipt", receipt);
        task.ifPresent(id -> texts.put("task", id.value()));
        return LedgerEntryStore.TABLE
                .shape()
                .parse(texts, weekwright.build.SettingsStore.get(write).typed(), new weekwright.base.Problems())
                .orElseThrow();
    }

    private Task list(Write write, Optional<Stored<Task>> beside, LocalDate today) throws Rejected, Stale {
        Id stage = beside.orElseThrow().value().stage();
        Map<String, String> texts = Map.of(
                "id",
                TaskStore.nextId(write, stage).value(),
                "stage",
                stage.value(),
                "title",
                found,
                "kind",
                "work",
                "likely",
                foundHours.map(Hours::text).orElse(""));
        Task task = TaskStore.TABLE
                .shape()
                .parse(texts, weekwright.build.SettingsStore.get(write).typed(), new weekwright.base.Problems())
                .orElseThrow();
        Task kept = SaveTask.save(write, Optional.empty(), task, List.of(), today)
                .task()
                .value();
        Stored<Task> one = TaskStore.TABLE.find(write, beside.get().row()).orElseThrow();
        if (foundFirst && one.value().isOpen()) {
            List<Link> links =
                    new ArrayList<>(LinkStore.before(write, one.value().id()).stream()
                            .map(Stored::value)
                            .toList());
            links.add(follows(one.value().id(), kept.id()));
            SaveTask.save(write, Optional.of(Shown.of(one)), one.value(), links, today);
        }
        return kept;
    }

    /** The same work once more as a task of its own; whatever waits for the first waits for this one too. */
    private static Task again(Write write, Task old, LocalDate today) throws Rejected, Stale {
        Shape<Task> shape = TaskStore.TABLE.shape();
        Task task = shape.with(old, "id", TaskStore.nextId(write, old.stage()));
        task = shape.with(task, "title", old.title() + ", again");
        task = shape.with(task, "redo_of", Optional.of(old.id()));
        for (String column : List.of("left", "left_on", "aside_until", "added", "started", "done", "dropped")) {
            task = shape.with(task, column, Optional.empty());
        }
        Task kept = SaveTask.save(write, Optional.empty(), task, List.of(), today)
                .task()
                .value();
        for (Stored<Link> link : LinkStore.after(write, old.id())) {
            LinkStore.TABLE.insert(write, LinkStore.TABLE.shape().with(link.value(), "after", kept.id()));
        }
        return kept;
    }

    private static Link follows(Id task, Id after) {
        return new Link(task, after, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Shown now(Write write, Stored<Task> task) {
        return Shown.of(TaskStore.TABLE.find(write, task.row()).orElseThrow());
    }

    private String what(Write write, Optional<Stored<Task>> stored) {
        return stored.map(task -> task.value().title())
                .or(() -> episode.flatMap(id -> EpisodeStore.TABLE.find(write, id))
                        .map(stored1 -> Choices.title(stored1.value())))
                .orElse("shop and office");
    }
}
