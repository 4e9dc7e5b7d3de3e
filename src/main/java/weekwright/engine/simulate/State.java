package weekwright.engine.simulate;

import java.lang.reflect.Array;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import weekwright.engine.Outcome;

/**
 * Everything that changes in the course of a trial, so that it can be copied when the two funding answers part. Days are numbers
 * from the as-of day; {@link #LATER} is later than all of them.
 */
final class State {
    static final int LATER = Outcome.LATER;
    static final int NONE = -1;

    private final List<Object> arrays = new ArrayList<>();
    /** Whether days are put down to reasons; nothing that happens depends on it. */
    private final boolean accounts;

    // tasks
    final TaskState[] task;
    final int[] startDay;
    final int[] landDay;
    /** Work tasks that may be tried, in the order of work. */
    final TaskState[] queue;
    /** Waits that may begin, by rank. */
    final TaskState[] waits;
    /** The first task of a day that is to be looked at again, and the first wait that ends; the next one stands in the task. */
    final int[] wakeFirst;

    final int[] endFirst;
    /** Of each equipment, how many are held over night. */
    final int[] heldOver;

    // what tasks waited for: runs of days, newest first
    final int[] workedBy;
    int[] runReason = new int[4096];
    int[] runFrom = new int[4096];
    int[] runTo = new int[4096];
    int[] runNext = new int[4096];

    // material lines
    final byte[] line;
    /** Whether it has been bought again. */
    final boolean[] lineAgain;

    final int[] orderDay;
    final int[] orderedOn;
    final int[] needDay;
    final boolean[] heldForFunds;
    final int[] arriveFirst;
    final int[] arriveNext;
    final int[] due;
    /** Lines to be ordered that are not due yet and that no task holds back any more. */
    final int[] near;
    /** By line, the next one that the same task holds back, and what holds it, see {@link Orders}. */
    final int[] hungNext;

    final int[] hook;

    final long[] stagePaid;
    /** Stages for whose material something was paid today. */
    final int[] paidToday;

    // episodes and slots
    final int[] tellsLeft;
    /** Episodes that have all their footage and are not cut, by their places in {@link EpisodeTable#bySlot}, smallest first. */
    final int[] ready;

    final int[] footageDay;
    final int[] lastTold;
    final int[] editLeft;
    final int[] cutDay;
    final boolean[] published;
    final int[] bankEdit;
    final int[] bankCut;
    final boolean[] bankUsed;
    final byte[] slotOutcome;

    // money
    final long[] payIn;
    final long[] payInNew;
    final int[] supporters;
    final int[] supportersAtStart;
    final int[] stillThere;
    /** Who came with a surge, by level and month of age. */
    final int[] newcomers;
    /** Surges in months of usual joining: still to come at the month's start; of this month's, come and still to come. */
    final double[] surge;

    // record
    final long[] cashWeek;
    final long[] unspentWeek;
    final long[] putByWeek;
    final float[] bankWeek;
    /** Supporters of all levels on the 1st of each month, those of the as-of month first. */
    final int[] supportersMonth;
    /** What is paid out in each month, before anything of it is put by; of the as-of month what is still to come. */
    final long[] paidOutMonth;

    final boolean[] underReserve;
    final boolean[] underZero;
    final long[] stageShort;
    final int[] counts;

    // single numbers
    /** Tasks in {@link #queue} and in {@link #waits}; whether the queue is to be sorted again. */
    int queued;

    int waiting;
    boolean resort;
    /** Before this day no task of {@link #queue} becomes one that was left too long to count as under way. */
    int staleOn;

    int openTasks;
    int runs;
    /** Whether the story bank is under its floor, and what it holds. */
    boolean bankLow;

    double bank;
    /** Lines in {@link #due} and {@link #near}, those not sent yet, and the day on which the next one falls due. */
    int dueCount;

    int nearCount;
    int toOrder;
    int nextDue;
    /** Episodes in {@link #ready}; those that are cut and not published; those of the bank in work. */
    int toEdit;

    int cut;
    int bankEditing;
    /** Episodes that are neither cut nor published. */
    int uncut;

