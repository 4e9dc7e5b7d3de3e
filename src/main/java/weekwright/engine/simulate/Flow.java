package weekwright.engine.simulate;

import static weekwright.engine.simulate.State.LATER;
import static weekwright.engine.simulate.TaskTable.DONE;
import static weekwright.engine.simulate.TaskTable.NO_DAY;
import static weekwright.engine.simulate.TaskTable.OPEN;
import static weekwright.engine.simulate.TaskTable.UNDER_WAY;

import java.util.Arrays;
import java.util.function.IntConsumer;

/**
 * What follows what: links and told shares that are reached, tasks that become possible, sleep until a date or a delivery, and land.
 * A link reached on day D with a wait of w days lets the successor work from day D + w, on the same day from that minute (rule 28).
 */
final class Flow {
    /** Weeks without hours after which a task under way ranks as not begun (rule 42). */
    static final int STALE_DAYS = 56;

    private static final int NOT_UNDER_WAY = 1 << 20;

    /** Fill work stands after all other work (rule 134). */
    private static final int FILL = 1 << 22;

    private final Setup setup;
    private final Luck luck;
    WorkOrder order;
    Trace trace;
    /** Buys the material of a task again that has failed. */
    IntConsumer buyAgain;
    /** Looks at the lines that a task held back which begins. */
    IntConsumer orderFor;

    State x;
    int today;
    /** Set when a task ended or a link was reached: the day's passes start again from the top (rule 40). */
    boolean event;

    /** False while the as-of morning is set up: tasks are then placed once all past links are known. */
    private boolean started;

    Flow(Setup setup, Luck luck) {
        this.setup = setup;
        this.luck = luck;
    }

    /** Sets the state of the as-of morning. */
    void begin() {
        TaskTable tasks = setup.tasks;
        today = 0;
        Arrays.fill(x.wakeFirst, -1);
        Arrays.fill(x.endFirst, -1);
        Arrays.fill(x.workedBy, 0);
        started = false;
        Arrays.fill(x.lineAgain, false);
        Arrays.fill(x.heldOver, 0);
        int open = 0;
        for (int t = 0; t < tasks.count; t++) {
            TaskState k = x.task[t];
            k.rank = order.rank[t];
            k.place = order.place[t];
            k.runFirst = -1;
            k.runReason = Reasons.NONE;
            k.accounted = -1;
            k.listed = false;
            k.asleep = false;
            k.keeps = false;
            k.failed = 0;
            k.again = false;
            k.total = luck.total[t];
            k.failures = luck.failures[t];
            k.left = luck.left[t];
            k.status = tasks.status[t];
            k.lastOn = tasks.lastOn[t];
            k.lastDay = tasks.lastDay[t];
            k.booked = tasks.booked[t];
            k.pending = setup.links.inStart[t + 1] - setup.links.inStart[t];
            k.availableDay = NO_DAY;
            k.availableMinute = 0;
            k.lastLink = -1;
            k.nextMark = setup.links.markStart[t];
            k.filmed = tasks.filmedShare[t] * tasks.logged[t];
            x.startDay[t] = tasks.started[t] == NO_DAY ? LATER : tasks.started[t];
            x.landDay[t] = tasks.landed[t] == NO_DAY ? LATER : tasks.landed[t];
            k.stop = stopOf(t);
            open += x.task[t].status < DONE ? 1 : 0;
            if (x.task[t].status == UNDER_WAY && !tasks.wait[t]) {
                keep(t);
            }
        }
        x.openTasks = open;
        for (int i = 0; i < tasks.count; i++) {
            past(setup.links.order[i]);
            marked(x.task[setup.links.order[i]]);
        }
        started = true;
        for (int t = 0; t < tasks.count; t++) {
            boolean runs = tasks.wait[t] && tasks.status[t] == UNDER_WAY;
            if (!runs && x.task[t].status < DONE && (x.task[t].status == UNDER_WAY || x.task[t].pending == 0)) {
                x.task[t].accounted = Math.max(x.task[t].availableDay, 0) - 1;
                place(t);
            }
        }
    }

    /** Fires what a task had reached before the as-of day (rule 29), and what a wait under way will reach. */
    private void past(int t) {
        TaskState k = x.task[t];
        LinkTable links = setup.links;
        if (k.status == OPEN) {
            return;
        }
        if (k.wait && k.status == UNDER_WAY) {
            k.stop = 0;
            hold(t, 1);
            run(t, setup.tasks.started[t]);
            return;
        }
        for (int i = links.markStart[t]; i < links.markStart[t + 1]; i++) {
            double share = links.markShare[i];
            int day;
            if (k.status == UNDER_WAY) {
                if (k.left > luck.markLeft[i]) {
                    return;
                }
                day = reachedOn(t, share);
            } else if (links.markTarget[i] >= 0) {
                day = links.past[links.markTarget[i]];
            } else {
                day = LinkTable.pastReach(setup.tasks, t, share);
            }
            k.nextMark = i + 1;
            hit(i, t, day, 0);
        }
    }

