package weekwright.engine.simulate;

import java.util.List;
import java.util.stream.IntStream;
import weekwright.engine.Inputs;
import weekwright.engine.Inputs.As;
import weekwright.engine.Inputs.Camera;
import weekwright.engine.Inputs.Company;
import weekwright.engine.Inputs.Kind;
import weekwright.engine.Inputs.Task;
import weekwright.engine.Inputs.Worked;

/**
 * The tasks as columns. After the listed ones stands one unlisted task for each stage with rough hours (rule 121: what the rough
 * hours hold beyond the listed tasks is worked after the stage's last task). Days are numbers from the as-of day, past ones negative.
 * People are bits: named ones first, then the unnamed hands of gatherings.
 */
final class TaskTable {
    /** No such day. */
    static final int NO_DAY = Integer.MIN_VALUE;

    /** Company needed, as numbers. */
    static final byte ALONE = 0, CALL = 1, BY = 2;

    /** Filming, as numbers. */
    static final byte UNFILMED = 0, FIXED = 1, OPERATOR = 2, ONCE = 3;

    /** Where a task stands on the as-of day. */
    static final byte OPEN = 0, UNDER_WAY = 1, DONE = 2, DROPPED = 3;

    final int count;
    final int listed;
    final String[] id;
    final boolean[] wait;
    final int[] stage;
    final int[] hands;
    final int[] least;
    /** Who may be its hands. */
    final int[] can;
    /** Who may be its company. */
    final int[] beside;
    /** Who may hold the camera. */
    final int[] films;

    final byte[] company;
    final byte[] camera;
    /** Share of a stretch's clock hours that the operator gives. */
    final double[] operatorShare;
    /** Factor on the hours without its equipment, 0 if it cannot be done without. */
    final double[] without;

    final boolean[] outdoors;
    final int[] season;
    final int[] notBefore;
    final int[] booked;
    final Spread[] rebook;
    final boolean[] oneGo;
    final int[] priority;
    final double[] story;
    final byte[] status;
    final int[] started;
    final int[] landed;
    final int[] aside;
    /** Hands' minutes logged. */
    final int[] logged;
    /** Share of the logged hours that was filmed (rule 72). */
    final double[] filmedShare;
    /** Who had hands' hours on the last logged day (rule 51). */
    final int[] lastOn;

    final int[] lastDay;
    final int[] pieces;
    final int[] piecesDone;
    final double[] learning;
    /**
     * How the hours left are drawn; null for waits and for what is done. Of a dropped task of a stage with rough hours what it would
     * have taken, which goes off these (rule 121).
     */
    final TaskEffort[] effort;
    /** How a wait's days are drawn; null for work. */
    final Spread[] waitDays;
    /** For gaps and rain only (rule 134). */
    final boolean[] fill;

    final boolean anyFill;
    final boolean anyOnce;
    /** Chance to fail at the end, and the share of its hours or days that costs (rule 132). */
    final double[] fail;

    final double[] redo;
    /** The stage of an unlisted task, -1 for a listed one. */
    final int[] roughOf;
    /** Log of the hands: days and running sums of minutes and pieces, for shares reached in the past. */
    final int[][] logDay;

    final int[][] logMinutes;
    final int[][] logPieces;

    TaskTable(Inputs inputs, Crowd crowd, Ids stages, Seasons seasons, Learned learned) {
        List<Task> tasks = inputs.tasks();
        boolean found = learned.found().any();
        int[] roughStages = IntStream.range(0, inputs.stages().size())
                .filter(s -> inputs.stages().get(s).roughMinutes().given() || (found && workLeft(inputs, s)))
                .toArray();
        listed = tasks.size();
        count = listed + roughStages.length;
        id = new String[count];
        wait = new boolean[count];
        stage = new int[count];
        hands = new int[count];
        least = new int[count];
        can = new int[count];
        beside = new int[count];
        films = new int[count];
        company = new byte[count];
        camera = new byte[count];
        operatorShare = new double[count];
        without = new double[count];
        outdoors = new boolean[count];
        season = new int[count];
        notBefore = new int[count];
        booked = new int[count];
        rebook = new Spread[count];
        oneGo = new boolean[count];
        priority = new int[count];
        story = new double[count];
        status = new byte[count];
        started = new int[count];
        landed = new int[count];
        aside = new int[count];
        logged = new int[count];
        filmedShare = new double[count];
        lastOn = new int[count];
        lastDay = new int[count];
        pieces = new int[count];
        piecesDone = new int[count];
        learning = new double[count];
        effort = new TaskEffort[count];
        waitDays = new Spread[count];
        fill = new boolean[count];
        fail = new double[count];
        redo = new double[count];
        roughOf = new int[count];
        logDay = new int[count][];
        logMinutes = new int[count][];
        logPieces = new int[count][];
        for (int t = 0; t < listed; t++) {
            fill(t, tasks.get(t), inputs, crowd, stages, seasons);
            boolean open = status[t] == OPEN || status[t] == UNDER_WAY;
            boolean ofRough = inputs.stages().get(stage[t]).roughMinutes().given();
            if (!wait[t] && (open || (status[t] == DROPPED && ofRough))) {
                effort[t] = learned.effortOf(tasks.get(t));
            }
        }
        for (int i = 0; i < roughStages.length; i++) {
            unlisted(listed + i, roughStages[i], inputs, crowd);
        }
        boolean fills = false;
        boolean onces = false;
        for (int t = 0; t < listed; t++) {
            fills |= fill[t] && status[t] < DONE;
            onces |= camera[t] == ONCE && status[t] < DONE;
        }
        anyFill = fills;
        anyOnce = onces;
    }

