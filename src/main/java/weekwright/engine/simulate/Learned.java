package weekwright.engine.simulate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.engine.Inputs;
import weekwright.engine.Inputs.As;
import weekwright.engine.Inputs.Camera;
import weekwright.engine.Inputs.Kind;
import weekwright.engine.Inputs.Task;
import weekwright.engine.Inputs.Worked;

/** What the finished tasks teach: the effort ratio, and the hours that stand in for a task without an estimate. */
public final class Learned {
    private final Inputs inputs;
    private final EffortRatio ratio;
    private final Found found;
    private final Purchases purchases;
    private final LateTogether late;
    private final List<String> ignored = new ArrayList<>();
    private final List<Finished> finished = new ArrayList<>();

    /**
     * A finished task that the effort ratio is learned from.
     *
     * @param task its position in the inputs
     * @param estimateMinutes mean of its estimate, all pieces and a fixed camera included
     * @param actualMinutes hands' minutes logged
     * @param ageWeight how much it counts, 1 for one finished today
     */
    public record Finished(int task, double estimateMinutes, int actualMinutes, double ageWeight) {}

    /**
     * How much of a person's stated hours reaches the build.
     *
     * @param mean share
     * @param weeks of log that tell it; 0 where it is set, or taken as usual for want of them
     * @param set whether the settings say so
     */
    public record TurnoutOf(String crew, double mean, int weeks, boolean set) {}

    /** Learns from the tasks done by the as-of day (rules 12 to 17). */
    public Learned(Inputs inputs) {
        this.inputs = inputs;
        List<double[]> rows = new ArrayList<>();
        for (int t = 0; t < inputs.tasks().size(); t++) {
            Task task = inputs.tasks().get(t);
            if (!finished(task) || !task.estimate().given()) {
                continue;
            }
            int actual = minutes(task, Integer.MIN_VALUE);
            double units = PiecesLog.unitSum(1, Math.max(1, task.pieces()), task.learningPercent());
            if (!EffortRatio.counts(actual, task.estimate().low() * units)) {
                ignored.add(task.id());
                continue;
            }
            double mean = task.estimate().mean() * units * (1 + fixedPercent(task) / 100);
            double deviation = task.estimate().deviation() * units * (1 + fixedPercent(task) / 100);
            double v = EffortRatio.variance(mean, deviation);
            finished.add(new Finished(
                    t,
                    mean,
                    actual,
                    EffortRatio.ageWeight(
                            inputs.asOf() - task.done(), inputs.model().effortHalfLife())));
            rows.add(new double[] {
                EffortRatio.logRatio(actual, mean, v),
                v,
                EffortRatio.ageWeight(
                        inputs.asOf() - task.done(), inputs.model().effortHalfLife())
            });
        }
        found = Found.of(inputs);
        purchases = new Purchases(inputs);
        late = new LateTogether(inputs, purchases);
        ratio = EffortRatio.learn(inputs.model().priorRatio(), column(rows, 0), column(rows, 1), column(rows, 2));
    }

    /** The posterior of the effort ratio. */
    public EffortRatio ratio() {
        return ratio;
    }

    /**
     * Surges of supporters (rule 123).
     *
     * @param chance at a publication
     * @param size in months of usual joining
     * @param seen months marked so
     * @param films published
     */
    public record Surging(double chance, double size, int seen, int films) {}

    /** What the months say of surges; nothing while nobody was ever counted. */
    public Optional<Surging> surging() {
        LocalDate today = LocalDate.ofEpochDay(inputs.asOf());
        Surges surges = new Surges(inputs, 12 * today.getYear() + today.getMonthValue() - 1);
        return surges.any
                ? Optional.of(new Surging(surges.meanChance, surges.middle, surges.seen, surges.films))
                : Optional.empty();
    }

    /**
     * Open tasks without hours (rule 121).
     *
     * @param tasks how many
     * @param finished tasks whose hours may stand for theirs
     */
    public record Guessing(int tasks, int finished) {}

    /** What stands in for the hours of open tasks that have none. */
    public Guessing guessing() {
        int tasks = (int) inputs.tasks().stream()
                .filter(task -> task.kind() == Kind.WORK
                        && task.done() == Inputs.NONE
                        && task.dropped() == Inputs.NONE
                        && !task.estimate().given()
                        && task.leftMinutes() < 0)
                .count();
        return new Guessing(tasks, finishedMinutes("").length);
    }