    private int reachedOn(int t, double share) {
        TaskTable tasks = setup.tasks;
        int day = tasks.pieces[t] > 1 && tasks.piecesDone[t] > 0 && share > 0
                ? tasks.dayOfPieces(t, (int) Math.ceil(share * tasks.pieces[t] - 1e-9))
                : tasks.dayOfMinutes(t, share * luck.total[t] - 1);
        return day != NO_DAY ? day : tasks.started[t] != NO_DAY ? tasks.started[t] : -1;
    }

    /** A mark of a task is reached: its link, or the share that an episode tells. */
    private void hit(int mark, int t, int day, int minute) {
        int target = setup.links.markTarget[mark];
        if (target >= 0) {
            reach(target, day, minute);
            return;
        }
        int e = -1 - target;
        if (x.tellsLeft[e] > 0) {
            if (day >= x.footageDay[e]) {
                x.footageDay[e] = day;
                x.lastTold[e] = t;
            }
            if (--x.tellsLeft[e] == 0 && x.cutDay[e] == LATER && !x.published[e]) {
                x.toEdit(setup.episodes.placeBySlot[e]);
            }
        }
    }

    private void reach(int link, int day, int minute) {
        int t = setup.links.to[link];
        TaskState k = x.task[t];
        k.pending--;
        event = true;
        if (k.status != OPEN) {
            return;
        }
        int wait = luck.linkWait[link];
        int from = day + wait;
        int fromMinute = wait == 0 ? minute : 0;
        if (from > k.availableDay) {
            k.availableDay = from;
            k.availableMinute = fromMinute;
            k.lastLink = link;
        } else if (from == k.availableDay) {
            k.availableMinute = Math.max(k.availableMinute, fromMinute);
        }
        if (k.pending == 0 && started) {
            k.accounted = Math.max(k.availableDay, 0) - 1;
            place(t);
        }
    }

    /**
     * Puts a task whose links are satisfied (or that is under way) where it belongs: asleep until a date, in the list of what may
     * be worked, or nowhere while its material is missing and the day on which it was needed is known.
     */
    void place(int t) {
        TaskState k = x.task[t];
        if (k.listed || k.asleep || k.status >= DONE) {
            return;
        }
        if (k.left == 0) {
            // of a stage that was done before the as-of day nothing is left since then (rule 94)
            int day = k.availableDay == NO_DAY ? today : k.availableDay;
            x.startDay[t] = Math.min(x.startDay[t], day);
            begun(t);
            land(t, day, k.availableMinute);
            return;
        }
        int linked = k.availableDay;
        int from = Math.max(linked, setup.tasks.aside[t]);
        if (k.status == OPEN || k.again) {
            from = Math.max(from, Math.max(setup.tasks.notBefore[t], order.notBefore[t]));
            if (k.booked != NO_DAY) {
                while (k.booked < Math.max(from, today)) {
                    k.booked += luck.rebookDays(t, k.booked);
                }
                from = k.booked;
            }
        }
        if (from > today) {
            sleep(t, from, from > linked ? setup.reasons.booking : Reasons.WORKED);
        } else if (k.left > k.stop || !needKnown(t)) {
            list(k);
        }
    }

    /** Whether the day on which a task short of material would have gone on is known. */
    private boolean needKnown(int t) {
        for (int i = setup.lines.start[t]; i < setup.lines.start[t + 1]; i++) {
            int m = setup.lines.ofTask[i];
            if (x.line[m] > LineTable.THERE && x.needDay[m] == LATER) {
                return false;
            }
        }
        return true;
    }

    /** Wakes it on a day; {@link Reasons#WORKED} as reason for "nothing to account for". */
    void sleep(int t, int day, int reason) {
        TaskState k = x.task[t];
        k.asleep = true;
        if (day < x.wakeFirst.length) {
            k.wakeNext = x.wakeFirst[day];
            x.wakeFirst[day] = t;
            k.wakeReason = reason;
        }
    }