    int firstBank;
    int firstUnpublished;
    int firstBankUnused;
    int emptyThisMonth;
    int chargedThisMonth;
    int nextRegular;
    int firstUnderReserve;
    int firstUnderZero;
    int firstUnderWithout;
    /** Stages in {@link #paidToday}. */
    int stagesPaid;
    /** The cash is what is theirs; what is put by for tax stands beside it (rule 135). */
    long cash;

    long owed;
    long wages;
    long spent;
    long pledged;
    long putBy;

    /** @param accounts whether days are put down to reasons, for the record of what held a stage */
    State(Setup setup, boolean accounts) {
        this.accounts = accounts;
        int tasks = setup.tasks.count;
        int days = setup.calendar.days;
        int lines = setup.lines.count;
        int episodes = setup.episodes.count;
        int slots = setup.calendar.slots.length;
        int weeks = setup.calendar.sundays.length;
        int months = setup.calendar.months.length;
        int stages = setup.inputs.stages().size();
        int levels = setup.funds.levels;
        task = new TaskState[tasks];
        for (int t = 0; t < tasks; t++) {
            task[t] = new TaskState(setup, t);
        }
        for (TaskState each : task) {
            each.connect(setup.links, task);
        }
        startDay = ints(tasks);
        landDay = ints(tasks);
        queue = new TaskState[tasks];
        waits = new TaskState[tasks];
        wakeFirst = ints(days + 1);
        endFirst = ints(days + 1);
        heldOver = ints(setup.equipment.count);
        workedBy = ints(tasks * setup.crowd.count);
        line = keep(new byte[lines]);
        lineAgain = keep(new boolean[lines]);
        orderDay = ints(lines);
        orderedOn = ints(lines);
        needDay = ints(lines);
        heldForFunds = keep(new boolean[lines]);
        arriveFirst = ints(days + 1);
        arriveNext = ints(lines);
        due = ints(lines);
        near = ints(lines);
        hungNext = ints(lines);
        hook = ints(lines);
        stagePaid = longs(stages);
        paidToday = ints(stages);
        tellsLeft = ints(episodes);
        ready = ints(episodes);
        footageDay = ints(episodes);
        lastTold = ints(episodes);
        editLeft = ints(episodes);
        cutDay = ints(episodes);
        published = keep(new boolean[episodes]);
        bankEdit = ints(slots);
        bankCut = ints(slots);
        bankUsed = keep(new boolean[slots]);
        slotOutcome = keep(new byte[slots]);
        payIn = longs(days + 1);
        payInNew = longs(days + 1);
        supporters = ints(levels);
        supportersAtStart = ints(levels);
        stillThere = ints(levels);
        newcomers = ints(levels * Surges.NEW_MONTHS);
        surge = keep(new double[3]);
        cashWeek = longs(weeks);
        unspentWeek = longs(weeks);
        putByWeek = longs(weeks);
        bankWeek = keep(new float[weeks]);
        supportersMonth = ints(months);
        paidOutMonth = longs(months);
        underReserve = keep(new boolean[months]);
        underZero = keep(new boolean[months]);
        stageShort = longs(stages);
        counts = ints(Outcome.Count.values().length);
    }

    private int[] ints(int n) {
        return keep(new int[n]);
    }

    private long[] longs(int n) {
        return keep(new long[n]);
    }

    private <A> A keep(A array) {
        arrays.add(array);
        return array;
    }

    /** Before a run: nothing is listed, due or edited. */
    void clear() {
        Arrays.fill(counts, 0);
        Arrays.fill(slotOutcome, (byte) 0);
        queued = 0;
        waiting = 0;
        resort = false;
        staleOn = 0;
        openTasks = 0;
        runs = 0;
        bankLow = false;
        bank = 0;
        dueCount = 0;
        nearCount = 0;
        toOrder = 0;
        nextDue = 0;
        toEdit = 0;
        cut = 0;
        bankEditing = 0;
        uncut = 0;
        firstBank = 0;
        firstUnpublished = 0;
        firstBankUnused = 0;
        emptyThisMonth = 0;
        chargedThisMonth = 0;
        nextRegular = 0;
        firstUnderReserve = 0;
        firstUnderZero = 0;
        firstUnderWithout = 0;
        stagesPaid = 0;
        cash = 0;
        owed = 0;
        wages = 0;
        spent = 0;
        pledged = 0;
        putBy = 0;
    }

