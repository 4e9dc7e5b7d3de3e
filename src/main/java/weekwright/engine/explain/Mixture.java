package weekwright.engine.explain;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weekwright.engine.Inputs;

/**
 * A project as it would stand if some of the causes between two forecasts had happened and the others not (rule 96): each field is
 * taken from the side of its cause; the as-of day belongs to {@link Cause#WORK}; facts about things that the mixture does not hold
 * are ignored.
 */
public final class Mixture {
    private final Inputs facts;
    private final Inputs estimates;
    private final Inputs plan;
    private final Inputs materials;
    private final Inputs money;

    private Mixture(Inputs then, Inputs now, int causes) {
        facts = side(then, now, causes, Cause.WORK);
        estimates = side(then, now, causes, Cause.ESTIMATES);
        plan = side(then, now, causes, Cause.PLAN);
        materials = side(then, now, causes, Cause.MATERIALS);
        money = side(then, now, causes, Cause.MONEY);
    }

    private static Inputs side(Inputs then, Inputs now, int causes, Cause cause) {
        return (causes >> cause.ordinal() & 1) == 1 ? now : then;
    }

    /** @param causes a bit for each {@link Cause} that has happened */
    public static Inputs of(Inputs then, Inputs now, int causes) {
        return new Mixture(then, now, causes).inputs();
    }

    private Inputs inputs() {
        Set<String> tasks = new HashSet<>();
        plan.tasks().forEach(task -> tasks.add(task.id()));
        Set<String> levels = new HashSet<>();
        money.levels().forEach(level -> levels.add(level.id()));
        Inputs.Publishing slots = plan.publishing();
        return new Inputs(
                facts.asOf(),
                plan.horizonMonths(),
                plan.crew(),
                plan.crewHours(),
                plan.daysOff(),
                plan.gatherings(),
                facts.workedToday(),
                facts.turnout(),
                stages(),
                tasks(),
                plan.links(),
                plan.equipment(),
                plan.ownLines().stream()
                        .filter(line -> line.date() >= facts.asOf())
                        .toList(),
                materials.materials().stream()
                        .filter(line -> tasks.contains(line.task()))
                        .map(this::known)
                        .toList(),
                episodes(),
                new Inputs.Publishing(
                        slots.weekday(),
                        slots.first(),
                        slots.everyWeeks(),
                        slots.targetMinutes(),
                        slots.earlyDays(),
                        slots.editWindowDays(),
                        estimates.publishing().editMinutes(),
                        slots.chargesAMonth(),
                        slots.emptyLeaving(),
                        slots.skip(),
                        slots.editDays(),
                        slots.bankFloorWeeks(),
                        slots.leftEmpty()),
                plan.weather(),
                materials.orders(),
                plan.model(),
                money.money(),
                money.levels(),
                money.supporters().stream()
                        .filter(row -> levels.contains(row.level()))
                        .toList(),
                money.regular(),
                plan.kept());
    }

    private List<Inputs.Stage> stages() {
        Map<String, Inputs.Stage> estimated = new HashMap<>();
        estimates.stages().forEach(stage -> estimated.put(stage.id(), stage));
        return plan.stages().stream()
                .map(stage -> new Inputs.Stage(
                        stage.id(),
                        stage.order(),
                        stage.weight(),
                        stage.side(),
                        estimated.getOrDefault(stage.id(), stage).roughMinutes()))
                .toList();
    }

    private List<Inputs.Task> tasks() {
        Map<String, Inputs.Task> estimated = byId(estimates);
        Map<String, Inputs.Task> known = byId(facts);
        List<Inputs.Task> all = new ArrayList<>();
        for (Inputs.Task p : plan.tasks()) {
            Inputs.Task same = estimated.get(p.id());
            Inputs.Task e = same != null && same.kind() == p.kind() ? same : p;
            Inputs.Task f = known.get(p.id());
            boolean there = f != null;
            all.add(new Inputs.Task(
                    p.id(),
                    p.stage(),
                    p.kind(),
                    e.estimate(),
                    e.pieces(),
                    e.learningPercent(),
                    p.hands(),
                    p.leastHands(),
                    p.trades(),
                    p.company(),
                    p.equipment(),
                    p.withoutPercent(),
                    p.outdoors(),
                    p.seasonFrom(),
                    p.seasonTo(),
                    p.notBefore(),
                    p.booked(),
                    p.rebookDays(),
                    p.oneGo(),
                    p.priority(),
                    p.camera(),
                    p.cameraExtraPercent(),
                    e.storyMinutes(),
                    p.storyTold(),
                    p.hazards(),
                    there ? f.leftMinutes() : -1,
                    there ? f.leftOn() : Inputs.NONE,
                    p.asideUntil(),
                    there ? f.started() : Inputs.NONE,
                    there ? f.done() : Inputs.NONE,
                    known(p.dropped()),
                    there ? f.log() : List.of(),
                    there ? f.shotDays() : List.of(),
                    p.fill(),
                    e.failPercent(),
                    e.redoPercent(),
                    p.added()));
        }
        return all;
    }

    /** What was dropped, ordered or received since is so from the as-of day on, be that the earlier one: it is no passing of days. */
    private int known(int date) {
        return Math.min(date, facts.asOf());
    }

    private Inputs.Material known(Inputs.Material line) {
        return line.with(line.priceMinor(), known(line.ordered()), known(line.received()));
    }

    private static Map<String, Inputs.Task> byId(Inputs inputs) {
        Map<String, Inputs.Task> tasks = new HashMap<>();
        inputs.tasks().forEach(task -> tasks.put(task.id(), task));
        return tasks;
    }

    private List<Inputs.Episode> episodes() {
        Map<String, Inputs.Episode> estimated = new HashMap<>();
        estimates.episodes().forEach(episode -> estimated.put(episode.id(), episode));
        Map<String, Inputs.Episode> known = new HashMap<>();
        facts.episodes().forEach(episode -> known.put(episode.id(), episode));
        List<Inputs.Episode> all = new ArrayList<>();
        for (Inputs.Episode p : plan.episodes()) {
            Inputs.Episode f = known.get(p.id());
            boolean there = f != null;
            all.add(new Inputs.Episode(
                    p.id(),
                    p.kind(),
                    p.slot(),
                    estimated.getOrDefault(p.id(), p).editMinutes(),
                    p.editor(),
                    there ? f.editedMinutes() : 0,
                    there ? f.footageComplete() : Inputs.NONE,
                    there ? f.cut() : Inputs.NONE,
                    there ? f.published() : Inputs.NONE,
                    p.tells()));
        }
        return all;
    }
}
