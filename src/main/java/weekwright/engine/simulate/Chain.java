package weekwright.engine.simulate;

import static weekwright.engine.simulate.State.LATER;

/**
 * Goes back from a stage's landing along what each task was really waiting for (rule 95): its days worked belong to the person with the
 * most hours on it, each other day since its links were satisfied to the test that failed, link waits and waits to "wait"; then on to
 * the task of the link that was satisfied last. Of a stage that does not land in time the chain ends on the last simulated day.
 */
final class Chain {
    private final Setup setup;
    private final Luck luck;
    /** By task: the last trial's stage chain on which it lay, to count it once. */
    private final int[] seen;

    private int chains;

    Chain(Setup setup, Luck luck) {
        this.setup = setup;
        this.luck = luck;
        seen = new int[setup.tasks.count];
    }

    /**
     * Adds the days of one stage's chain.
     *
     * @param last the stage's task that landed last
     * @param heldBy days by reason, added to
     * @param critical by task, added 1 for tasks of the stage that lie on the chain
     */
    void follow(State x, int last, int stage, long[] heldBy, int[] critical) {
        chains++;
        int t = last;
        int until = x.landDay[t] == LATER ? setup.calendar.days - 1 : x.landDay[t];
        while (t >= 0 && until >= 0) {
            if (seen[t] != chains) {
                seen[t] = chains;
                if (setup.tasks.stage[t] == stage && t < critical.length) {
                    critical[t]++;
                }
            }
            if (x.landDay[t] == LATER && x.task[t].pending > 0 && x.task[t].status == TaskTable.OPEN) {
                t = unfinishedBefore(x, t);
                continue;
            }
            add(x, t, until, heldBy);
            int link = x.task[t].lastLink;
            if (link < 0) {
                return;
            }
            int reached = x.task[t].availableDay - luck.linkWait[link];
            int wait = Math.min(x.task[t].availableDay, until) - Math.max(reached, 0);
            int before = setup.links.from[link];
            if (wait > 0) {
                heldBy[setup.reasons.wait + before] += wait;
            }
            until = Math.min(reached, until);
            t = before;
        }
    }

    private int unfinishedBefore(State x, int t) {
        LinkTable links = setup.links;
        for (int j = links.inStart[t]; j < links.inStart[t + 1]; j++) {
            int before = links.from[links.in[j]];
            if (x.landDay[before] == LATER) {
                return before;
            }
        }
        return -1;
    }

    private void add(State x, int t, int until, long[] heldBy) {
        TaskState k = x.task[t];
        if (k.runReason != Reasons.NONE) {
            add(x, t, k.runReason, k.runFrom, Math.min(k.runTo, until), heldBy);
        }
        for (int run = k.runFirst; run >= 0; run = x.runNext[run]) {
            add(x, t, x.runReason[run], x.runFrom[run], Math.min(x.runTo[run], until), heldBy);
        }
    }

    private void add(State x, int t, int reason, int from, int to, long[] heldBy) {
        int days = to - Math.max(0, from) + 1;
        if (days > 0) {
            heldBy[reason == Reasons.WORKED ? setup.reasons.person + mostHours(x, t) : reason] += days;
        }
    }

    private int mostHours(State x, int t) {
        int people = setup.crowd.count;
        int best = 0;
        for (int p = 1; p < people; p++) {
            if (x.workedBy[t * people + p] > x.workedBy[t * people + best]) {
                best = p;
            }
        }
        return best;
    }
}
