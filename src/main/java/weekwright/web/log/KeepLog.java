package weekwright.web.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Rejected;
import weekwright.base.Shape;
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
import weekwright.build.SettingsStore;
import weekwright.build.Shown;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.FinishFilmed;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.SpendMoney;
import weekwright.web.parts.Choices;
import weekwright.web.parts.ReceiptField;

/** Writes what was typed into the form of Log as one act; what is refused stands at the fields it came from, all at once. */
final class KeepLog {
    private interface Act<T> {
        T act() throws Rejected, Stale;
    }

    private final Write write;
    private final LogForm typed;
    private final ReceiptField receipt;
    private final LocalDate today;
    private final Problems faults = new Problems();
    private final List<Problem> remarks = new ArrayList<>();

    private KeepLog(Write write, LogForm typed, ReceiptField receipt, LocalDate today) {
        this.write = write;
        this.typed = typed;
        this.receipt = receipt;
        this.today = today;
    }

    /** @param today in the project's zone */
    static KeptLog keep(Write write, LogForm typed, ReceiptField receipt, LocalDate today) throws Rejected, Stale {
        return new KeepLog(write, typed, receipt, today).keep();
    }

    private KeptLog keep() throws Rejected, Stale {
        List<HoursEntry> entries = entries();
        Optional<Stored<Task>> task = typed.entry().task().flatMap(id -> TaskStore.TABLE.find(write, id));
        boolean open = task.map(one -> one.value().isOpen()).orElse(false);
        Optional<Task> done = open ? standing(task.get()) : Optional.empty();
        if (typed.cost().isPresent()) {
            placed(Map.of("amount", "cost"), "cost", () -> SpendMoney.spend(write, costEntry(), today));
        }
        Optional<Task> found = typed.found().isEmpty() || task.isEmpty()
                ? Optional.empty()
                : placed(Map.of("likely", "found_hours"), "found", () -> list(task.get()));
        Optional<Task> again = !typed.after().equals("again") || task.isEmpty()
                ? Optional.empty()
                : placed(Map.of(), "after", () -> again(task.get().value()));
        Rejected.ifFaults(faults);
        return new KeptLog(typed, entries, what(task), done, found, again, remarks);
    }

    /** Pieces, footage and note go with the first person's entry, so that none counts twice. */
    private List<HoursEntry> entries() {
        List<HoursEntry> entries = new ArrayList<>();
        Shape<HoursEntry> shape = HoursEntryStore.TABLE.shape();
        for (Id person : typed.crew()) {
            boolean chief = person.equals(typed.crew().get(0));
            HoursEntry entry = shape.with(typed.entry(), "id", HoursEntryStore.nextId(write));
            entry = shape.with(entry, "crew", person);
            if (chief && typed.others() > 0) {
                entry = shape.with(entry, "people", Optional.of(typed.others() + 1));
            }
            for (String column : chief ? List.<String>of() : List.of("pieces", "spoiled", "footage_minutes")) {
                entry = shape.with(entry, column, Optional.empty());
            }
            entry = chief ? entry : shape.with(entry, "note", "");
            try {
                LoggedHours logged = LogHours.log(write, entry, today);
                entries.add(logged.entry().value());
                logged.remarks().stream()
                        .filter(remark -> !remarks.contains(remark))
                        .forEach(remarks::add);
            } catch (Rejected rejected) {
                for (Problem fault : rejected.problems()) {
                    Problem here = LogForm.placed(fault, typed.field());
                    if (!faults.list().contains(here)) {
                        faults.add(here);
                    }
                }
            }
        }
        return entries;
    }

