package weekwright.engine.simulate;

import static weekwright.engine.simulate.State.CASH;
import static weekwright.engine.simulate.State.DUE;
import static weekwright.engine.simulate.State.LATER;
import static weekwright.engine.simulate.State.LEAST_DRIFT;
import static weekwright.engine.simulate.State.NEXT_DUE;
import static weekwright.engine.simulate.State.NOT_DUE;
import static weekwright.engine.simulate.State.OWED;
import static weekwright.engine.simulate.State.REACH;
import static weekwright.engine.simulate.State.SPENT;
import static weekwright.engine.simulate.State.TO_ORDER;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;
import weekwright.engine.Outcome.Count;

/**
 * Orders and deliveries (rules 56 to 63). A line's order day is the planned day of its need less its likely lead and the margin, moved
 * each week by the drift of its task against the plan. On or after it the order goes out if cash - its whole cost - balances still owed
 * is at least the reserve; lines are looked at by order day, planned day, file, and one that waits for funds holds back all later ones
 * that cost more than a small amount.
 */
final class Orders {
    /** So many days ahead are lines and tasks chosen that may matter, so that this is not done each week. */
    private static final int AHEAD_DAYS = 120;

    private final Setup setup;
    private final Luck luck;
    private final Flow flow;
    private final Cash cash;
    private final boolean onDeposit;
    /** Days by task; one entry more, of no task, stays 0. */
    private final int[] drift;
    /** The first two tasks that a task follows; of one twice the same, of none the entry of no task. */
    private final int[] first;

    private final int[] second;
    /** Whether a line not yet due waits for the task or for one after it. */
    private final boolean[] leads;
    /** Those tasks whose drift may still change, each after those it follows: the first {@link #activeCount}. */
    private final int[] active;

    private int activeCount;
    /** {@link #active} serves the lines planned to be ordered up to this day. */
    private int activeReach;
    /** By line, its order day if nothing drifts. */
    private final int[] planned;
    /** For which order of work these are. */
    private WorkOrder followed;

    /** Lines to be ordered, the earliest planned order day first. */
    private int[] inTurn = {};
    /** What is due can all be held again without a look while no more than this can be spent: nothing could be sent with it. */
    private long sentNothingWith;

    Trace trace;
    private WorkOrder order;
    private State x;
    /** Called before the first order of the trial is held: the two answers part here. */
    private final Runnable parting;

    Orders(Setup setup, Luck luck, Flow flow, Cash cash, Runnable parting) {
        this.setup = setup;
        this.luck = luck;
        this.flow = flow;
        this.cash = cash;
        this.parting = parting;
        onDeposit = setup.inputs.orders().onDeposit();
        drift = new int[setup.tasks.count + 1];
        leads = new boolean[setup.tasks.count];
        active = new int[setup.tasks.count];
        planned = new int[setup.lines.count];
        first = new int[setup.tasks.count];
        second = new int[setup.tasks.count];
        LinkTable links = setup.links;
        for (int t = 0; t < setup.tasks.count; t++) {
            int n = links.inStart[t + 1] - links.inStart[t];
            first[t] = n == 0 ? setup.tasks.count : links.inFrom[links.inStart[t]];
            second[t] = n < 2 ? first[t] : links.inFrom[links.inStart[t] + 1];
        }
    }

    /** Works out once what the planned order days are. */
    private void follow() {
        followed = order;
        LineTable lines = setup.lines;
        for (int m = 0; m < lines.count; m++) {
            planned[m] = orderDay(m, 0);
        }
        inTurn = IntStream.range(0, lines.count)
                .filter(m -> lines.status[m] == LineTable.TO_ORDER)
                .boxed()
                .sorted(Comparator.comparingInt(m -> planned[m]))
                .mapToInt(m -> m)
                .toArray();
    }