    private void list(TaskState k) {
        TaskState[] list = k.wait ? x.waits : x.queue;
        int key = key(k);
        int i = k.wait ? x.waiting++ : x.queued++;
        while (i > 0 && key(list[i - 1]) > key) {
            list[i] = list[i - 1];
            i--;
        }
        list[i] = k;
        k.listed = true;
        x.staleOn = Math.min(x.staleOn, staleOn(k));
    }

    /** When a task under way will rank as not begun, if nobody works on it. */
    private static int staleOn(TaskState k) {
        return k.status == UNDER_WAY ? k.lastDay + STALE_DAYS + 1 : LATER;
    }

    /** Under way first, by rank; then by priority and rank (rules 42, 43). */
    private int key(TaskState k) {
        if (k.wait) {
            return k.rank;
        }
        boolean first = k.status == UNDER_WAY & today - k.lastDay <= STALE_DAYS;
        int rank = k.rank;
        int place = NOT_UNDER_WAY + k.place;
        int key = first ? rank : place;
        return setup.tasks.anyFill && isFill(k.number) ? FILL + key : key;
    }

    /** Fill work that yields story takes its turn like any other while the bank is low. */
    private boolean isFill(int t) {
        return setup.tasks.fill[t] && (!x.bankLow || setup.tasks.story[t] <= 0);
    }

    /** Looks in the morning whether the story bank holds fewer weeks than the floor (rule 134). */
    void bankLow() {
        if (!setup.tasks.anyFill) {
            return;
        }
        boolean low = x.bank < setup.bankFloor;
        if (low != x.bankLow) {
            x.bankLow = low;
            x.resort = true;
        }
    }

    /** Sorts the list of work again after tasks have begun or gone stale. */
    void resort() {
        x.resort = false;
        x.staleOn = LATER;
        int last = Integer.MIN_VALUE;
        for (int i = 0; i < x.queued; i++) {
            TaskState k = x.queue[i];
            int key = key(k);
            x.staleOn = Math.min(x.staleOn, staleOn(k));
            if (key >= last) {
                last = key;
                continue;
            }
            int j = i;
            while (j > 0 && key(x.queue[j - 1]) > key) {
                x.queue[j] = x.queue[j - 1];
                j--;
            }
            x.queue[j] = k;
        }
    }

    /** Opens a day: waits that end land, sleepers wake (rule 31: a wait ends on the morning of D + n). */
    void morning(int day) {
        today = day;
        for (int t = x.endFirst[day]; t >= 0; ) {
            int next = x.task[t].endNext;
            endWait(t, day);
            t = next;
        }
        for (int t = x.wakeFirst[day]; t >= 0; ) {
            int next = x.task[t].wakeNext;
            x.task[t].asleep = false;
            if (x.task[t].wakeReason != Reasons.WORKED) {
                x.account(x.task[t], x.task[t].wakeReason, day - 1);
            }
            place(t);
            t = next;
        }
    }

    private void endWait(int t, int day) {
        TaskState k = x.task[t];
        x.account(k, setup.reasons.wait + t, day);
        hold(t, -1);
        if (k.failed < luck.failures[t]) {
            fail(t);
            return;
        }
        k.left = 0;
        land(t, day, 0);
    }

    /** A wait begins on the evening of a day. */
    void beginWait(int t) {
        TaskState k = x.task[t];
        if (k.failed == 0) {
            x.startDay[t] = today;
            begun(t);
        }
        k.again = false;
        k.status = UNDER_WAY;
        hold(t, 1);
        run(t, today);
    }

    /** Something begins, or lands without having begun. */
    void begun(int t) {
        if (x.task[t].hungFirst >= 0) {
            orderFor.accept(t);
        }
    }

    /** A wait that began on a day reaches its shares on the mornings of its days and ends after all of them. */
    private void run(int t, int begun) {
        TaskState k = x.task[t];
        LinkTable links = setup.links;
        int n = k.failed == 0 ? luck.total[t] : luck.again[t];
        for (int i = k.nextMark; i < links.markStart[t + 1] && links.markShare[i] < 1; i++) {
            k.nextMark = i + 1;
            hit(i, t, begun + (int) Math.ceil(links.markShare[i] * n - 1e-9), 0);
        }
        int end = begun + n;
        if (end <= today) {
            endWait(t, today);
        } else if (end < x.endFirst.length) {
            k.endNext = x.endFirst[end];
            x.endFirst[end] = t;
        }
    }

    /** A task holds what it needs of equipment over night, or gives it back. */
    private void hold(int t, int sign) {
        EquipmentTable equipment = setup.equipment;
        for (int i = equipment.start[t]; i < equipment.start[t + 1]; i++) {
            x.heldOver[equipment.needed[i]] += sign * equipment.amount[i];
        }
    }

