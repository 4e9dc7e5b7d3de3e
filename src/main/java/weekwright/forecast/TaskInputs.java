package weekwright.forecast;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Id;
import weekwright.base.Quantity;
import weekwright.base.Words;
import weekwright.build.Equipment;
import weekwright.build.HazardCodes;
import weekwright.build.HoursEntry;
import weekwright.build.Stage;
import weekwright.build.Task;
import weekwright.engine.Inputs;

/** Stages, tasks, links and equipment as the engine takes them, defaults resolved. Pure. */
final class TaskInputs {
    private static final int MINUTES_AN_HOUR = 60;

    private final Facts facts;
    private final Map<String, Equipment> equipment = new HashMap<>();
    private final Map<String, List<Inputs.Worked>> logs = new HashMap<>();
    private final Map<String, List<Integer>> shots = new HashMap<>();

    TaskInputs(Facts facts) {
        this.facts = facts;
        facts.equipment().forEach(row -> equipment.put(row.id().value(), row));
        facts.hours().stream()
                .filter(entry -> entry.task().isPresent() && facts.known(entry.date()))
                .sorted(Comparator.comparing(HoursEntry::date))
                .forEach(this::log);
        facts.shots().stream()
                .filter(shot -> shot.task().isPresent()
                        && shot.captured().filter(facts::known).isPresent())
                .forEach(shot -> shots.computeIfAbsent(facts.id("task", shot.task()), id -> new ArrayList<>())
                        .add(Facts.day(shot.captured())));
    }

    private void log(HoursEntry entry) {
        if (entry.asOrDefault() == HoursEntry.As.SHOP || entry.asOrDefault() == HoursEntry.As.OFFICE) {
            return;
        }
        boolean filmed = entry.filmed()
                || entry.footageMinutes().map(m -> m.value().signum() > 0).orElse(false);
        logs.computeIfAbsent(facts.id("task", entry.task()), id -> new ArrayList<>())
                .add(new Inputs.Worked(
                        Facts.day(entry.date()),
                        facts.id("crew", entry.crew()),
                        Inputs.As.valueOf(entry.asOrDefault().name()),
                        entry.hours().minutes() * entry.peopleOrDefault(),
                        entry.pieces().orElse(0),
                        filmed));
    }

    /** A stage without an order stands at its row, from 1. */
    List<Inputs.Stage> stages() {
        List<Inputs.Stage> stages = new ArrayList<>();
        for (Stage stage : facts.stages()) {
            stages.add(new Inputs.Stage(
                    stage.id().value(),
                    stage.order().orElse(stages.size() + 1),
                    Facts.number(stage.weight(), 1),
                    stage.side(),
                    Facts.hoursRange(stage.roughLow(), stage.roughLikely(), stage.roughHigh())));
        }
        return stages;
    }

    List<Inputs.Task> tasks() {
        return facts.tasks().stream().map(this::task).toList();
    }

    private Inputs.Task task(Task task) {
        String id = task.id().value();
        List<Inputs.Worked> log = logs.getOrDefault(id, List.of());
        List<Inputs.Need> needs = needs(task.equipment());
        List<String> hazards = hazards(task, needs);
        boolean saidInTime =
                task.left().isPresent() && task.leftOn().map(facts::known).orElse(true);
        return new Inputs.Task(
                id,
                facts.id("stage", task.stage()),
                Inputs.Kind.valueOf(task.kind().name()),
                estimate(task),
                task.piecesOrDefault(),
                Facts.number(task.learning(), 100),
                task.handsOrDefault(),
                task.leastHandsOrDefault(),
                task.trades().list(),
                Inputs.Company.valueOf(company(task, hazards).name()),
                needs,
                Facts.number(task.without(), -1),
                task.outdoors(),
                Facts.monthDay(task.seasonFrom()),
                Facts.monthDay(task.seasonTo()),
                Facts.day(task.notBefore()),
                Facts.day(task.booked()),
                Facts.range(task.rebookLow(), task.rebookLikely(), task.rebookHigh(), Facts.Defaults.SAME, 1),
                task.oneGo(),
                task.priority().orElse(0),
                Inputs.Camera.valueOf(task.cameraOrDefault().name()),
                Facts.number(task.cameraExtra(), -1),
                Facts.number(task.storyMinutes(), 0),
                task.storyTold(),
                hazards,
                saidInTime ? task.left().get().minutes() : -1,
                saidInTime ? Facts.day(task.leftOn()) : Inputs.NONE,
                Facts.day(task.asideUntil()),
                started(task, log),
                facts.fact(task.done()),
                facts.fact(task.dropped()),
                log,
                shots.getOrDefault(id, List.of()),
                task.fill(),
                Facts.number(task.fail(), 0),
                Facts.number(task.redo(), 100),
                facts.fact(task.added()));
    }