    /** Chooses the tasks whose drift the lines need that may fall due in the weeks to come. */
    private void activate(int day) {
        gather(LATER);
        int least = 0;
        for (int i = 0; i < activeCount; i++) {
            int t = active[i];
            if (x.status[t] != TaskTable.OPEN && order.planned(t)) {
                boolean done = x.status[t] >= TaskTable.DONE;
                int since = done ? x.landDay[t] : setup.tasks.wait[t] ? x.startDay[t] : day;
                least = done && since < 0 ? least : Math.min(least, order.leastDrift(t, since));
            }
        }
        x.number[LEAST_DRIFT] = least;
        activeReach = reach(day) + AHEAD_DAYS;
        gather(activeReach);
        for (int i = 0; i < activeCount; i++) {
            drift[active[i]] = 0;
        }
    }

    /**
     * Finds the tasks of lines planned to be ordered up to a day and those whose drift is carried to them, each after those it follows;
     * of what has begun the drift is its own.
     */
    private void gather(int reach) {
        Arrays.fill(leads, false);
        for (int i = 0; i < x.number[NOT_DUE] && soon(x.notDue[i], reach); i++) {
            leads[setup.lines.task[x.notDue[i]]] = true;
        }
        LinkTable links = setup.links;
        int n = active.length;
        for (int i = n - 1; i >= 0; i--) {
            int t = links.order[i];
            if (leads[t]) {
                active[--n] = t;
                if (x.status[t] == TaskTable.OPEN) {
                    for (int j = links.inStart[t]; j < links.inStart[t + 1]; j++) {
                        leads[links.inFrom[j]] = true;
                    }
                }
            }
        }
        activeCount = active.length - n;
        System.arraycopy(active, n, active, 0, activeCount);
    }

    private boolean soon(int m, int reach) {
        return planned[m] <= reach || x.lineAgain[m];
    }

    /** No line planned for a later day falls due before the Monday after a day. */
    private int reach(int day) {
        return day + 6 - x.number[LEAST_DRIFT];
    }

    /** On the as-of morning; {@code expected}: lines not ordered are there at as-of + mean lead (rule 54), and nothing is paid. */
    void begin(State state, WorkOrder workOrder) {
        x = state;
        order = workOrder;
        if (!luck.expected && followed != order) {
            follow();
        }
        LineTable lines = setup.lines;
        Arrays.fill(x.arriveFirst, -1);
        Arrays.fill(x.orderedOn, LATER);
        Arrays.fill(x.needDay, LATER);
        Arrays.fill(x.heldForFunds, false);
        x.number[DUE] = 0;
        x.number[LEAST_DRIFT] = 0;
        x.number[REACH] = LATER;
        activeReach = -1;
        sentNothingWith = Long.MIN_VALUE;
        for (int m = 0; m < lines.count; m++) {
            x.line[m] = lines.status[m];
            if (lines.status[m] == LineTable.OUT) {
                x.orderedOn[m] = lines.ordered[m];
                x.money[OWED] += luck.cost[m];
                arriveOn(m, lines.ordered[m] + luck.lead[m]);
            } else if (lines.status[m] == LineTable.TO_ORDER && luck.expected) {
                x.line[m] = LineTable.OUT;
                x.orderedOn[m] = 0;
                if (luck.lead[m] == 0) {
                    x.line[m] = LineTable.THERE;
                } else {
                    arriveOn(m, luck.lead[m]);
                }
            }
        }
        int open = luck.expected ? 0 : inTurn.length;
        System.arraycopy(inTurn, 0, x.notDue, 0, open);
        System.arraycopy(planned, 0, x.orderDay, 0, planned.length);
        x.number[TO_ORDER] = open;
        x.number[NOT_DUE] = open;
        x.number[NEXT_DUE] = open == 0 ? LATER : planned[inTurn[0]];
    }

    /** Goes on with a copied state. */
    void restart(State state) {
        x = state;
        activeReach = -1;
        sentNothingWith = Long.MIN_VALUE;
    }

    private int orderDay(int m, int moved) {
        int t = setup.lines.task[m];
        int start = order.start[t];
        if (start == LATER) {
            return LATER;
        }
        double length = order.landing[t] == LATER ? 0 : order.landing[t] - start;
        int need = start + (int) (setup.lines.atShare[m] * length);
        return need + moved - setup.lines.likelyLead[m] - setup.inputs.orders().marginDays();
    }

