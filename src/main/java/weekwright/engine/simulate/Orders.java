package weekwright.engine.simulate;

import static weekwright.engine.simulate.State.LATER;

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
    /** Of the tasks that a line can hang on so many are kept: those planned to begin last. */
    private static final int MOST_HOOKS = 12;

    /** Drift is carried on Mondays: what falls due up to the Sunday after them has to be known. */
    private static final int REST_OF_WEEK = 6;

    private final Setup setup;
    private final Luck luck;
    private final Flow flow;
    private final Cash cash;
    private final boolean onDeposit;
    /**
     * The tasks that a line hangs on, since it cannot fall due before they begin: of line m positions hookStart[m] to
     * hookStart[m + 1] - 1, the one planned to begin last first. A line is looked at on Mondays once all of them have begun.
     */
    private int[] hooks = {};

    private final int[] hookStart;
    /** By line, its order day if nothing drifts. */
    private final int[] planned;
    /** For which order of work these are. */
    private WorkOrder followed;

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
        planned = new int[setup.lines.count];
        hookStart = new int[setup.lines.count + 1];
    }

    /** Works out once what the planned order days are and what each line has to wait for. */
    private void follow() {
        followed = order;
        LineTable lines = setup.lines;
        int[] all = new int[MOST_HOOKS * lines.count];
        int[] lastFirst = IntStream.range(0, setup.tasks.count)
                .boxed()
                .sorted(Comparator.comparingInt(t -> -order.start[t]))
                .mapToInt(t -> t)
                .toArray();
        boolean[] carries = new boolean[setup.tasks.count];
        int n = 0;
        for (int m = 0; m < lines.count; m++) {
            planned[m] = plannedDay(m);
            hookStart[m] = n;
            if (lines.status[m] == LineTable.TO_ORDER && planned[m] != LATER && planned[m] > REST_OF_WEEK) {
                carry(setup.lines.task[m], carries);
                int most = n + MOST_HOOKS;
                for (int i = 0; i < lastFirst.length && n < most; i++) {
                    int t = lastFirst[i];
                    if (carries[t] && order.start[t] < planned[m] - REST_OF_WEEK) {
                        all[n++] = t;
                    }
                }
            }
        }
        hookStart[lines.count] = n;
        hooks = Arrays.copyOf(all, n);
    }

    /**
     * Finds the tasks not begun whose drift is carried to a task, that task with them. Such a task u drifts by day - start(u) at least while
     * it has not begun; so does all that follows it, for none of that can have begun either; and if that puts the order day of a line
     * behind the Sunday of every week, the line cannot fall due.
     */
    private void carry(int to, boolean[] carries) {
        LinkTable links = setup.links;
        Arrays.fill(carries, false);
        carries[to] = true;
        for (int i = setup.tasks.count - 1; i >= 0; i--) {
            int t = links.order[i];
            if (carries[t]) {
                carries[t] = setup.tasks.status[t] == TaskTable.OPEN && order.planned(t);
                for (int j = links.inStart[t]; carries[t] && j < links.inStart[t + 1]; j++) {
                    carries[links.inFrom[j]] = true;
                }
            }
        }
    }

    /** A task begins: the lines that hang on it hang on another one from now on, or are looked at from the next Monday on. */
    void begun(int t) {
        int m = x.task[t].hungFirst;
        x.task[t].hungFirst = -1;
        while (m >= 0) {
            int next = x.hungNext[m];
            x.hook[m]++;
            hangOnNext(m);
            m = next;
        }
    }

    /** Hangs a line on the next of its hooks that has not begun. */
    private void hangOnNext(int m) {
        int i = x.hook[m];
        while (i < hookStart[m + 1] && x.task[hooks[i]].status != TaskTable.OPEN) {
            i++;
        }
        x.hook[m] = i;
        if (i < hookStart[m + 1]) {
            hang(hooks[i], m);
        } else {
            x.near[x.nearCount++] = m;
        }
    }

    private void hang(int t, int m) {
        x.hungNext[m] = x.task[t].hungFirst;
        x.task[t].hungFirst = m;
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
        for (TaskState k : x.task) {
            k.hungFirst = -1;
            k.planned = order.planned(k.number);
            k.plannedStart = order.start[k.number];
            k.plannedLanding = order.landing[k.number];
        }
        Arrays.fill(x.orderDay, LATER);
        System.arraycopy(hookStart, 0, x.hook, 0, lines.count);
        x.dueCount = 0;
        x.nearCount = 0;
        x.toOrder = 0;
        x.nextDue = LATER;
        sentNothingWith = Long.MIN_VALUE;
        for (int m = 0; m < lines.count; m++) {
            x.line[m] = lines.status[m];
            if (lines.status[m] == LineTable.OUT) {
                x.orderedOn[m] = lines.ordered[m];
                x.owed += luck.cost[m];
                arriveOn(m, lines.ordered[m] + luck.lead[m]);
            } else if (lines.status[m] == LineTable.TO_ORDER && !luck.expected) {
                x.toOrder++;
                plan(m);
            } else if (lines.status[m] == LineTable.TO_ORDER) {
                x.line[m] = LineTable.OUT;
                x.orderedOn[m] = 0;
                if (luck.lead[m] == 0) {
                    x.line[m] = LineTable.THERE;
                } else {
                    arriveOn(m, luck.lead[m]);
                }
            }
        }
    }

    /** A line that is to be ordered as planned until its drift is known; it is never ordered if its task is not planned to begin. */
    private void plan(int m) {
        if (planned[m] == LATER) {
            return;
        }
        if (hookStart[m] < hookStart[m + 1]) {
            hang(hooks[hookStart[m]], m);
        } else {
            x.orderDay[m] = planned[m];
            x.nextDue = Math.min(x.nextDue, planned[m]);
            x.near[x.nearCount++] = m;
        }
    }

    /** Goes on with a copied state. */
    void restart(State state) {
        x = state;
        for (TaskState k : x.task) {
            k.driftOn = -1;
        }
        sentNothingWith = Long.MIN_VALUE;
    }

    /** The order day of a line if nothing drifts. */
    private int plannedDay(int m) {
        int t = setup.lines.task[m];
        int start = order.start[t];
        if (start == LATER) {
            return LATER;
        }
        double length = order.landing[t] == LATER ? 0 : order.landing[t] - start;
        int need = start + (int) (setup.lines.atShare[m] * length);
        return need - setup.lines.likelyLead[m] - setup.inputs.orders().marginDays();
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
            x.owed -= balance;
            pay(m, balance);
            if (trace != null) {
                trace.arrived(day, m, balance);
            }
        }
        flow.arrived(m);
    }

    private void pay(int m, long amount) {
        if (amount != 0) {
            x.cash -= amount;
            if (x.lineAgain[m] || setup.lines.status[m] == LineTable.TO_ORDER) {
                x.spent += amount;
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
        if (day > 0 && setup.calendar.monday[day] && x.nearCount > 0) {
            carryDrift(day);
        }
        if (day >= x.nextDue) {
            fallDue(day);
            sentNothingWith = Long.MIN_VALUE;
        }
        if (hold && free() <= sentNothingWith) {
            return;
        }
        boolean waiting = false;
        int kept = 0;
        int n = x.dueCount;
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
        x.dueCount = kept;
        sentNothingWith = kept == n ? free() : Long.MIN_VALUE;
    }

    /** The list is made whole before the state is copied: those already sent are no longer in it. */
    private void part(int at, int kept, int n) {
        System.arraycopy(x.due, at, x.due, kept, n - at);
        x.dueCount = kept + n - at;
        parting.run();
        System.arraycopy(x.due, kept, x.due, at, n - at);
    }

    private void send(int m, int day) {
        x.line[m] = LineTable.OUT;
        x.orderedOn[m] = day;
        x.toOrder--;
        x.counts[Count.ORDERS.ordinal()]++;
        pay(m, deposit(m));
        x.owed += cost(m) - deposit(m);
        if (trace != null) {
            trace.ordered(day, m, cost(m), x.cash, x.owed);
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
        return x.cash - (onDeposit ? 0 : x.owed);
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
                x.near[x.nearCount++] = m;
                x.toOrder++;
                x.nextDue = Math.min(x.nextDue, flow.today);
            }
        }
    }

    private void fallDue(int day) {
        int next = LATER;
        int left = 0;
        for (int k = 0; k < x.nearCount; k++) {
            int m = x.near[k];
            if (x.orderDay[m] > day) {
                next = Math.min(next, x.orderDay[m]);
                x.near[left++] = m;
                continue;
            }
            int i = x.dueCount++;
            while (i > 0 && before(m, x.due[i - 1])) {
                x.due[i] = x.due[i - 1];
                i--;
            }
            x.due[i] = m;
        }
        x.nearCount = left;
        x.nextDue = next;
    }

    private boolean before(int m, int other) {
        if (x.orderDay[m] != x.orderDay[other]) {
            return x.orderDay[m] < x.orderDay[other];
        }
        int start = order.start[setup.lines.task[m]];
        int otherStart = order.start[setup.lines.task[other]];
        return start != otherStart ? start < otherStart : m < other;
    }

    /** Moves the order days of the lines that nothing holds back by the drift of their tasks. */
    private void carryDrift(int day) {
        int next = LATER;
        for (int i = 0; i < x.nearCount; i++) {
            int m = x.near[i];
            if (!x.lineAgain[m]) {
                int most = day + REST_OF_WEEK - planned[m];
                int drift = drift(x.task[setup.lines.task[m]], day, most);
                x.orderDay[m] = drift > most ? LATER : planned[m] + drift;
            }
            next = Math.min(next, x.orderDay[m]);
        }
        x.nextDue = next;
    }

    /**
     * A task's drift against the plan (rule 56): of a done task its own; under way or overdue: from today; else the largest of its
     * predecessors'. Of a drift of more than {@code most} only that it is more is worked out.
     */
    private int drift(TaskState k, int day, int most) {
        if (k.driftOn < day || (k.driftIsMore && k.drift <= most)) {
            k.driftOn = k.status >= TaskTable.DONE ? LATER : day;
            k.driftIsMore = false;
            k.drift = k.status != TaskTable.OPEN ? driftOfBegun(k, day) : k.planned ? driftOfOpen(k, day, most) : 0;
        }
        return k.drift;
    }

    private int driftOfOpen(TaskState k, int day, int most) {
        int drift = day - k.plannedStart;
        if (k.follows.length == 0) {
            return Math.max(drift, 0);
        }
        for (int i = 0; i < k.follows.length && drift <= most; i++) {
            drift = Math.max(drift, drift(k.follows[i], day, most));
        }
        k.driftIsMore = drift > most;
        return drift;
    }

    private int driftOfBegun(TaskState k, int day) {
        if (!k.planned) {
            return 0;
        }
        if (k.status >= TaskTable.DONE) {
            int landed = x.landDay[k.number];
            return landed < 0 ? 0 : landed - k.plannedLanding;
        }
        if (k.wait) {
            return x.startDay[k.number] - k.plannedStart;
        }
        long length = k.plannedLanding - Math.max(k.plannedStart, 0);
        return day + (int) (length * k.left / Math.max(1, luck.left[k.number])) - k.plannedLanding;
    }
}