    private void fill(int t, Task task, Inputs inputs, Crowd crowd, Ids stages, Seasons seasons) {
        int asOf = inputs.asOf();
        id[t] = task.id();
        wait[t] = task.kind() == Kind.WAIT;
        stage[t] = stages.at(task.stage());
        hands[t] = Math.max(1, task.hands());
        least[t] = Math.min(hands[t], Math.max(1, task.leastHands()));
        can[t] = crowd.hands(task.trades(), task.hazards());
        beside[t] = crowd.allowed(task.hazards());
        films[t] = crowd.camera & beside[t];
        company[t] = task.company() == Company.BY ? BY : task.company() == Company.CALL ? CALL : ALONE;
        camera[t] = (byte) task.camera().ordinal();
        double extra = task.cameraExtraPercent() >= 0
                ? task.cameraExtraPercent()
                : inputs.model().cameraOperatorPercent();
        operatorShare[t] = task.camera() == Camera.ONCE ? 1 : extra / 100;
        without[t] = task.withoutPercent() >= 0 ? 1 + task.withoutPercent() / 100 : 0;
        outdoors[t] = task.outdoors();
        season[t] = seasons.of(task.seasonFrom(), task.seasonTo());
        notBefore[t] = day(task.notBefore(), asOf);
        booked[t] = day(task.booked(), asOf);
        rebook[t] = Spread.of(task.rebookDays().given() ? task.rebookDays() : Inputs.Range.ZERO);
        oneGo[t] = task.oneGo();
        priority[t] = task.priority();
        story[t] = task.storyTold() || task.camera() == Camera.NONE ? 0 : task.storyMinutes();
        aside[t] = day(task.asideUntil(), asOf);
        pieces[t] = Math.max(1, task.pieces());
        learning[t] = task.learningPercent();
        fill[t] = task.fill();
        fail[t] = task.failPercent() / 100;
        redo[t] = task.redoPercent() / 100;
        roughOf[t] = -1;
        if (wait[t]) {
            waitDays[t] = Spread.of(task.estimate());
        }
        fillLog(t, task, asOf, crowd);
        started[t] = day(task.started(), asOf);
        if (started[t] == NO_DAY && logDay[t].length > 0) {
            started[t] = logDay[t][0];
        }
        boolean dropped = task.dropped() != Inputs.NONE && task.dropped() <= asOf;
        boolean done = task.done() != Inputs.NONE && task.done() <= asOf;
        landed[t] = done ? task.done() - asOf : dropped ? task.dropped() - asOf : NO_DAY;
        boolean begun = wait[t] ? started[t] != NO_DAY && started[t] <= 0 : started[t] != NO_DAY || logged[t] > 0;
        status[t] = dropped ? DROPPED : done ? DONE : begun ? UNDER_WAY : OPEN;
        if (dropped) {
            // it gives no story (rule 34)
            story[t] = 0;
        }
        if (done && started[t] == NO_DAY) {
            started[t] = landed[t];
        }
        if (lastDay[t] == NO_DAY) {
            // begun without hours: under way as long as if it had some on that day (rule 42)
            lastDay[t] = started[t];
        }
    }

