package weekwright.web.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Quantity;
import weekwright.base.Shape;
import weekwright.build.EquipmentStore;
import weekwright.build.HazardCodes;
import weekwright.build.Link;
import weekwright.build.LinkStore;
import weekwright.build.SaveTask;
import weekwright.build.Shown;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;

/** The form of a task with what it follows, for adding one and for changing one. */
final class TaskFields {
    /** Lines for links: those that stand and some to fill in, at most so many. */
    private static final int LINKS_MOST = 24;

    private static final int EMPTY_LINKS = 3;
    private static final String[] COLUMNS = {
        "stage",
        "title",
        "kind",
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
        "equipment",
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
        "redo"
    };

    private TaskFields() {}

    /** What the fields are chosen from. */
    record Lists(
            List<Form.Choice> stages,
            List<Form.Choice> kinds,
            List<Form.Choice> companies,
            List<Form.Choice> cameras,
            List<Form.Choice> hazards,
            List<Form.Choice> tasks,
            List<String> equipment,
            List<Integer> links) {}

    static Lists lists(Read read, Optional<Id> self, Form form) {
        int rows = 0;
        while (rows < LINKS_MOST && form.values().containsKey("after." + rows)) {
            rows++;
        }
        List<Integer> links = new ArrayList<>();
        for (int i = 0; i < Math.max(rows, EMPTY_LINKS); i++) {
            links.add(i);
        }
        return new Lists(
                Choices.stages(read),
                Choices.words(Task.Kind.class, Map.of(Task.Kind.WORK, "work", Task.Kind.WAIT, "a wait, in days")),
                Choices.words(
                        Task.Company.class,
                        Map.of(
                                Task.Company.ALONE, "may be done alone",
                                Task.Company.CALL, "another person at work that day",
                                Task.Company.BY, "another person beside")),
                Choices.words(
                        Task.Camera.class,
                        Map.of(
                                Task.Camera.NONE, "not filmed",
                                Task.Camera.FIXED, "a camera left running",
                                Task.Camera.OPERATOR, "somebody films",
                                Task.Camera.ONCE, "once only, somebody films")),
                HazardCodes.all().stream()
                        .map(code ->
                                new Form.Choice(code, HazardCodes.title(code).orElse(code)))
                        .toList(),
                Choices.tasks(
                        read,
                        task -> task.dropped().isEmpty()
                                && self.map(id -> !Choices.same(id, task.id())).orElse(true)),
                EquipmentStore.TABLE.values(read).stream()
                        .map(one -> one.id().value())
                        .toList(),
                links);
    }

    /** The texts of a standing task's links, as the form's fields. */
    static Map<String, String> linkTexts(List<Stored<Link>> links) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (int i = 0; i < links.size(); i++) {
            Link link = links.get(i).value();
            texts.put("after." + i, link.after().value());
            texts.put("share." + i, link.share().map(Quantity::text).orElse(""));
            texts.put("wait_low." + i, link.waitLow().map(Quantity::text).orElse(""));
            texts.put("wait_likely." + i, link.waitLikely().map(Quantity::text).orElse(""));
            texts.put("wait_high." + i, link.waitHigh().map(Quantity::text).orElse(""));
        }
        int next = links.size();
        for (int i = next; i < Math.min(LINKS_MOST, next + EMPTY_LINKS); i++) {
            texts.put("after." + i, "");
        }
        return texts;
    }

    static Answer add(Request request) throws Exception {
        FormReader form = request.form();
        Optional<Task> read = form.record(Task.class, withHazards(form, Map.of("id", "new")), COLUMNS);
        List<Link> links = links(form, new Id("new"));
        return request.save(write -> {
            Id id = TaskStore.nextId(write, read.orElseThrow().stage());
            Task task = Shape.of(Task.class).with(read.get(), "id", id);
            List<Link> own = links.stream()
                    .map(link -> Shape.of(Link.class).with(link, "task", id))
                    .toList();
            SaveTask.Saved kept = SaveTask.save(write, Optional.empty(), task, own, request.today());
            return Saved.to("/build/tasks/" + id).saying("The task is added." + said(kept.remarks()));
        });
    }

    static Answer change(Request request, Stored<Task> old) throws Exception {
        FormReader form = request.form();
        Optional<Task> edited = form.edited(old.value(), COLUMNS);
        weekwright.base.Words hazards = new weekwright.base.Words(form.texts("hazards"));
        List<Link> links = links(form, old.value().id());
        return request.save(write -> {
            Task task = Shape.of(Task.class).with(edited.orElseThrow(), "hazards", hazards);
            SaveTask.Saved kept = SaveTask.save(
                    write, Optional.of(new Shown(old.row(), form.version())), task, links, request.today());
            return Saved.to("/build/tasks/" + task.id()).saying("The task is changed." + said(kept.remarks()));
        });
    }

    private static Map<String, String> withHazards(FormReader form, Map<String, String> fixed) {
        Map<String, String> texts = new LinkedHashMap<>(fixed);
        texts.put("hazards", String.join(" ", form.texts("hazards")));
        return texts;
    }

    private static String said(List<Problem> remarks) {
        StringBuilder text = new StringBuilder();
        remarks.forEach(remark ->
                text.append(' ').append(Formats.sentence(remark.sentence())).append('.'));
        return text.toString();
    }

    private static List<Link> links(FormReader form, Id task) {
        List<Link> links = new ArrayList<>();
        form.text("after");
        for (int i = 0; i < LINKS_MOST; i++) {
            Optional<Id> after = form.read("after." + i, Id.class);
            Optional<Quantity> share = form.read("share." + i, Quantity.class);
            Optional<Quantity> low = form.read("wait_low." + i, Quantity.class);
            Optional<Quantity> likely = form.read("wait_likely." + i, Quantity.class);
            Optional<Quantity> high = form.read("wait_high." + i, Quantity.class);
            if (share.map(s -> s.compareTo(Quantity.ZERO) < 0 || s.compareTo(Quantity.ONE) > 0)
                    .orElse(false)) {
                form.fault("share." + i, form.text("share." + i), "is not a share", "write 0 to 1, such as 0.5");
            }
            after.ifPresent(id -> links.add(new Link(task, id, share, low, likely, high)));
        }
        return links;
    }

    static List<Stored<Link>> before(Read read, Id task) {
        return LinkStore.before(read, task);
    }
}
