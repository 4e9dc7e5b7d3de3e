package weekwright.engine.simulate;

import static weekwright.engine.simulate.State.FIRST_UNDER_RESERVE;
import static weekwright.engine.simulate.State.FIRST_UNDER_WITHOUT;
import static weekwright.engine.simulate.State.FIRST_UNDER_ZERO;
import static weekwright.engine.simulate.State.LATER;

import weekwright.engine.Inputs;
import weekwright.engine.Outcome;

/**
 * Writes finished trials into the outcome: each its own column of each array, and whole-number sums that are added up over threads at
 * the end, so that the result does not depend on who ran which trial. Columns are gathered in a block first, because a trial's entries
 * lie far apart in the outcome.
 */
final class Recorder {
    private final Setup setup;
    private final Outcome all;
    /** The trials since the last {@link #flush}. */
    private final Outcome outcome;

    private final Chain chain;
    private final int asOf;
    private final long[][] heldBy;
    private final int[] critical;
    private final int[][] covered;
    /** Tasks of each stage that are not dropped. */
    private final int[][] ofStage;
    /** By stage: whether anything is left to pay for its lines. */
    private final boolean[] hasNeed;

    /** @param most how many trials are recorded between two {@link #flush}es at most */
    Recorder(Setup setup, Luck luck, Outcome all, int most) {
        this.setup = setup;
        this.all = all;
        outcome = Simulation.emptyOutcome(setup, most);
        chain = new Chain(setup, luck);
        asOf = setup.calendar.asOf;
        int stages = setup.inputs.stages().size();
        heldBy = new long[stages][setup.reasons.list.size()];
        critical = new int[setup.tasks.listed];
        covered = new int[stages][setup.calendar.sundays.length];
        ofStage = new int[stages][];
        hasNeed = new boolean[stages];
        for (int m = 0; m < setup.lines.count; m++) {
            hasNeed[setup.tasks.stage[setup.lines.task[m]]] |= setup.lines.expectedCost[m] > 0;
        }
        for (int s = 0; s < stages; s++) {
            int stage = s;
            ofStage[s] = java.util.stream.IntStream.range(0, setup.tasks.count)
                    .filter(t -> setup.tasks.stage[t] == stage && setup.tasks.status[t] != TaskTable.DROPPED)
                    .toArray();
        }
    }

    /** Records the {@code i}-th trial since the last {@link #flush}. */
    void record(int i, Trial trial) {
        State held = trial.held;
        State free = trial.parted() ? trial.free : held;
        outcome.effortRatio[i] = StrictMath.exp(trial.luck.beta);
        answer(i, held, outcome.held);
        answer(i, free, outcome.workFirst);
        for (int t = 0; t < setup.tasks.listed; t++) {
            outcome.taskStart[t][i] = date(held.startDay[t]);
            outcome.taskLanding[t][i] = date(held.landDay[t]);
            outcome.taskDrawn[t][i] = trial.luck.total[t];
        }
        for (int e = 0; e < setup.episodes.count; e++) {
            outcome.episodeCut[e][i] = date(held.cutDay[e]);
            outcome.episodeLast[e][i] = held.lastTold[e];
        }
        for (int s = 0; s < outcome.slot.length; s++) {
            outcome.slot[s][i] = held.slotOutcome[s];
        }
        for (int w = 0; w < outcome.bank.length; w++) {
            outcome.bank[w][i] = held.bankWeek[w];
            outcome.unspent[w][i] = held.unspentWeek[w];
        }
        for (int m = 0; m < setup.lines.count; m++) {
            outcome.orderDay[m][i] = date(held.orderedOn[m]);
            outcome.needDay[m][i] = date(held.needDay[m]);
        }
        outcome.firstUnderWithoutPledges[i] = date(held.number[FIRST_UNDER_WITHOUT]);
        for (int c = 0; c < outcome.counts.length; c++) {
            outcome.counts[c][i] = held.counts[c];
        }
        int weeks = setup.calendar.sundays.length;
        for (int s = 0; s < ofStage.length; s++) {
            outcome.stageShort[s][i] = free.stageShort[s];
            for (int w = 0; hasNeed[s] && w < weeks; w++) {
                covered[s][w] += held.covered[s * weeks + w] ? 1 : 0;
            }
            int last = lastOf(held, s);
            if (last >= 0 && held.landDay[last] >= 0) {
                chain.follow(held, last, s, heldBy[s], critical);
            }
        }
    }

    /** Hands so many trials over, the first of them as trial number {@code from}. */
    void flush(int from, int count) {
        all.take(outcome, from, count);
    }

    private int date(int day) {
        return day == LATER ? Outcome.LATER : day + asOf;
    }

    private void answer(int i, State x, Outcome.Answer answer) {
        for (int s = 0; s < ofStage.length; s++) {
            int start = LATER;
            for (int t : ofStage[s]) {
                start = Math.min(start, x.startDay[t]);
            }
            int last = lastOf(x, s);
            answer.stageStart[s][i] = date(start);
            answer.stageLanding[s][i] = last < 0 ? Inputs.NONE : date(x.landDay[last]);
        }
        for (int w = 0; w < answer.cash.length; w++) {
            answer.cash[w][i] = x.cashWeek[w];
        }
        for (int m = 0; m < answer.underZero.length; m++) {
            answer.underReserve[m][i] = x.underReserve[m];
            answer.underZero[m][i] = x.underZero[m];
        }
        answer.firstUnderReserve[i] = date(x.number[FIRST_UNDER_RESERVE]);
        answer.firstUnderZero[i] = date(x.number[FIRST_UNDER_ZERO]);
    }

    /** The task of a stage that landed last, unfinished ones latest; -1 for a stage without tasks. */
    private int lastOf(State x, int s) {
        int last = -1;
        for (int t : ofStage[s]) {
            if (last < 0 || x.landDay[t] >= x.landDay[last]) {
                last = t;
            }
        }
        return last;
    }

    /** Adds the sums of this thread's trials to the all. */
    void addSums() {
        for (int s = 0; s < ofStage.length; s++) {
            for (int r = 0; r < heldBy[s].length; r++) {
                all.heldBy[s][r] += heldBy[s][r];
            }
            for (int w = 0; w < covered[s].length; w++) {
                all.stageCovered[s][w] += covered[s][w];
            }
        }
        for (int t = 0; t < critical.length; t++) {
            all.critical[t] += critical[t];
        }
    }
}
