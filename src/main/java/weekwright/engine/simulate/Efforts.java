package weekwright.engine.simulate;

import java.util.ArrayList;
import java.util.List;
import weekwright.engine.Inputs;
import weekwright.engine.simulate.Streams.Purpose;

/**
 * The hours of all work tasks of a project: learns the {@link EffortRatio} from the finished ones and settles for each open one how
 * its hours are drawn (rules 11 to 26, 121). Immutable, made once for a forecast, shared by threads. Tasks and stages are positions in
 * {@link Inputs#tasks} and {@link Inputs#stages}; times are person-minutes.
 */
public final class Efforts {
    private final EffortRatio ratio;
    private final TaskEffort[] open;
    private final long[] keys;
    private final int[] logged;
    private final TaskEffort[] rough;
    private final long[] roughKeys;
    private final long spreadKey = Streams.key(Purpose.EFFORT_SPREAD, "");
    private final long ratioKey = Streams.key(Purpose.EFFORT_RATIO, "");

    private Efforts(Inputs inputs) {
        List<Inputs.Task> tasks = inputs.tasks();
        logged = new int[tasks.size()];
        keys = new long[tasks.size()];
        open = new TaskEffort[tasks.size()];
        for (int i = 0; i < tasks.size(); i++) {
            logged[i] = handsMinutes(tasks.get(i), Inputs.NONE);
        }
        ratio = learn(inputs);
        for (int i = 0; i < tasks.size(); i++) {
            Inputs.Task task = tasks.get(i);
            if (isOpenWork(task)) {
                open[i] = effortOf(inputs, task, logged[i]);
                keys[i] = Streams.key(task.estimate().given() ? Purpose.TASK_HOURS : Purpose.GUESSED_HOURS, task.id());
            }
        }
        rough = new TaskEffort[inputs.stages().size()];
        roughKeys = new long[rough.length];
        for (int i = 0; i < rough.length; i++) {
            Inputs.Stage stage = inputs.stages().get(i);
            Inputs.Range minutes = stage.roughMinutes();
            if (minutes.given() && minutes.mean() > 0) {
                rough[i] = TaskEffort.estimated(minutes.low(), minutes.likely(), minutes.high(), 0, 0);
                roughKeys[i] = Streams.key(Purpose.STAGE_ROUGH, stage.id());
            }
        }
    }

    public static Efforts of(Inputs inputs) {
        return new Efforts(inputs);
    }

    private static boolean isOpenWork(Inputs.Task task) {
        return task.kind() == Inputs.Kind.WORK && task.done() == Inputs.NONE && task.dropped() == Inputs.NONE;
    }

    /** Minutes logged as hands on dates after {@code after} (rule 16: hours with the camera or at the edit are not the task's). */
    private static int handsMinutes(Inputs.Task task, int after) {
        int sum = 0;
        for (Inputs.Worked worked : task.log()) {
            if (worked.as() == Inputs.As.HANDS && worked.date() > after) {
                sum += worked.minutes();
            }
        }
        return sum;
    }

    /** The percent that a fixed camera adds to the hours, 0 for any other way of filming. */
    static double fixedPercent(Inputs inputs, Inputs.Task task) {
        if (task.camera() != Inputs.Camera.FIXED) {
            return 0;
        }
        return task.cameraExtraPercent() < 0 ? inputs.model().cameraFixedPercent() : task.cameraExtraPercent();
    }

    private EffortRatio learn(Inputs inputs) {
        List<double[]> rows = new ArrayList<>();
        for (int i = 0; i < inputs.tasks().size(); i++) {
            Inputs.Task task = inputs.tasks().get(i);
            if (isFinishedWork(task) && task.estimate().given() && isLogged(task, logged[i])) {
                Inputs.Range first = task.estimate();
                double pieces = PiecesLog.unitSum(1, task.pieces(), task.learningPercent());
                double mean = first.mean() * pieces * (1 + fixedPercent(inputs, task) / 100);
                double variance = EffortRatio.variance(first.mean(), first.deviation());
                double weight = EffortRatio.ageWeight(
                        inputs.asOf() - task.done(), inputs.model().effortHalfLife());
                rows.add(new double[] {EffortRatio.logRatio(logged[i], mean, variance), variance, weight});
            }
        }
        return EffortRatio.learn(inputs.model().priorRatio(), column(rows, 0), column(rows, 1), column(rows, 2));
    }

    private static double[] column(List<double[]> rows, int column) {
        return rows.stream().mapToDouble(row -> row[column]).toArray();
    }

    private static boolean isFinishedWork(Inputs.Task task) {
        return task.kind() == Inputs.Kind.WORK && task.done() != Inputs.NONE && task.dropped() == Inputs.NONE;
    }

