package weekwright.engine.simulate;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.plan.Plan;

/** A plan as columns by task, the unlisted tasks included. */
final class WorkOrder {
    /** Place among tasks under way: 0 is first. */
    final int[] rank;
    /** Place among tasks not under way: higher priority, then rank (rule 43). */
    final int[] place;
    /** First day on which the plan lets the task begin. */
    final int[] notBefore;
    /** Planned days, {@link Outcome#LATER} if after the horizon. */
    final int[] start;

    final int[] landing;

    WorkOrder(Setup setup, List<String> ranks, List<Inputs.NotBefore> holds, int[] start, int[] landing) {
        this(setup, rankOf(setup, ranks), holdOf(setup, holds), start, landing);
    }

    /** @param byTask rank by task, smaller first; ties by file order */
    WorkOrder(Setup setup, int[] byTask, int[] notBefore, int[] start, int[] landing) {
        int n = setup.tasks.count;
        int[] rank = withUnlisted(setup.tasks, byTask);
        this.rank = positions(n, Comparator.comparingInt(t -> rank[t]));
        this.place = positions(
                n,
                Comparator.<Integer>comparingInt(t -> -setup.tasks.priority[t]).thenComparingInt(t -> rank[t]));
        this.notBefore = notBefore;
        this.start = start;
        this.landing = landing;
    }

    static WorkOrder of(Setup setup, Plan plan) {
        int asOf = setup.calendar.asOf;
        int n = setup.tasks.count;
        return new WorkOrder(
                setup, plan.ranks(), plan.notBefore(), days(plan.start(), n, asOf), days(plan.landing(), n, asOf));
    }

    /**
     * What a stage holds beyond its listed tasks is worked where the crew puts what it finds: behind the last of the stage's open tasks,
     * not behind the whole build.
     */
    private static int[] withUnlisted(TaskTable tasks, int[] byTask) {
        int[] rank = byTask.clone();
        for (int r = tasks.listed; r < tasks.count; r++) {
            int last = -1;
            for (int t = 0; t < tasks.listed; t++) {
                if (tasks.stage[t] == tasks.stage[r] && tasks.status[t] < TaskTable.DONE) {
                    last = Math.max(last, byTask[t]);
                }
            }
            rank[r] = last < 0 ? byTask[r] : last;
        }
        return rank;
    }

    /** Whether it begins and lands before the horizon. */
    boolean planned(int t) {
        return start[t] != Outcome.LATER && landing[t] != Outcome.LATER;
    }

    private static int[] days(List<Integer> dates, int n, int asOf) {
        int[] days = new int[n];
        Arrays.fill(days, Outcome.LATER);
        for (int t = 0; t < dates.size(); t++) {
            days[t] = dates.get(t) == Outcome.LATER ? Outcome.LATER : dates.get(t) - asOf;
        }
        return days;
    }

    private static int[] positions(int n, Comparator<Integer> by) {
        int[] sorted = IntStream.range(0, n)
                .boxed()
                .sorted(by)
                .mapToInt(Integer::intValue)
                .toArray();
        int[] position = new int[n];
        for (int i = 0; i < n; i++) {
            position[sorted[i]] = i;
        }
        return position;
    }

    /** Tasks that the list does not name stand at its end. */
    private static int[] rankOf(Setup setup, List<String> ranks) {
        int[] rank = new int[setup.tasks.count];
        Arrays.fill(rank, Integer.MAX_VALUE);
        Ids ids = setup.taskIds;
        for (int i = 0; i < ranks.size(); i++) {
            int t = ids.orNone(ranks.get(i));
            if (t >= 0) {
                rank[t] = i;
            }
        }
        return rank;
    }

    private static int[] holdOf(Setup setup, List<Inputs.NotBefore> holds) {
        int[] notBefore = new int[setup.tasks.count];
        Arrays.fill(notBefore, TaskTable.NO_DAY);
        for (Inputs.NotBefore hold : holds) {
            int t = setup.taskIds.orNone(hold.task());
            if (t >= 0) {
                notBefore[t] = hold.day() - setup.calendar.asOf;
            }
        }
        return notBefore;
    }
}