    private void arriveOn(int m, int day) {
        if (day < x.arriveFirst.length) {
            x.arriveNext[m] = x.arriveFirst[day];
            x.arriveFirst[day] = m;
        }
    }

    /** Deliveries of a morning; balances are paid whatever the cash (rule 60). */
    void morning(int day) {
        for (int m = x.arriveFirst[day]; m >= 0; m = x.arriveNext[m]) {
            arrive(m, day);
        }
    }

    private void arrive(int m, int day) {
        x.line[m] = LineTable.THERE;
        if (!luck.expected) {
            long balance = cost(m) - deposit(m);
            x.money[OWED] -= balance;
            pay(m, balance);
            if (trace != null) {
                trace.arrived(day, m, balance);
            }
        }
        flow.arrived(m);
    }

    private void pay(int m, long amount) {
        if (amount != 0) {
            x.money[CASH] -= amount;
            if (x.lineAgain[m] || setup.lines.status[m] == LineTable.TO_ORDER) {
                x.money[SPENT] += amount;
            }
            cash.paid(setup.tasks.stage[setup.lines.task[m]], amount);
        }
    }

    /**
     * The day's orders.
     *
     * @param hold whether orders wait for funds
     */
    void day(int day, boolean hold) {
        if (x.number[TO_ORDER] == 0) {
            return;
        }
        if (day > 0 && setup.calendar.monday[day] && x.number[NOT_DUE] > 0) {
            carryDrift(day);
        }
        if (day >= x.number[NEXT_DUE]) {
            fallDue(day);
            sentNothingWith = Long.MIN_VALUE;
        }
        if (hold && free() <= sentNothingWith) {
            return;
        }
        boolean waiting = false;
        int kept = 0;
        int n = x.number[DUE];
        for (int i = 0; i < n; i++) {
            int m = x.due[i];
            long cost = cost(m);
            if (hold && cost > 0) {
                boolean affordable = free() - asked(m, day) >= setup.reserve;
                if (!affordable || (waiting && cost > setup.inputs.orders().smallMinor())) {
                    if (!waiting) {
                        part(i, kept, n);
                        waiting = true;
                    }
                    x.heldForFunds[m] = true;
                    x.due[kept++] = m;
                    continue;
                }
            }
            send(m, day);
        }
        x.number[DUE] = kept;
        sentNothingWith = kept == n ? free() : Long.MIN_VALUE;
    }

    /** The list is made whole before the state is copied: those already sent are no longer in it. */
    private void part(int at, int kept, int n) {
        System.arraycopy(x.due, at, x.due, kept, n - at);
        x.number[DUE] = kept + n - at;
        parting.run();
        System.arraycopy(x.due, kept, x.due, at, n - at);
    }

    private void send(int m, int day) {
        x.line[m] = LineTable.OUT;
        x.orderedOn[m] = day;
        x.number[TO_ORDER]--;
        x.counts[Count.ORDERS.ordinal()]++;
        pay(m, deposit(m));
        x.money[OWED] += cost(m) - deposit(m);
        if (trace != null) {
            trace.ordered(day, m, cost(m), x.money[CASH], x.money[OWED]);
        }
        int lead = luck.leadFrom(m, x.lineAgain[m], day);
        if (lead == 0) {
            arrive(m, day);
        } else {
            arriveOn(m, day + lead);
        }
    }

    /** What orders may use, the reserve in it. */
    private long free() {
        return x.money[CASH] - (onDeposit ? 0 : x.money[OWED]);
    }

    /** What has to be free before a line is ordered; where there is no lead, its balance falls due at once. */
    private long asked(int m, int day) {
        return onDeposit && luck.leadFrom(m, x.lineAgain[m], day) > 0 ? deposit(m) : cost(m);
    }

    private long cost(int m) {
        return x.lineAgain[m] ? luck.costAgain[m] : luck.cost[m];
    }

    private long deposit(int m) {
        return x.lineAgain[m] ? luck.depositAgain[m] : luck.deposit[m];
    }