    /**
     * How much joining wanders from month to month (rule 80).
     *
     * @param drift a month's step, as a share
     * @param months it is learned from; 0 where it is set, or taken as usual for want of them
     * @param set whether the settings say so
     */
    public record Wandering(double drift, int months, boolean set) {}

    /** How joining wanders; nothing while nobody was ever counted. */
    public Optional<Wandering> wandering() {
        if (inputs.supporters().isEmpty()) {
            return Optional.empty();
        }
        JoiningDrift drift = new JoiningDrift(inputs, LateTogether.month(inputs.asOf()));
        return Optional.of(
                new Wandering(drift.mean(), drift.months, inputs.model().joiningDrift() >= 0));
    }

    /** The finished tasks that it is learned from, in the order of the file. */
    public List<Finished> finished() {
        return List.copyOf(finished);
    }

    /** What each person's log says of turning out, in the order of the crew. */
    public List<TurnoutOf> turnout() {
        return inputs.crew().stream()
                .map(person -> Turnout.of(inputs, person.id()))
                .toList();
    }

    /** What turns up beside the listed tasks of a stage. */
    public Found found() {
        return found;
    }

    /** What received lines say of prices and leads. */
    public Purchases purchases() {
        return purchases;
    }

    /** What orders say of being late together. */
    public LateTogether late() {
        return late;
    }

    /** Ids of finished tasks that were left out because next to nothing was logged on them (rule 15). */
    public List<String> ignored() {
        return List.copyOf(ignored);
    }

    private static double[] column(List<double[]> rows, int i) {
        return rows.stream().mapToDouble(row -> row[i]).toArray();
    }

    private boolean finished(Task task) {
        return task.kind() == Kind.WORK
                && task.done() != Inputs.NONE
                && task.done() <= inputs.asOf()
                && task.dropped() == Inputs.NONE
                && minutes(task, Integer.MIN_VALUE) > 0;
    }

    private static int minutes(Task task, int after) {
        return task.log().stream()
                .filter(w -> w.as() == As.HANDS && w.date() > after)
                .mapToInt(Worked::minutes)
                .sum();
    }

    private double fixedPercent(Task task) {
        if (task.camera() != Camera.FIXED) {
            return 0;
        }
        return task.cameraExtraPercent() >= 0
                ? task.cameraExtraPercent()
                : inputs.model().cameraFixedPercent();
    }

    /** How the hours left of an open work task are drawn. */
    TaskEffort effortOf(Task task) {
        int logged = minutes(task, Integer.MIN_VALUE);
        Inputs.Range e = task.estimate();
        if (task.leftMinutes() >= 0) {
            int since = task.leftOn() == Inputs.NONE ? 0 : minutes(task, task.leftOn());
            // without an estimate the spread of one that gives its likely value only (rule 21)
            Inputs.Range shape = e.given() ? e : new Inputs.Range(0.75, 1, 1.75);
            return TaskEffort.said(shape.low(), shape.likely(), shape.high(), task.leftMinutes(), since);
        }
        if (!e.given()) {
            double[] ofStage = finishedMinutes(task.stage());
            return TaskEffort.guessed(ofStage.length > 0 ? ofStage : finishedMinutes(""), logged);
        }
        if (task.pieces() > 1) {
            List<Worked> byHands =
                    task.log().stream().filter(w -> w.as() == As.HANDS).toList();
            PiecesLog log = PiecesLog.of(
                    byHands.stream().mapToInt(Worked::minutes).toArray(),
                    byHands.stream().mapToInt(Worked::pieces).toArray());
            double extra = fixedPercent(task);
            return log.done() >= PiecesLog.ENOUGH_TO_FIT
                    ? TaskEffort.piecesFitted(
                            e.low(), e.likely(), e.high(), extra, task.pieces(), task.learningPercent(), log, ratio)
                    : TaskEffort.piecesEstimated(
                            e.low(), e.likely(), e.high(), extra, task.pieces(), task.learningPercent(), log);
        }
        return TaskEffort.estimated(e.low(), e.likely(), e.high(), fixedPercent(task), logged);
    }

    private double[] finishedMinutes(String stage) {
        return inputs.tasks().stream()
                .filter(t -> finished(t) && (stage.isEmpty() || t.stage().equals(stage)))
                .mapToDouble(t -> minutes(t, Integer.MIN_VALUE))
                .toArray();
    }
}
