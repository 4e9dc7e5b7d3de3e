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
    /** Trials whose rows are kept before they are turned into columns. */
    private static final int BLOCK = 128;

    private final Setup setup;
    private final Trial trial;
    private final Outcome outcome;
    private final List<Columns> columns;
    /** The trials whose rows are kept; only so many as {@link #kept}. */
    private final int[] trials = new int[BLOCK];

    private int kept;
    private final double[] effortRatio = new double[BLOCK];
    /** Of the trial that is recorded, epoch days by stage; of both answers. */
    private final StageDays heldStages;

    private final StageDays freeStages;
    /** Of the trial that is recorded, the epoch days of {@link #firstDays}. */
    private final int[] firstDays = new int[5];

    private final Chain chain;
    private final int asOf;
    private final long[][] heldBy;
    private final int[] critical;
    /** Tasks of each stage that are not dropped. */
    private final int[][] ofStage;
    /** By stage: whether anything is left to pay for its lines. */
    private final boolean[] hasNeed;

    private record StageDays(int[] start, int[] landing) {
        StageDays(int stages) {
            this(new int[stages], new int[stages]);
        }
    }

    /** @param trial whose futures are recorded */
    Recorder(Setup setup, Trial trial, Outcome outcome) {
        this.setup = setup;
        this.trial = trial;
        this.outcome = outcome;
        chain = new Chain(setup, trial.luck);
        asOf = setup.calendar.asOf;
        int stages = setup.inputs.stages().size();
        heldStages = new StageDays(stages);
        freeStages = new StageDays(stages);
        columns = columns();
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

    private List<Columns> columns() {
        State held = trial.held;
        State free = trial.free;
        Outcome.Answer first = outcome.held;
        Outcome.Answer second = outcome.workFirst;
        return List.of(
                Columns.ofDays(held.startDay, outcome.taskStart, asOf, BLOCK),
                Columns.ofDays(held.landDay, outcome.taskLanding, asOf, BLOCK),
                Columns.of(trial.luck.total, outcome.taskDrawn, BLOCK),
                Columns.ofDays(held.cutDay, outcome.episodeCut, asOf, BLOCK),
                Columns.of(held.lastTold, outcome.episodeLast, BLOCK),
                Columns.of(held.slotOutcome, outcome.slot, BLOCK),
                Columns.of(held.bankWeek, outcome.bank, BLOCK),
                Columns.of(held.unspentWeek, held.unspentWeek, outcome.unspent, BLOCK),
                Columns.of(held.putByWeek, held.putByWeek, outcome.putBy, BLOCK),
                Columns.of(held.supportersMonth, outcome.supporters, BLOCK),
                Columns.of(held.paidOutMonth, held.paidOutMonth, outcome.paidOut, BLOCK),
                Columns.ofDays(held.orderedOn, outcome.orderDay, asOf, BLOCK),
                Columns.ofDays(held.needDay, outcome.needDay, asOf, BLOCK),
                Columns.of(held.counts, outcome.counts, BLOCK),
                Columns.of(held.stageShort, free.stageShort, outcome.stageShort, BLOCK),
                Columns.of(held.cashWeek, held.cashWeek, first.cash, BLOCK),
                Columns.of(held.cashWeek, free.cashWeek, second.cash, BLOCK),
                Columns.of(held.underReserve, held.underReserve, first.underReserve, BLOCK),
                Columns.of(held.underReserve, free.underReserve, second.underReserve, BLOCK),
                Columns.of(held.underZero, held.underZero, first.underZero, BLOCK),
                Columns.of(held.underZero, free.underZero, second.underZero, BLOCK),
                Columns.of(heldStages.start, first.stageStart, BLOCK),
                Columns.of(heldStages.landing, first.stageLanding, BLOCK),
                Columns.of(freeStages.start, second.stageStart, BLOCK),
                Columns.of(freeStages.landing, second.stageLanding, BLOCK),
                Columns.of(firstDays, firstDays(outcome), BLOCK));
    }

    /** Keeps the trial as it stands as number {@code at} of all. */
    void record(int at) {
        if (kept == BLOCK) {
            flush();
        }
        State held = trial.held;
        boolean parted = trial.parted();
        State free = parted ? trial.free : held;
        for (int s = 0; s < ofStage.length; s++) {
            int last = landing(s, held, heldStages);
            landing(s, free, freeStages);
            if (held.accounts() && last >= 0 && held.landDay[last] >= 0) {
                chain.follow(held, last, s, heldBy[s], critical);
            }
        }
        firstDays[0] = date(held.firstUnderWithout);
        firstDays[1] = date(held.firstUnderReserve);
        firstDays[2] = date(held.firstUnderZero);
        firstDays[3] = date(free.firstUnderReserve);
        firstDays[4] = date(free.firstUnderZero);
        effortRatio[kept] = StrictMath.exp(trial.luck.beta);
        for (Columns each : columns) {
            each.keep(kept, parted);
        }
        trials[kept++] = at;
    }

    /** The columns of {@link #firstDays}. */
    private static int[][] firstDays(Outcome outcome) {
        return new int[][] {
            outcome.firstUnderWithoutPledges,
            outcome.held.firstUnderReserve,
            outcome.held.firstUnderZero,
            outcome.workFirst.firstUnderReserve,
            outcome.workFirst.firstUnderZero
        };
    }

    /** Hands over the trials that are still kept. */
    void flush() {
        for (int i = 0; i < kept; i++) {
            outcome.effortRatio[trials[i]] = effortRatio[i];
        }
        for (Columns each : columns) {
            each.flush(trials, kept);
        }
        kept = 0;
    }

    private int date(int day) {
        return day == LATER ? Outcome.LATER : day + asOf;
    }

    /** Fills in the days of a stage. Returns its task that landed last, unfinished ones latest; -1 for a stage without tasks. */
    private int landing(int s, State x, StageDays days) {
        int start = LATER;
        int last = -1;
        for (int t : ofStage[s]) {
            start = Math.min(start, x.startDay[t]);
            if (last < 0 || x.landDay[t] >= x.landDay[last]) {
                last = t;
            }
        }
        days.start[s] = date(start);
        days.landing[s] = last < 0 ? Inputs.NONE : date(x.landDay[last]);
        return last;
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
