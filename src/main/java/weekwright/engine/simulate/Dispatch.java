package weekwright.engine.simulate;

import java.util.Arrays;
import java.util.Optional;
import weekwright.engine.Outcome;

/**
 * The daily dispatch with expected values (rule 54): what the plan's search is judged by. One per thread. Arrays are by task, the
 * unlisted tasks of rough stages after the listed ones; days count from the as-of day.
 */
public final class Dispatch {
    /** Slots that the objective looks at (rule 55). */
    private static final int SLOTS = 12;

    private static final int WEIGHT_OF_EMPTY_SLOT = 7;

    private final Setup setup;
    private final Trial trial;
    private final int[] noDay;

    public Dispatch(Setup setup) {
        this.setup = setup;
        trial = new Trial(setup, false);
        trial.luck.expect();
        noDay = new int[setup.tasks.count];
        Arrays.fill(noDay, TaskTable.NO_DAY);
    }

    /** "No day" for {@link #run}. */
    public int[] noHolds() {
        return noDay.clone();
    }

    /**
     * Runs the project in an order.
     *
     * @param rank by task, smaller first
     * @param notBefore by task, first day on which it may begin, {@link Integer#MIN_VALUE} for any
     * @return the objective (rule 55): Σ stage weight × landing in days (unfinished = 2 × horizon) + 7 × mean weight × empty slots of
     *     the next 12
     */
    public double run(int[] rank, int[] notBefore) {
        trial.run(new WorkOrder(setup, rank, notBefore, noDay, noDay));
        State x = trial.held;
        int stages = setup.inputs.stages().size();
        double sum = objective(x.landDay);
        double weights = setup.inputs.stages().stream()
                .mapToDouble(stage -> stage.weight())
                .sum();
        int empty = 0;
        int seen = 0;
        for (int s = 0; s < setup.calendar.slots.length && seen < SLOTS; s++) {
            if (setup.calendar.slots[s] > 0) {
                seen++;
                empty += x.slotOutcome[s] == Outcome.Slot.EMPTY.ordinal() ? 1 : 0;
            }
        }
        return sum + (stages == 0 ? 0 : WEIGHT_OF_EMPTY_SLOT * weights / stages * empty);
    }

    /** What landings by task come to, empty slots left out: Σ stage weight × landing in days (unfinished = 2 × horizon). */
    public double objective(int[] landing) {
        int stages = setup.inputs.stages().size();
        int[] last = new int[stages];
        Arrays.fill(last, Integer.MIN_VALUE);
        for (int t = 0; t < setup.tasks.count; t++) {
            if (setup.tasks.status[t] != TaskTable.DROPPED) {
                last[setup.tasks.stage[t]] = Math.max(last[setup.tasks.stage[t]], landing[t]);
            }
        }
        double sum = 0;
        for (int s = 0; s < stages; s++) {
            if (last[s] >= 0) {
                sum += setup.inputs.stages().get(s).weight()
                        * (last[s] == Outcome.LATER ? 2.0 * setup.calendar.days : last[s]);
            }
        }
        return sum;
    }

    /** First days of the last run, {@link Outcome#LATER} if not before the horizon; a copy. */
    public int[] start() {
        return trial.held.startDay.clone();
    }

    /** Landing days of the last run, likewise. */
    public int[] landing() {
        return trial.held.landDay.clone();
    }

    /** The network that priority rules look at. */
    public Network network() {
        int n = setup.tasks.count;
        double[] days = new double[n];
        for (int t = 0; t < n; t++) {
            if (setup.tasks.status[t] < TaskTable.DONE) {
                days[t] = setup.tasks.wait[t]
                        ? trial.luck.total[t] + Math.min(0, waitBegan(t))
                        : trial.luck.left[t] / minutesADay(t);
            }
        }
        return new Network(
                setup.tasks.id.clone(),
                setup.tasks.stage.clone(),
                days,
                setup.links.from.clone(),
                setup.links.to.clone(),
                Arrays.stream(trial.luck.linkWait).asDoubleStream().toArray(),
                setup.links.order.clone());
    }

    /** The project as work of fixed days, if it is nothing else. */
    public Optional<FixedWork> fixedWork() {
        return FixedWork.of(setup, trial.luck);
    }

    private int waitBegan(int t) {
        return setup.tasks.status[t] == TaskTable.UNDER_WAY ? setup.tasks.started[t] : 0;
    }

    /** Mean minutes a calendar day that the people who can do a task give it, with as many of them as it takes. */
    private double minutesADay(int t) {
        Calendar calendar = setup.calendar;
        long sum = 0;
        int days = Math.min(365, calendar.days);
        int people = 0;
        for (int p = 0; p < setup.crowd.named; p++) {
            if ((setup.tasks.can[t] >>> p & 1) != 0) {
                people++;
                for (int d = 0; d < days; d++) {
                    sum += calendar.minutes[d * setup.crowd.named + p];
                }
            }
        }
        double each = people == 0 || days == 0 ? 0 : (double) sum / people / days;
        return Math.max(1, each * Math.min(setup.tasks.hands[t], Math.max(1, people)));
    }

    /**
     * Tasks, links and mean lengths.
     *
     * @param id by task
     * @param stage by task
     * @param days mean calendar days that are left of it, 0 if done
     * @param from by link
     * @param to by link
     * @param waitDays by link
     * @param order tasks so that each stands after all it follows
     */
    public record Network(
            String[] id, int[] stage, double[] days, int[] from, int[] to, double[] waitDays, int[] order) {}
}