    /** A task under way on the as-of day has had its kept equipment since its first hour. */
    private void keep(int t) {
        EquipmentTable equipment = setup.equipment;
        for (int i = equipment.start[t]; i < equipment.start[t + 1]; i++) {
            if (equipment.kept[equipment.needed[i]]) {
                x.heldOver[equipment.needed[i]] += equipment.amount[i];
                x.task[t].keeps = true;
            }
        }
    }

    /** After a stretch: what the work done has reached. */
    void progress(TaskState k, int minute) {
        if (k.left <= k.reachesAt) {
            reached(k.number, minute);
        }
    }

    /** Some of its marks are reached: the next one is to be known. */
    private void marked(TaskState k) {
        k.reachesAt = k.nextMark < k.lastMark ? luck.markLeft[k.nextMark] : 0;
    }

    private void reached(int t, int minute) {
        TaskState k = x.task[t];
        LinkTable links = setup.links;
        boolean fails = k.left == 0 && k.failed < luck.failures[t];
        while (k.nextMark < links.markStart[t + 1]
                && k.left <= luck.markLeft[k.nextMark]
                && !(fails && links.markShare[k.nextMark] >= 1)) {
            int mark = k.nextMark++;
            hit(mark, t, today, minute);
        }
        marked(k);
        if (fails) {
            k.left = luck.again[t];
            fail(t);
        } else if (k.left == 0) {
            land(t, today, minute);
        }
    }

    /** It has failed at its end (rule 132): part of it is done again, with material bought again, on the next turn if it is booked. */
    private void fail(int t) {
        TaskState k = x.task[t];
        k.failed++;
        k.again = true;
        if (trace != null) {
            trace.failed(today, t);
        }
        if (k.booked != NO_DAY) {
            k.booked = today + luck.rebookDays(t, today);
        }
        buyAgain.accept(t);
        k.stop = stopOf(t);
        event = true;
        place(t);
    }

    private void land(int t, int day, int minute) {
        TaskState k = x.task[t];
        LinkTable links = setup.links;
        k.status = DONE;
        x.landDay[t] = day;
        if (trace != null) {
            trace.landed(day, t);
        }
        x.openTasks--;
        event = true;
        while (k.nextMark < links.markStart[t + 1]) {
            int mark = k.nextMark++;
            hit(mark, t, day, minute);
        }
    }

    /**
     * Down to how many minutes a task may be worked with the material that is there (rules 64, 131): {@link State#LATER} if it may
     * not begin, 0 if nothing is missing. A task under way on the as-of day is not held by lines it would have begun with.
     */
    int stopOf(int t) {
        TaskState k = x.task[t];
        LineTable lines = setup.lines;
        int stop = 0;
        boolean begun = setup.tasks.status[t] == UNDER_WAY;
        for (int i = lines.start[t]; i < lines.start[t + 1]; i++) {
            int m = lines.ofTask[i];
            if (x.line[m] <= LineTable.THERE) {
                continue;
            }
            int until = LATER;
            if (x.lineAgain[m]) {
                return LATER;
            } else if (lines.atShare[m] > 0 && !k.wait) {
                until = luck.neededLeft[m];
                until = begun && luck.left[t] <= until ? 0 : until;
            } else if (lines.lotShare[m] > 0) {
                int pieces = piecesThere(t, lines.lot[m]);
                until = pieces == 0 && !begun ? LATER : luck.leftAtPieces(t, pieces);
            } else if (begun) {
                until = 0;
            }
            stop = Math.max(stop, until);
        }
        return stop;
    }

    private int piecesThere(int t, int lot) {
        LineTable lines = setup.lines;
        double share = 0;
        for (int i = lines.start[t]; i < lines.start[t + 1]; i++) {
            int m = lines.ofTask[i];
            share += lines.lot[m] == lot && x.line[m] == LineTable.THERE ? lines.lotShare[m] : 0;
        }
        return (int) Math.floor(share * setup.tasks.pieces[t] + 1e-9);
    }

    /** A line has come: its task may go on. */
    void arrived(int m) {
        int t = setup.lines.task[m];
        TaskState k = x.task[t];
        if (k.status >= DONE) {
            return;
        }
        boolean stuck = k.left <= k.stop;
        k.stop = stopOf(t);
        if (stuck && k.left > k.stop && (k.status == UNDER_WAY || k.pending == 0)) {
            if (today > k.accounted + 1 && k.availableDay < today) {
                int reason = x.heldForFunds[m] ? setup.reasons.funds : setup.reasons.material + m;
                x.account(k, reason, today - 1);
            }
            place(t);
        }
    }
}
