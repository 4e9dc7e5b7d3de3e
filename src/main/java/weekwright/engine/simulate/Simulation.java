package weekwright.engine.simulate;

import java.util.Arrays;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.plan.Plan;

/** Runs the trials of a forecast. */
public final class Simulation {
    /** Changes whenever the same inputs and seed may give other numbers. */
    public static final String VERSION = "9";

    /** Trials taken by a thread at a time. */
    private static final int CHUNK = 20;

    private final Setup setup;
    private final WorkOrder order;
    private final Outcome outcome;
    private final long seed;
    private final Progress progress;
    private final boolean reasons;
    private final AtomicInteger next = new AtomicInteger();
    private final AtomicReference<Throwable> failure = new AtomicReference<>();
    private final Object turn = new Object();
    private int done;
    private volatile boolean stopped;

    private Simulation(Setup setup, Plan plan, int trials, long seed, boolean reasons, Progress progress) {
        this.reasons = reasons;
        this.setup = setup;
        this.order = WorkOrder.of(setup, plan);
        this.seed = seed;
        this.progress = progress;
        this.outcome = emptyOutcome(setup, trials);
    }

    /**
     * Simulates {@code trials} futures with both funding answers. The result does not depend on {@code threads}.
     *
     * @param threads at least 1
     * @throws Stopped if {@code progress} said so
     * @throws IllegalArgumentException if the inputs name unknown ids or links in a cycle; the message names them
     */
    public static Outcome run(Inputs inputs, Plan plan, int trials, long seed, int threads, Progress progress) {
        return run(new Setup(inputs), plan, trials, seed, threads, progress);
    }

    /** As {@link #run(Inputs, Plan, int, long, int, Progress)}, for inputs that have been read already. */
    public static Outcome run(Setup setup, Plan plan, int trials, long seed, int threads, Progress progress) {
        return new Simulation(setup, plan, trials, seed, true, progress).run(Math.max(1, threads));
    }

    /**
     * As {@link #run(Setup, Plan, int, long, int, Progress)} for futures that are only compared: the same but for what held each
     * stage and how often a task was critical, which stay 0.
     */
    public static Outcome runWithoutReasons(
            Setup setup, Plan plan, int trials, long seed, int threads, Progress progress) {
        return new Simulation(setup, plan, trials, seed, false, progress).run(Math.max(1, threads));
    }

    /**
     * Runs one trial and tells everything that happens in it.
     *
     * @param workFirst whether the answer "work first" is told from the day on which the two part, else only "held for funds"
     */
    public static void trace(Setup setup, Plan plan, int trial, long seed, boolean workFirst, Trace trace) {
        Trial one = new Trial(setup, true);
        one.luck.draw(seed, trial);
        one.trace(trace);
        one.run(WorkOrder.of(setup, plan));
        if (workFirst && one.parted()) {
            one.runWorkFirst();
        }
    }

    static Outcome emptyOutcome(Setup setup, int trials) {
        Calendar calendar = setup.calendar;
        return new Outcome(
                setup.inputs,
                trials,
                calendar.asOf + calendar.days,
                Arrays.stream(calendar.slots).map(d -> d + calendar.asOf).toArray(),
                Arrays.stream(calendar.sundays).map(d -> d + calendar.asOf).toArray(),
                calendar.months,
                setup.reasons.list);
    }

    private Outcome run(int threads) {
        Thread[] others = new Thread[threads - 1];
        for (int i = 0; i < others.length; i++) {
            others[i] = new Thread(this::work, "trials " + (i + 2));
            others[i].setDaemon(true);
            others[i].start();
        }
        work();
        boolean interrupted = false;
        for (Thread other : others) {
            while (other.isAlive()) {
                try {
                    other.join();
                } catch (InterruptedException e) {
                    interrupted = true;
                    stopped = true;
                }
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
        if (failure.get() != null) {
            throw new IllegalStateException("a trial failed", failure.get());
        }
        if (stopped) {
            throw new Stopped(done, outcome.trials);
        }
        long[] need = stageNeed();
        System.arraycopy(need, 0, outcome.stageNeed, 0, need.length);
        return outcome;
    }

    private long[] stageNeed() {
        long[] need = new long[setup.inputs.stages().size()];
        for (int m = 0; m < setup.lines.count; m++) {
            need[setup.tasks.stage[setup.lines.task[m]]] += setup.lines.expectedCost[m];
        }
        return need;
    }

    private void work() {
        try {
            Trial trial = new Trial(setup, reasons);
            Recorder recorder = new Recorder(setup, trial, outcome);
            for (int from = next.getAndAdd(CHUNK); from < outcome.trials && !stopped; from = next.getAndAdd(CHUNK)) {
                int to = Math.min(outcome.trials, from + CHUNK);
                for (int i = from; i < to; i++) {
                    trial.luck.draw(seed, i);
                    trial.run(order);
                    if (trial.parted()) {
                        trial.runWorkFirst();
                    }
                    recorder.record(i);
                }
                tell(to - from);
            }
            recorder.flush();
            synchronized (turn) {
                recorder.addSums();
            }
        } catch (RuntimeException | Error e) {
            failure.compareAndSet(null, e);
            stopped = true;
        }
    }

    private void tell(int more) {
        synchronized (turn) {
            done += more;
            if (!stopped && !progress.done(done)) {
                stopped = done < outcome.trials || stopped;
            }
        }
    }
}