    /** Work in person-minutes, a wait in days; a wait without days takes none, work without hours is guessed (rule 121). */
    private static Inputs.Range estimate(Task task) {
        if (task.isWork()) {
            return Facts.range(task.low(), task.likely(), task.high(), Facts.Defaults.HOURS, MINUTES_AN_HOUR);
        }
        Inputs.Range days = Facts.range(task.low(), task.likely(), task.high(), Facts.Defaults.SAME, 1);
        return days.given() ? days : Inputs.Range.ZERO;
    }

    /** Work has begun with its first hours of the hands (rule 16) where no day is written; a wait is told by its day alone (rule 113). */
    private int started(Task task, List<Inputs.Worked> log) {
        int written = facts.fact(task.started());
        return written == Inputs.NONE && task.isWork()
                ? log.stream()
                        .filter(worked -> worked.as() == Inputs.As.HANDS)
                        .mapToInt(Inputs.Worked::date)
                        .findFirst()
                        .orElse(Inputs.NONE)
                : written;
    }

    /** Words such as {@code trestle:2}. */
    List<Inputs.Need> needs(Words words) {
        List<Inputs.Need> needs = new ArrayList<>();
        for (String word : words.list()) {
            int colon = word.indexOf(':');
            String id = colon < 0 ? word : word.substring(0, colon);
            int quantity = colon < 0 ? 1 : Integer.parseInt(word.substring(colon + 1));
            needs.add(new Inputs.Need(facts.id("equipment", new Id(id)), quantity));
        }
        return needs;
    }

    /** Its own and those of its equipment (rule 119), each once. */
    private List<String> hazards(Task task, List<Inputs.Need> needs) {
        Set<String> hazards = new LinkedHashSet<>(task.hazards().list());
        for (Inputs.Need need : needs) {
            Optional.ofNullable(equipment.get(need.equipment()))
                    .ifPresent(row -> hazards.addAll(row.hazards().list()));
        }
        return List.copyOf(hazards);
    }

    private static Task.Company company(Task task, List<String> hazards) {
        return task.company().orElseGet(() -> HazardCodes.company(hazards));
    }

    List<Inputs.Link> links() {
        return facts.links().stream()
                .map(link -> new Inputs.Link(
                        facts.id("task", link.task()),
                        facts.id("task", link.after()),
                        Facts.number(link.share(), 1),
                        wait(link.waitLow(), link.waitLikely(), link.waitHigh())))
                .toList();
    }

    private static Inputs.Range wait(Optional<Quantity> low, Optional<Quantity> likely, Optional<Quantity> high) {
        Inputs.Range days = Facts.range(low, likely, high, Facts.Defaults.SAME, 1);
        return days.given() ? days : Inputs.Range.ZERO;
    }

    List<Inputs.Equipment> equipment() {
        return facts.equipment().stream()
                .map(row -> new Inputs.Equipment(
                        row.id().value(),
                        row.quantityOrDefault(),
                        row.kept(),
                        facts.id("task", row.readyAfter()),
                        Facts.day(row.downFrom()),
                        Facts.range(row.backLow(), row.backLikely(), row.backHigh(), Facts.Defaults.SAME, 1)))
                .toList();
    }
}
