package weekwright.web.build;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.Shape;
import weekwright.base.Words;
import weekwright.build.Equipment;
import weekwright.build.EquipmentNeeds;
import weekwright.build.EquipmentStore;
import weekwright.build.HazardCodes;
import weekwright.build.HazardWords;
import weekwright.build.Link;
import weekwright.build.LinkRules;
import weekwright.build.LinkStore;
import weekwright.build.SaveTask;
import weekwright.build.Shown;
import weekwright.build.Task;
import weekwright.build.TaskHazards;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Remarks;

/** The form of a task with what it follows, for adding one and for changing one. */
final class TaskFields {
    /** A row for each link; more than any task has. */
    static final int LINKS_MOST = 200;

    private static final List<String> LINK_COLUMNS = List.of("share", "wait_low", "wait_likely", "wait_high");
    private static final Shape<Task> SHAPE = Shape.of(Task.class);
    /** Columns whose fields have their names; kind, hazards and equipment are read apart. */
    private static final String[] COLUMNS = {
        "stage",
        "title",
        "low",
        "likely",
        "high",
        "pieces",
        "learning",
        "hands",
        "least_hands",
        "trades",
        "company",
        "company_reason",
        "without",
        "outdoors",
        "season_from",
        "season_to",
        "not_before",
        "booked",
        "rebook_low",
        "rebook_likely",
        "rebook_high",
        "one_go",
        "priority",
        "fill",
        "camera",
        "camera_extra",
        "story_minutes",
        "story_told",
        "fail",
        "redo",
        "redo_of"
    };

    private TaskFields() {}

    /** The field for how many of a machine a task needs. */
    static String field(Id equipment) {
        return "equipment." + equipment.value();
    }

    /** The form of a standing task with its links, as it is first shown. */
    static Form filled(Read read, Task task, Form form) {
        Map<String, List<String>> values = new LinkedHashMap<>(form.values());
        values.put("hazards", task.hazards().list());
        values.put("proposed", HazardWords.of(task.title()));
        values.put("kind", List.of(!task.isWork() ? "wait" : task.pieces().isPresent() ? "pieces" : "work"));
        EquipmentNeeds.of(task)
                .counts()
                .forEach((id, count) -> EquipmentStore.TABLE
                        .find(read, id)
                        .ifPresent(one -> values.put(field(one.value().id()), List.of(String.valueOf(count)))));
        linkTexts(LinkStore.before(read, task.id())).forEach((name, text) -> values.put(name, List.of(text)));
        return new Form(form.csrf(), form.answerKey(), form.version(), values, form.errors());
    }