    /** Whether a finished task's hours are to be believed (rule 15). */
    private static boolean isLogged(Inputs.Task task, int minutes) {
        double low = task.estimate().given()
                ? task.estimate().low() * PiecesLog.unitSum(1, task.pieces(), task.learningPercent())
                : 0;
        return EffortRatio.counts(minutes, low);
    }

    private TaskEffort effortOf(Inputs inputs, Inputs.Task task, int minutes) {
        Inputs.Range range = task.estimate();
        if (task.leftMinutes() >= 0) {
            int since = task.leftOn() == Inputs.NONE ? 0 : handsMinutes(task, task.leftOn());
            // without an estimate the spread of an estimate that gives its likely value only: 0.75 to 1.75
            Inputs.Range shape = range.given() ? range : new Inputs.Range(0.75, 1, 1.75);
            return TaskEffort.said(shape.low(), shape.likely(), shape.high(), task.leftMinutes(), since);
        }
        if (!range.given()) {
            return TaskEffort.guessed(finishedMinutes(inputs, task.stage()), minutes);
        }
        double extra = fixedPercent(inputs, task);
        if (task.pieces() <= 1) {
            return TaskEffort.estimated(range.low(), range.likely(), range.high(), extra, minutes);
        }
        List<Inputs.Worked> hands = task.log().stream()
                .filter(worked -> worked.as() == Inputs.As.HANDS)
                .toList();
        PiecesLog log = PiecesLog.of(
                hands.stream().mapToInt(Inputs.Worked::minutes).toArray(),
                hands.stream().mapToInt(Inputs.Worked::pieces).toArray());
        return log.done() >= PiecesLog.ENOUGH_TO_FIT
                ? TaskEffort.piecesFitted(
                        range.low(),
                        range.likely(),
                        range.high(),
                        extra,
                        task.pieces(),
                        task.learningPercent(),
                        log,
                        ratio)
                : TaskEffort.piecesEstimated(
                        range.low(), range.likely(), range.high(), extra, task.pieces(), task.learningPercent(), log);
    }

    private double[] finishedMinutes(Inputs inputs, String stage) {
        double[] ofStage = finishedMinutes(inputs, stage, false);
        return ofStage.length > 0 ? ofStage : finishedMinutes(inputs, stage, true);
    }

    private double[] finishedMinutes(Inputs inputs, String stage, boolean anyStage) {
        List<Inputs.Task> tasks = inputs.tasks();
        List<Double> minutes = new ArrayList<>();
        for (int i = 0; i < tasks.size(); i++) {
            Inputs.Task task = tasks.get(i);
            if (isFinishedWork(task) && (anyStage || task.stage().equals(stage)) && isLogged(task, logged[i])) {
                minutes.add((double) logged[i]);
            }
        }
        return minutes.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** What the finished tasks say. */
    public EffortRatio ratio() {
        return ratio;
    }

    /** κ of a trial. */
    public double kappa(long trialKey) {
        return ratio.kappa(Streams.uniform(trialKey, spreadKey, 0));
    }

    /** β of a trial with that κ. */
    public double beta(long trialKey, double kappa) {
        return ratio.beta(kappa, Streams.uniform(trialKey, ratioKey, 0));
    }

    /** Hands' minutes logged on a task so far. */
    public int logged(int task) {
        return logged[task];
    }

    /** Person-minutes that a task still takes in a trial; 0 for a wait and for what is done or dropped. */
    public double left(int task, double beta, double kappa, long trialKey) {
        return open[task] == null ? 0 : open[task].left(beta, kappa, Streams.uniform(trialKey, keys[task], 0));
    }

    /** Person-minutes that a task still takes in the plan (rule 54). */
    public double expectedLeft(int task) {
        return open[task] == null ? 0 : open[task].expectedLeft(ratio.betaN());
    }

    /** Whether the stage has rough hours for what its tasks do not cover yet. */
    public boolean hasRough(int stage) {
        return rough[stage] != null;
    }

    /**
     * Person-minutes of a stage beyond its listed tasks in a trial: max(0, its rough hours − theirs) (rule 121).
     *
     * @param listed whole minutes of its tasks, logged and drawn
     */
    public double roughLeft(int stage, double listed, double beta, double kappa, long trialKey) {
        return rough[stage] == null
                ? 0
                : Math.max(0, rough[stage].left(beta, kappa, Streams.uniform(trialKey, roughKeys[stage], 0)) - listed);
    }

    /** The same in the plan. */
    public double expectedRoughLeft(int stage, double listed) {
        return rough[stage] == null ? 0 : Math.max(0, rough[stage].expectedLeft(ratio.betaN()) - listed);
    }
}