    /** How the task stands: done, nearly, laid aside. */
    private Optional<Task> standing(Stored<Task> task) throws Stale {
        Optional<Task> done = Optional.empty();
        if (typed.state().equals("done") || typed.after().equals("again")) {
            Optional<MarkDone.Done> marked = placed(
                    Map.of("day", "date", FinishFilmed.FIELD, FinishFilmed.FIELD),
                    typed.state().equals("done") ? "state" : "after",
                    () -> FinishFilmed.finish(write, now(task), typed.entry().date(), typed.missed(), today));
            marked.ifPresent(one -> remarks.addAll(one.remarks()));
            done = marked.map(one -> one.task().value());
        } else if (typed.left().isPresent()) {
            placed(
                    Map.of(),
                    "left",
                    () -> SayLeft.say(write, now(task), typed.left().get(), today));
        }
        if (typed.after().equals("aside")) {
            placed(Map.of(), "after", () -> LayAside.lay(write, now(task), Optional.empty(), today));
        }
        return done;
    }

    /**
     * Does one thing more. What the hours were refused for already is not told again.
     *
     * @param fields where the faults of columns stand; those of any other at {@code chief}
     */
    private <T> Optional<T> placed(Map<String, String> fields, String chief, Act<T> act) throws Stale {
        try {
            return Optional.of(act.act());
        } catch (Rejected rejected) {
            List<String> told = faults.list().stream().map(Problem::column).toList();
            for (Problem fault : rejected.problems()) {
                String field = fault.column().equals("date") ? "date" : fields.getOrDefault(fault.column(), chief);
                if (!told.contains(field)) {
                    faults.add(LogForm.at(field, fault));
                }
            }
            return Optional.empty();
        }
    }

    private LedgerEntry costEntry() {
        int digits = SettingsStore.get(write).moneyDigits();
        Map<String, String> texts = new HashMap<>();
        texts.put("id", LedgerEntryStore.nextId(write).value());
        texts.put("date", typed.entry().date().toString());
        texts.put("amount", typed.cost().orElseThrow().negated().text(digits));
        texts.put("kind", "other-cost");
        texts.put("payee", typed.payee());
        texts.put("receipt", receipt.keep(""));
        typed.entry().task().ifPresent(id -> texts.put("task", id.value()));
        return made(LedgerEntryStore.TABLE.shape(), texts, Reading.file(digits));
    }

    private Task list(Stored<Task> beside) throws Rejected, Stale {
        Id stage = beside.value().stage();
        Map<String, String> texts = Map.of(
                "id",
                TaskStore.nextId(write, stage).value(),
                "stage",
                stage.value(),
                "title",
                typed.found(),
                "kind",
                "work",
                "likely",
                typed.foundHours().map(Hours::text).orElse(""));
        Task task = made(TaskStore.TABLE.shape(), texts, Reading.file(0));
        Task kept = SaveTask.save(write, Optional.empty(), task, List.of(), today)
                .task()
                .value();
        Stored<Task> one = TaskStore.TABLE.find(write, beside.row()).orElseThrow();
        if (typed.foundFirst() && one.value().isOpen()) {
            List<Link> links =
                    new ArrayList<>(LinkStore.before(write, one.value().id()).stream()
                            .map(Stored::value)
                            .toList());
            links.add(follows(one.value().id(), kept.id()));
            SaveTask.save(write, Optional.of(Shown.of(one)), one.value(), links, today);
        }
        return kept;
    }

    /** A record of texts that the form has checked under the same bounds. */
    private static <R extends Record> R made(Shape<R> shape, Map<String, String> texts, Reading reading) {
        Problems slips = new Problems();
        return shape.parse(texts, reading, slips)
                .orElseThrow(() -> new IllegalStateException("the form let pass: " + slips.list()));
    }

    /** The same work once more as a task of its own; whatever waits for the first waits for this one too. */
    private Task again(Task old) throws Rejected, Stale {
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

    private Shown now(Stored<Task> task) {
        return Shown.of(TaskStore.TABLE.find(write, task.row()).orElseThrow());
    }

    private String what(Optional<Stored<Task>> task) {
        return task.map(one -> one.value().title())
                .or(() -> typed.entry()
                        .episode()
                        .flatMap(id -> EpisodeStore.TABLE.find(write, id))
                        .map(one -> Choices.title(one.value())))
                .orElse("shop and office");
    }
}