    private void fillLog(int t, Task task, int asOf, Crowd crowd) {
        List<Worked> byHands =
                task.log().stream().filter(w -> w.as() == As.HANDS).toList();
        int n = byHands.size();
        logDay[t] = new int[n];
        logMinutes[t] = new int[n];
        logPieces[t] = new int[n];
        int sum = 0;
        int done = 0;
        for (int i = 0; i < n; i++) {
            Worked w = byHands.get(i);
            sum += w.minutes();
            done += w.pieces();
            logDay[t][i] = w.date() - asOf;
            logMinutes[t][i] = sum;
            logPieces[t][i] = done;
        }
        logged[t] = sum;
        piecesDone[t] = pieces[t] > 1 ? Math.min(done, pieces[t]) : 0;
        lastDay[t] = n == 0 ? NO_DAY : logDay[t][n - 1];
        for (Worked w : byHands) {
            if (w.date() - asOf == lastDay[t]) {
                lastOn[t] |= crowd.bit(w.crew());
            }
        }
        int filmed = 0;
        for (Worked w : byHands) {
            boolean that = task.shotDays().contains(w.date())
                    || task.log().stream().anyMatch(x -> x.date() == w.date() && (x.filmed() || x.as() == As.CAMERA));
            filmed += that ? w.minutes() : 0;
        }
        filmedShare[t] = sum == 0 ? 0 : (double) filmed / sum;
    }

    /** Whether a stage has listed work that is not done. */
    private static boolean workLeft(Inputs inputs, int s) {
        String stage = inputs.stages().get(s).id();
        return inputs.tasks().stream()
                .anyMatch(task -> task.stage().equals(stage)
                        && task.kind() == Kind.WORK
                        && (task.done() == Inputs.NONE || task.done() > inputs.asOf())
                        && (task.dropped() == Inputs.NONE || task.dropped() > inputs.asOf()));
    }

    /**
     * What a stage holds beyond its listed tasks: the rest of its rough hours (rule 121) and what turns up (rule 122). Done by whoever
     * can do some of its open tasks, as many at once as these take on average.
     */
    private void unlisted(int t, int s, Inputs inputs, Crowd crowd) {
        Inputs.Range rough = inputs.stages().get(s).roughMinutes();
        id[t] = "rough " + inputs.stages().get(s).id();
        stage[t] = s;
        int open = 0;
        int asked = 0;
        for (int other = 0; other < listed; other++) {
            if (stage[other] == s && !wait[other] && status[other] < DONE) {
                open++;
                asked += hands[other];
                can[t] |= can[other];
            }
        }
        hands[t] = open == 0 ? 1 : (asked + open / 2) / open;
        least[t] = 1;
        can[t] = open == 0 ? crowd.hands(List.of(), List.of()) : can[t];
        beside[t] = can[t];
        season[t] = -1;
        notBefore[t] = NO_DAY;
        booked[t] = NO_DAY;
        rebook[t] = Spread.of(Inputs.Range.ZERO);
        aside[t] = NO_DAY;
        started[t] = NO_DAY;
        landed[t] = NO_DAY;
        lastDay[t] = NO_DAY;
        pieces[t] = 1;
        learning[t] = 100;
        roughOf[t] = s;
        effort[t] = rough.given() ? TaskEffort.estimated(rough.low(), rough.likely(), rough.high(), 0, 0) : null;
        logDay[t] = new int[0];
        logMinutes[t] = new int[0];
        logPieces[t] = new int[0];
    }

    /** By unlisted task: the part of its stage's hours, rough ones included, that the plan expects to be open; never under a hundredth. */
    double[] openParts(double betaN) {
        double[] parts = new double[count - listed];
        for (int r = listed; r < count; r++) {
            double open = 0;
            double done = 0;
            double dropped = 0;
            for (int t = 0; t < listed; t++) {
                if (stage[t] == stage[r] && !wait[t]) {
                    double left = effort[t] == null ? 0 : effort[t].expectedLeft(betaN);
                    if (status[t] == DROPPED) {
                        dropped += logged[t] + left;
                    } else {
                        open += left;
                        done += logged[t];
                    }
                }
            }
            double rough = effort[r] == null ? 0 : effort[r].expectedLeft(betaN) - dropped;
            open = Math.max(open, rough - done);
            parts[r - listed] = done == 0 || open + done == 0 ? 1 : Math.max(0.01, open / (open + done));
        }
        return parts;
    }

    private static int day(int date, int asOf) {
        return date == Inputs.NONE ? NO_DAY : date - asOf;
    }

    /** The first logged day on which so many minutes had been worked; {@link #NO_DAY} if never. */
    int dayOfMinutes(int t, double minutes) {
        for (int i = 0; i < logDay[t].length; i++) {
            if (logMinutes[t][i] >= minutes) {
                return logDay[t][i];
            }
        }
        return NO_DAY;
    }

    /** The first logged day on which so many pieces were done; {@link #NO_DAY} if never. */
    int dayOfPieces(int t, int n) {
        for (int i = 0; i < logDay[t].length; i++) {
            if (logPieces[t][i] >= n) {
                return logDay[t][i];
            }
        }
        return NO_DAY;
    }
}