    /** The bought lines of a task that has failed are to be ordered again, at once (rule 132). */
    void again(int t) {
        for (int i = setup.lines.start[t]; i < setup.lines.start[t + 1]; i++) {
            int m = setup.lines.ofTask[i];
            if (setup.lines.buyAgain[m] && x.line[m] == LineTable.THERE && !luck.expected) {
                x.line[m] = LineTable.TO_ORDER;
                x.lineAgain[m] = true;
                x.heldForFunds[m] = false;
                x.orderDay[m] = flow.today;
                // before all others, whose order of planned days stands
                System.arraycopy(x.notDue, 0, x.notDue, 1, x.number[NOT_DUE]++);
                x.notDue[0] = m;
                x.number[TO_ORDER]++;
                x.number[NEXT_DUE] = Math.min(x.number[NEXT_DUE], flow.today);
            }
        }
    }

    private void fallDue(int day) {
        int n = x.number[NOT_DUE];
        int reach = x.number[REACH];
        int next = LATER;
        int left = 0;
        int k = 0;
        for (; k < n && soon(x.notDue[k], reach); k++) {
            int m = x.notDue[k];
            if (x.orderDay[m] > day) {
                next = Math.min(next, x.orderDay[m]);
                x.notDue[left++] = m;
                continue;
            }
            int i = x.number[DUE]++;
            while (i > 0 && before(m, x.due[i - 1])) {
                x.due[i] = x.due[i - 1];
                i--;
            }
            x.due[i] = m;
        }
        System.arraycopy(x.notDue, k, x.notDue, left, n - k);
        x.number[NOT_DUE] = left + n - k;
        x.number[NEXT_DUE] = next;
    }

    private boolean before(int m, int other) {
        if (x.orderDay[m] != x.orderDay[other]) {
            return x.orderDay[m] < x.orderDay[other];
        }
        int start = order.start[setup.lines.task[m]];
        int otherStart = order.start[setup.lines.task[other]];
        return start != otherStart ? start < otherStart : m < other;
    }

    /**
     * Carries each task's drift against the plan along its links (rule 56): of a done task its own; under way or overdue: from today;
     * else the largest of its predecessors'. Only lines that may fall due this week are looked at.
     */
    private void carryDrift(int day) {
        int reach = reach(day);
        if (reach > activeReach) {
            activate(day);
            reach = reach(day);
        }
        x.number[REACH] = reach;
        int[] start = order.start;
        int[] firstIn = setup.links.inStart;
        int[] before = setup.links.inFrom;
        int open = 0;
        for (int i = 0; i < activeCount; i++) {
            int t = active[i];
            if (x.status[t] != TaskTable.OPEN) {
                drift[t] = driftOfBegun(t, day);
            } else if (order.planned(t)) {
                int most = Math.max(drift[first[t]], drift[second[t]]);
                for (int j = firstIn[t] + 2; j < firstIn[t + 1]; j++) {
                    most = Math.max(most, drift[before[j]]);
                }
                drift[t] = Math.max(most, day - start[t]);
            }
            if (x.status[t] < TaskTable.DONE) {
                active[open++] = t;
            }
        }
        activeCount = open;
        int next = LATER;
        for (int i = 0; i < x.number[NOT_DUE] && soon(x.notDue[i], reach); i++) {
            int m = x.notDue[i];
            if (!x.lineAgain[m]) {
                x.orderDay[m] = orderDay(m, drift[setup.lines.task[m]]);
            }
            next = Math.min(next, x.orderDay[m]);
        }
        x.number[NEXT_DUE] = next;
    }

    private int driftOfBegun(int t, int day) {
        if (!order.planned(t)) {
            return 0;
        }
        if (x.status[t] >= TaskTable.DONE) {
            return x.landDay[t] < 0 ? 0 : x.landDay[t] - order.landing[t];
        }
        if (setup.tasks.wait[t]) {
            return x.startDay[t] - order.start[t];
        }
        long length = order.landing[t] - Math.max(order.start[t], 0);
        return day + (int) (length * x.left[t] / Math.max(1, luck.left[t])) - order.landing[t];
    }
}