    /** Becomes equal to another state of the same setup, but for what days were put down to. */
    void copy(State other) {
        for (int i = 0; i < arrays.size(); i++) {
            Object from = other.arrays.get(i);
            System.arraycopy(from, 0, arrays.get(i), 0, Array.getLength(from));
        }
        queued = other.queued;
        waiting = other.waiting;
        resort = other.resort;
        staleOn = other.staleOn;
        openTasks = other.openTasks;
        runs = other.runs;
        bankLow = other.bankLow;
        bank = other.bank;
        dueCount = other.dueCount;
        nearCount = other.nearCount;
        toOrder = other.toOrder;
        nextDue = other.nextDue;
        toEdit = other.toEdit;
        cut = other.cut;
        bankEditing = other.bankEditing;
        uncut = other.uncut;
        firstBank = other.firstBank;
        firstUnpublished = other.firstUnpublished;
        firstBankUnused = other.firstBankUnused;
        emptyThisMonth = other.emptyThisMonth;
        chargedThisMonth = other.chargedThisMonth;
        nextRegular = other.nextRegular;
        firstUnderReserve = other.firstUnderReserve;
        firstUnderZero = other.firstUnderZero;
        firstUnderWithout = other.firstUnderWithout;
        stagesPaid = other.stagesPaid;
        cash = other.cash;
        owed = other.owed;
        wages = other.wages;
        spent = other.spent;
        pledged = other.pledged;
        putBy = other.putBy;
        for (int t = 0; t < task.length; t++) {
            task[t].copy(other.task[t]);
        }
        for (int i = 0; i < queued; i++) {
            queue[i] = task[other.queue[i].number];
        }
        for (int i = 0; i < waiting; i++) {
            waits[i] = task[other.waits[i].number];
        }
    }

    /** Whether {@link #account} keeps anything. */
    boolean accounts() {
        return accounts;
    }

    /** Whether {@link #account} would keep why a task was not worked on a day: nothing, where the day is known already. */
    boolean asksWhy(TaskState task, int day) {
        return accounts && task.accounted < day;
    }

    private void growRuns() {
        int n = 2 * runReason.length;
        runReason = Arrays.copyOf(runReason, n);
        runFrom = Arrays.copyOf(runFrom, n);
        runTo = Arrays.copyOf(runTo, n);
        runNext = Arrays.copyOf(runNext, n);
    }

    /**
     * The days of a task not yet accounted for, up to {@code day}, go to a reason (rule 95: days on which nobody was there go to
     * the reason of the next day). A day that was refused and then worked after all counts as worked.
     */
    void account(TaskState task, int reason, int day) {
        if (!accounts) {
            return;
        }
        int from = task.accounted + 1;
        if (from > day) {
            if (reason != Reasons.WORKED || task.runReason == reason || task.runTo != day) {
                return;
            }
            task.runTo = day - 1;
            from = day;
        }
        task.accounted = day;
        if (task.runReason == reason && task.runTo == from - 1) {
            task.runTo = day;
            return;
        }
        endRun(task);
        task.runReason = reason;
        task.runFrom = from;
        task.runTo = day;
    }

    private void endRun(TaskState task) {
        if (task.runReason == Reasons.NONE) {
            return;
        }
        int n = runs++;
        if (n == runReason.length) {
            growRuns();
        }
        runReason[n] = task.runReason;
        runFrom[n] = task.runFrom;
        runTo[n] = task.runTo;
        runNext[n] = task.runFirst;
        task.runFirst = n;
    }

    /** An episode has all its footage. */
    void toEdit(int place) {
        int i = toEdit++;
        while (i > 0 && ready[i - 1] > place) {
            ready[i] = ready[i - 1];
            i--;
        }
        ready[i] = place;
    }

    /** An episode that was to be edited is cut. */
    void edited(int place) {
        int i = 0;
        while (ready[i] != place) {
            i++;
        }
        System.arraycopy(ready, i + 1, ready, i, --toEdit - i);
    }

    /** Takes a task from position {@code at} of a list of {@code n}. */
    static void remove(TaskState[] list, int n, int at) {
        System.arraycopy(list, at + 1, list, at, n - at - 1);
    }
}