    private static Map<String, String> linkTexts(List<Stored<Link>> links) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (int i = 0; i < links.size(); i++) {
            Map<String, String> columns =
                    Shape.of(Link.class).texts(links.get(i).value(), 0);
            texts.put("after." + i, columns.get("after"));
            for (String column : LINK_COLUMNS) {
                texts.put(column + "." + i, columns.get(column));
            }
        }
        texts.put("after." + links.size(), "");
        return texts;
    }

    static Answer add(Request request) throws Exception {
        FormReader form = request.form();
        Optional<Answer> other = otherButton(request, Optional.empty());
        if (other.isPresent()) {
            return other.get();
        }
        Map<String, String> fixed = new LinkedHashMap<>(Map.of("id", "new", "kind", kind(form)));
        fixed.put("hazards", String.join(" ", form.texts("hazards")));
        fixed.put("equipment", equipment(request).text());
        Optional<Task> read = form.record(Task.class, fixed, COLUMNS);
        List<Link> links = links(form, new Id("new"));
        Optional<Answer> proposal = proposal(request, read);
        if (proposal.isPresent()) {
            return proposal.get();
        }
        return request.save(write -> {
            Id id = TaskStore.nextId(write, read.orElseThrow().stage());
            Task task = SHAPE.with(read.get(), "id", id);
            List<Link> own = links.stream()
                    .map(link -> Shape.of(Link.class).with(link, "task", id))
                    .toList();
            SaveTask.Saved kept = SaveTask.save(write, Optional.empty(), task, own, request.today());
            return Saved.to("/build/tasks/" + id).saying("The task is added." + Remarks.said(kept.remarks()));
        });
    }

    static Answer change(Request request, Stored<Task> old) throws Exception {
        FormReader form = request.form();
        Optional<Answer> other = otherButton(request, Optional.of(old.value().id()));
        if (other.isPresent()) {
            return other.get();
        }
        String kind = kind(form);
        Words needs = equipment(request);
        Words hazards = new Words(form.texts("hazards"));
        Optional<Object> kindRead = SHAPE.field("kind").orElseThrow().parse(kind, form.reading(), form.problems());
        Optional<Task> edited = form.edited(old.value(), COLUMNS)
                .map(task -> SHAPE.with(task, "kind", kindRead.orElse(task.kind())))
                .map(task -> SHAPE.with(task, "equipment", needs))
                .map(task -> SHAPE.with(task, "hazards", hazards));
        List<Link> links = links(form, old.value().id());
        Optional<Answer> proposal = proposal(request, edited);
        if (proposal.isPresent()) {
            return proposal.get();
        }
        return request.save(write -> {
            SaveTask.Saved kept = SaveTask.save(
                    write,
                    Optional.of(new Shown(old.row(), form.version())),
                    edited.orElseThrow(),
                    links,
                    request.today());
            return Saved.to("/build/tasks/" + old.value().id())
                    .saying("The task is saved." + Remarks.said(kept.remarks()));
        });
    }

    /** The buttons that fill in and save nothing: another link, the hours of a finished task. */
    private static Optional<Answer> otherButton(Request request, Optional<Id> self) {
        FormReader form = request.form();
        if (form.act().equals("link")) {
            int rows = 0;
            while (rows < LINKS_MOST - 1 && form.has("after." + rows)) {
                rows++;
            }
            Map<String, List<String>> more = Map.of("after." + rows, List.of());
            return Optional.of(new Answer.Again(more, ""));
        }
        if (form.act().equals("like")) {
            Optional<LikeTask.Copied> copied =
                    form.read("like", Id.class).flatMap(id -> request.read(read -> LikeTask.of(read, id)));
            return Optional.of(copied.map(c -> new Answer.Again(c.fields(), c.said()))
                    .orElseGet(() -> new Answer.Again(Map.of(), "Choose the finished task whose hours are copied.")));
        }
        return Optional.empty();
    }

    /**
     * Words of the title may propose hazards: they are ticked, and the form comes once more so that somebody looks. What was
     * proposed once is not proposed again.
     */
    private static Optional<Answer> proposal(Request request, Optional<Task> task) throws Exception {
        FormReader form = request.form();
        List<String> before = form.texts("proposed");
        form.check();
        if (task.isEmpty() || !task.get().isWork()) {
            return Optional.empty();
        }
        Set<String> have = new HashSet<>(request.read(read -> TaskHazards.of(read, task.get())));
        List<String> fresh = HazardWords.of(task.get().title()).stream()
                .filter(code -> !before.contains(code) && !have.contains(code))
                .toList();
        if (fresh.isEmpty()) {
            return Optional.empty();
        }
        List<String> ticked = new ArrayList<>(task.get().hazards().list());
        ticked.addAll(fresh);
        List<String> all = new ArrayList<>(before);
        all.addAll(fresh);
        List<String> titles = fresh.stream()
                .map(code -> HazardCodes.title(code).orElse(code).toLowerCase(Locale.ROOT))
                .toList();
        return Optional.of(new Answer.Again(
                Map.of("hazards", ticked, "proposed", all),
                "Not saved yet: the title speaks of " + Formats.list(titles)
                        + ", which is ticked under Hazards now. Take it out if it is not so, then save."));
    }

    private static String kind(FormReader form) {
        String kind = form.text("kind");
        if (!kind.equals("pieces")) {
            return kind;
        }
        if (form.text("pieces").isEmpty()) {
            form.fault("pieces", "", "is missing", "write how many pieces there are, or choose hours of work");
        }
        return "work";
    }

    /** The counts of the machines' fields as the words of the column. */
    private static Words equipment(Request request) {
        FormReader form = request.form();
        List<String> words = new ArrayList<>();
        for (Equipment one : request.read(EquipmentStore.TABLE::values)) {
            String field = field(one.id());
            String text = form.text(field);
            if (text.matches("0*")) {
                continue;
            }
            if (!text.matches("[0-9]{1,4}")) {
                form.fault(field, text, "is not how many of it are held", "write a whole number up to 9999");
                continue;
            }
            int count = Integer.parseInt(text);
            words.add(one.id().value() + (count == 1 ? "" : ":" + count));
        }
        return new Words(words);
    }

    private static List<Link> links(FormReader form, Id task) {
        List<Link> links = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        form.text("after");
        form.texts("like");
        for (int i = 0; i < LINKS_MOST; i++) {
            String row = "." + i;
            Optional<Id> after = form.read("after" + row, Id.class);
            Optional<Quantity> share = form.read("share" + row, Quantity.class);
            Optional<Quantity> low = form.read("wait_low" + row, Quantity.class);
            Optional<Quantity> likely = form.read("wait_likely" + row, Quantity.class);
            Optional<Quantity> high = form.read("wait_high" + row, Quantity.class);
            share.filter(s -> s.compareTo(Quantity.ZERO) < 0 || s.compareTo(Quantity.ONE) > 0)
                    .ifPresent(s -> form.fault("share" + row, s.text(), "is not a share", "write 0 to 1, such as 0.5"));
            Map<String, Optional<Quantity>> waits = Map.of("wait_low", low, "wait_likely", likely, "wait_high", high);
            waits.forEach((column, days) -> days.filter(
                            d -> d.compareTo(Quantity.ZERO) < 0 || d.compareTo(Quantity.of(3650)) > 0)
                    .ifPresent(d -> form.fault(column + row, d.text(), "is not a wait", "write 0 to 3650 days")));
            if (after.isEmpty()) {
                boolean alone = LINK_COLUMNS.stream()
                        .anyMatch(column -> !form.text(column + row).isEmpty());
                if (alone && form.text("after" + row).isEmpty()) {
                    form.fault(
                            "after" + row,
                            "",
                            "is missing beside its share or wait",
                            "choose the task, or empty the row");
                }
                continue;
            }
            Link link = new Link(task, after.get(), share, low, likely, high);
            Problems own = new Problems();
            LinkRules.check(link, own);
            own.list().forEach(p -> form.fault(p.column() + row, p.read(), p.rule(), p.remedy()));
            if (!seen.add(after.get().folded())) {
                form.fault("after" + row, "", "names the same task as a row above", "name each task once");
            }
            links.add(link);
        }
        return links;
    }
}
