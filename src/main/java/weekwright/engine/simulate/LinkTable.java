package weekwright.engine.simulate;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import weekwright.engine.Inputs;

/**
 * Links as columns, and for each task what hangs on its progress: its links and the episodes that tell it, smallest share first.
 * The unlisted task of a stage follows all listed tasks of the stage.
 */
final class LinkTable {
    final int count;
    final int[] from;
    final int[] to;
    final double[] share;
    final Spread[] wait;
    final long[] key;
    /** Day on which the link was reached by a task done or dropped before the as-of day, else {@link TaskTable#NO_DAY}. */
    final int[] past;
    /** Tasks so that each stands after all it follows. */
    final int[] order;
    /** Marks of task t: positions markStart[t] to markStart[t + 1] - 1. */
    final int[] markStart;

    final double[] markShare;
    /** A link if at least 0, else the episode -1 - markTarget. */
    final int[] markTarget;
    /** Links into task t: positions inStart[t] to inStart[t + 1] - 1 of {@link #in}. */
    final int[] inStart;

    final int[] in;
    /** The task at the other end of each link of {@link #in}. */
    final int[] inFrom;

    LinkTable(Inputs inputs, TaskTable tasks, Ids taskIds, List<double[]> tells) {
        List<Inputs.Link> links = new ArrayList<>(inputs.links());
        int listed = links.size();
        int[][] ends = new int[listed + tasks.listed * (tasks.count - tasks.listed)][];
        int n = 0;
        for (Inputs.Link link : links) {
            ends[n++] = new int[] {taskIds.at(link.after()), taskIds.at(link.task())};
        }
        for (int r = tasks.listed; r < tasks.count; r++) {
            for (int t = 0; t < tasks.listed; t++) {
                if (tasks.stage[t] == tasks.roughOf[r] && tasks.status[t] != TaskTable.DROPPED) {
                    ends[n++] = new int[] {t, r};
                }
            }
        }
        count = n;
        from = new int[n];
        to = new int[n];
        share = new double[n];
        wait = new Spread[n];
        key = new long[n];
        past = new int[n];
        for (int l = 0; l < n; l++) {
            from[l] = ends[l][0];
            to[l] = ends[l][1];
            share[l] = l < listed ? links.get(l).share() : 1;
            wait[l] = Spread.of(l < listed ? links.get(l).waitDays() : Inputs.Range.ZERO);
            key[l] = Streams.key(
                    Streams.Purpose.LINK_WAIT,
                    Streams.pairHash(Streams.idHash(tasks.id[to[l]]), Streams.idHash(tasks.id[from[l]])));
            past[l] = pastReach(tasks, from[l], share[l]);
        }
        inStart = new int[tasks.count + 1];
        for (int l = 0; l < n; l++) {
            inStart[to[l] + 1]++;
        }
        for (int t = 0; t < tasks.count; t++) {
            inStart[t + 1] += inStart[t];
        }
        in = new int[n];
        int[] fill = inStart.clone();
        for (int l = 0; l < n; l++) {
            in[fill[to[l]]++] = l;
        }
        inFrom = Arrays.stream(in).map(l -> from[l]).toArray();
        order = topological(tasks);
        markStart = new int[tasks.count + 1];
        List<double[]> marks = new ArrayList<>();
        for (int t = 0; t < tasks.count; t++) {
            List<double[]> own = new ArrayList<>();
            for (int l = 0; l < n; l++) {
                if (from[l] == t) {
                    own.add(new double[] {share[l], l});
                }
            }
            for (double[] tell : tells) {
                if ((int) tell[1] == t) {
                    own.add(new double[] {tell[2], -1 - tell[0]});
                }
            }
            own.sort((a, b) -> Double.compare(a[0], b[0]));
            marks.addAll(own);
            markStart[t + 1] = marks.size();
        }
        markShare = marks.stream().mapToDouble(m -> m[0]).toArray();
        markTarget = marks.stream().mapToInt(m -> (int) m[1]).toArray();
    }

    /**
     * The day on which a share of a finished task was reached (rule 29): the first date on which its logged hours, or pieces,
     * reached it; without a log, and for the whole, the day it was done.
     */
    static int pastReach(TaskTable tasks, int t, double share) {
        if (tasks.landed[t] == TaskTable.NO_DAY) {
            return TaskTable.NO_DAY;
        }
        int day = TaskTable.NO_DAY;
        if (share < 1 && tasks.status[t] == TaskTable.DONE) {
            if (tasks.wait[t]) {
                int begun = tasks.started[t];
                day = begun + (int) Math.ceil(share * (tasks.landed[t] - begun) - 1e-9);
            } else if (tasks.piecesDone[t] > 0 && share > 0) {
                day = tasks.dayOfPieces(t, (int) Math.ceil(share * tasks.pieces[t] - 1e-9));
            } else {
                day = tasks.dayOfMinutes(t, share * tasks.logged[t]);
            }
        }
        return day == TaskTable.NO_DAY ? tasks.landed[t] : day;
    }

    private int[] topological(TaskTable tasks) {
        int[] open = new int[tasks.count];
        for (int l = 0; l < count; l++) {
            open[to[l]]++;
        }
        int[] sorted = new int[tasks.count];
        int n = 0;
        boolean[] placed = new boolean[tasks.count];
        for (boolean found = true; found; ) {
            found = false;
            for (int t = 0; t < tasks.count; t++) {
                if (!placed[t] && open[t] == 0) {
                    placed[t] = true;
                    found = true;
                    sorted[n++] = t;
                    for (int l = 0; l < count; l++) {
                        if (from[l] == t) {
                            open[to[l]]--;
                        }
                    }
                }
            }
        }
        if (n < tasks.count) {
            List<String> left = new ArrayList<>();
            for (int t = 0; t < tasks.listed; t++) {
                if (!placed[t]) {
                    left.add(tasks.id[t]);
                }
            }
            throw new IllegalArgumentException("the links form a cycle in or before " + String.join(", ", left));
        }
        return sorted;
    }
}
