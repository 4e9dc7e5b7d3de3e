package weekwright.engine.simulate;

import static weekwright.engine.simulate.State.LATER;

import java.util.List;
import java.util.stream.IntStream;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;

/**
 * Writes finished trials into the outcome: each its own place in each column, and whole-number sums that are added up over threads at
 * the end, so that the result does not depend on who ran which trial.
 */
final class Recorder {
    private final Setup setup;
    private final Trial trial;
    private final Outcome outcome;
    private final List<Columns> columns;
    private final Chain chain;
    private final int asOf;
    private final long[][] heldBy;
    private final int[] critical;
    /** Tasks of each stage that are not dropped. */
    private final int[][] ofStage;
    /** By stage: whether anything is left to pay for its lines. */
    private final boolean[] hasNeed;

    /**
     * @param trial whose futures are recorded
     * @param most how many are recorded between two {@link #flush}es at most
     */
    Recorder(Setup setup, Trial trial, Outcome outcome, int most) {
        this.setup = setup;
        this.trial = trial;
        this.outcome = outcome;
        chain = new Chain(setup, trial.luck);
        asOf = setup.calendar.asOf;
        columns = columns(most);
        int stages = setup.inputs.stages().size();
        heldBy = new long[stages][setup.reasons.list.size()];
        critical = new int[setup.tasks.listed];
        ofStage = new int[stages][];
        hasNeed = new boolean[stages];
        for (int m = 0; m < setup.lines.count; m++) {
            hasNeed[setup.tasks.stage[setup.lines.task[m]]] |= setup.lines.expectedCost[m] > 0;
        }
        for (int s = 0; s < stages; s++) {
            int stage = s;
            ofStage[s] = IntStream.range(0, setup.tasks.count)
                    .filter(t -> setup.tasks.stage[t] == stage && setup.tasks.status[t] != TaskTable.DROPPED)
                    .toArray();
        }
    }

    private List<Columns> columns(int most) {
        State held = trial.held;
        State free = trial.free;
        Outcome.Answer first = outcome.held;
        Outcome.Answer second = outcome.workFirst;
        return List.of(
                Columns.ofDays(held.startDay, outcome.taskStart, asOf, most),
                Columns.ofDays(held.landDay, outcome.taskLanding, asOf, most),
                Columns.of(trial.luck.total, outcome.taskDrawn, most),
                Columns.ofDays(held.cutDay, outcome.episodeCut, asOf, most),
                Columns.of(held.lastTold, outcome.episodeLast, most),
                Columns.of(held.slotOutcome, outcome.slot, most),
                Columns.of(held.bankWeek, outcome.bank, most),
                Columns.of(held.unspentWeek, held.unspentWeek, outcome.unspent, most),
                Columns.of(held.putByWeek, held.putByWeek, outcome.putBy, most),
                Columns.of(held.supportersMonth, outcome.supporters, most),
                Columns.of(held.paidOutMonth, held.paidOutMonth, outcome.paidOut, most),
                Columns.ofDays(held.orderedOn, outcome.orderDay, asOf, most),
                Columns.ofDays(held.needDay, outcome.needDay, asOf, most),
                Columns.of(held.counts, outcome.counts, most),
                Columns.of(held.stageShort, free.stageShort, outcome.stageShort, most),
                Columns.of(held.cashWeek, held.cashWeek, first.cash, most),
                Columns.of(held.cashWeek, free.cashWeek, second.cash, most),
                Columns.of(held.underReserve, held.underReserve, first.underReserve, most),
                Columns.of(held.underReserve, free.underReserve, second.underReserve, most),
                Columns.of(held.underZero, held.underZero, first.underZero, most),
                Columns.of(held.underZero, free.underZero, second.underZero, most));
    }

    /** Records the trial as it stands: the {@code i}-th since the last {@link #flush}, the {@code at}-th of all. */
    void record(int i, int at) {
        State held = trial.held;
        boolean parted = trial.parted();
        for (Columns each : columns) {
            each.keep(i, parted);
        }
        outcome.effortRatio[at] = StrictMath.exp(trial.luck.beta);
        outcome.firstUnderWithoutPledges[at] = date(held.firstUnderWithout);
        for (int s = 0; s < ofStage.length; s++) {
            stage(at, s, parted);
        }
        firstDays(at, held, outcome.held);
        firstDays(at, parted ? trial.free : held, outcome.workFirst);
    }

    private void stage(int at, int s, boolean parted) {
        State held = trial.held;
        int last = landing(at, s, held, outcome.held);
        landing(at, s, parted ? trial.free : held, outcome.workFirst);
        if (held.accounts() && last >= 0 && held.landDay[last] >= 0) {
            chain.follow(held, last, s, heldBy[s], critical);
        }
    }

    /** Hands over what was recorded of so many trials, the first of them trial number {@code from}. */
    void flush(int from, int count) {
        columns.forEach(each -> each.flush(from, count));
    }

    private int date(int day) {
        return day == LATER ? Outcome.LATER : day + asOf;
    }

    /** The task of a stage that landed last, unfinished ones latest; -1 for a stage without tasks. */
    private int landing(int at, int s, State x, Outcome.Answer answer) {
        int start = LATER;
        int last = -1;
        for (int t : ofStage[s]) {
            start = Math.min(start, x.startDay[t]);
            if (last < 0 || x.landDay[t] >= x.landDay[last]) {
                last = t;
            }
        }
        answer.stageStart[s][at] = date(start);
        answer.stageLanding[s][at] = last < 0 ? Inputs.NONE : date(x.landDay[last]);
        return last;
    }

    private void firstDays(int at, State x, Outcome.Answer answer) {
        answer.firstUnderReserve[at] = date(x.firstUnderReserve);
        answer.firstUnderZero[at] = date(x.firstUnderZero);
    }

    /** Adds the sums of this thread's trials to the outcome. */
    void addSums() {
        for (int s = 0; s < ofStage.length; s++) {
            for (int r = 0; r < heldBy[s].length; r++) {
                outcome.heldBy[s][r] += heldBy[s][r];
            }
            int weeks = setup.calendar.sundays.length;
            for (int w = 0; w < weeks && hasNeed[s]; w++) {
                outcome.stageCovered[s][w] += trial.cash.covered[s * weeks + w];
            }
        }
        for (int t = 0; t < critical.length; t++) {
            outcome.critical[t] += critical[t];
        }
    }
}
