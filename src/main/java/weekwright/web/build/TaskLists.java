package weekwright.web.build;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Id;
import weekwright.build.Equipment;
import weekwright.build.EquipmentStore;
import weekwright.build.HazardCodes;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.web.parts.Choices;

/**
 * What the fields of a task are chosen from, and which of its folded groups stand open.
 *
 * @param tasks by stage, in the order of the build
 * @param links the numbers of the rows for links
 * @param finished whose hours can be copied
 * @param asked the company that the hazards chosen ask for, in words
 * @param proposed hazards that the title proposed already
 * @param open names of the groups in which something stands or is wrong
 */
record TaskLists(
        List<Form.Choice> stages,
        List<Form.Choice> kinds,
        List<Form.Choice> companies,
        List<Form.Choice> cameras,
        List<Form.Choice> hazards,
        List<Group> tasks,
        List<Machine> equipment,
        List<Integer> links,
        List<Form.Choice> finished,
        String asked,
        List<String> proposed,
        Set<String> open) {
    private static final Map<Task.Company, String> COMPANY = Map.of(
            Task.Company.ALONE, "may be done alone",
            Task.Company.CALL, "another person at work that day",
            Task.Company.BY, "another person beside");
    private static final Map<String, List<String>> GROUPS = Map.of(
            "sure", List.of("low", "high", "learning", "like"),
            "danger", List.of("hazards", "company", "company_reason"),
            "when",
                    List.of(
                            "outdoors",
                            "one_go",
                            "fill",
                            "not_before",
                            "season_from",
                            "season_to",
                            "priority",
                            "booked",
                            "rebook_low",
                            "rebook_likely",
                            "rebook_high"),
            "film", List.of("camera", "camera_extra", "story_minutes", "story_told"),
            "fail", List.of("fail", "redo", "redo_of"));

    /** The tasks of one stage. */
    record Group(String name, List<Form.Choice> tasks) {}

    /**
     * A machine or a set of things.
     *
     * @param field of the form, for how many
     * @param said how many there are, and its hazards
     */
    record Machine(String field, String name, String said) {}

    static TaskLists of(Read read, Optional<Id> self, Form form) {
        List<Equipment> machines = EquipmentStore.TABLE.values(read);
        Set<String> open = new HashSet<>();
        GROUPS.forEach((group, fields) -> {
            if (fields.stream().anyMatch(field -> stands(form, field))) {
                open.add(group);
            }
        });
        if (stands(form, "without") || machines.stream().anyMatch(one -> stands(form, TaskFields.field(one.id())))) {
            open.add("with");
        }
        int rows = 0;
        while (rows < TaskFields.LINKS_MOST && form.values().containsKey("after." + rows)) {
            rows++;
        }
        List<Integer> links = new ArrayList<>();
        for (int i = 0; i < Math.max(rows, 1); i++) {
            links.add(i);
        }
        return new TaskLists(
                Choices.stages(read),
                List.of(
                        new Form.Choice("work", "hours of work"),
                        new Form.Choice("pieces", "pieces, one after the other"),
                        new Form.Choice("wait", "a wait, in days")),
                Choices.words(Task.Company.class, COMPANY),
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
                groups(read, self),
                machines.stream()
                        .map(one -> new Machine(TaskFields.field(one.id()), one.name(), said(one)))
                        .toList(),
                links,
                LikeTask.choices(read, self),
                COMPANY.get(HazardCodes.company(hazards(form, machines))),
                form.values().getOrDefault("proposed", List.of()),
                open);
    }

    /** The hazards ticked and those of the equipment named, as the form stands. */
    private static Set<String> hazards(Form form, List<Equipment> machines) {
        Set<String> hazards = new LinkedHashSet<>(form.values().getOrDefault("hazards", List.of()));
        machines.stream()
                .filter(one -> form.value(TaskFields.field(one.id())).matches("0*[1-9][0-9]*"))
                .forEach(one -> hazards.addAll(one.hazards().list()));
        return hazards;
    }

    private static boolean stands(Form form, String field) {
        return !form.value(field).isEmpty() || !form.error(field).isEmpty();
    }

    private static String said(Equipment one) {
        List<String> titles = one.hazards().list().stream()
                .map(code -> HazardCodes.title(code).orElse(code))
                .toList();
        return "of " + one.quantityOrDefault() + (titles.isEmpty() ? "" : ". " + String.join(", ", titles));
    }

    static List<Group> groups(Read read, Optional<Id> self) {
        Map<String, List<Form.Choice>> byStage = new LinkedHashMap<>();
        for (Task task : TaskStore.TABLE.values(read)) {
            if (task.dropped().isEmpty() && self.map(id -> !id.same(task.id())).orElse(true)) {
                byStage.computeIfAbsent(task.stage().folded(), s -> new ArrayList<>())
                        .add(new Form.Choice(task.id().value(), task.title()));
            }
        }
        return StageStore.inOrder(read).stream()
                .map(Stored::value)
                .filter(stage -> byStage.containsKey(stage.id().folded()))
                .map(stage -> new Group(stage.name(), byStage.get(stage.id().folded())))
                .toList();
    }
}
