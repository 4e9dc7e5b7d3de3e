package weekwright.engine.plan;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import weekwright.engine.Inputs;
import weekwright.engine.simulate.Dispatch.Network;

/**
 * Priority values of tasks, small is first: latest start and finish, slack, most total successors, work remaining up to the landing of
 * the stage. Kolisch 1996 (European Journal of Operational Research 90:320-333) compares the first four.
 */
final class PriorityRules {
    private final Network network;
    private final double[] earlyFinish;
    private final double[] lateFinish;
    private final double[] lateStart;
    private final int[] successors;
    private final List<Inputs.Stage> stages;

    PriorityRules(Network network, List<Inputs.Stage> stages) {
        this.network = network;
        this.stages = stages;
        int n = network.id().length;
        earlyFinish = new double[n];
        lateFinish = new double[n];
        lateStart = new double[n];
        successors = new int[n];
        double end = forward();
        backward(end);
    }

    private double forward() {
        double end = 0;
        for (int t : network.order()) {
            double start = 0;
            for (int l = 0; l < network.from().length; l++) {
                if (network.to()[l] == t) {
                    start = Math.max(start, earlyFinish[network.from()[l]] + network.waitDays()[l]);
                }
            }
            earlyFinish[t] = start + network.days()[t];
            end = Math.max(end, earlyFinish[t]);
        }
        return end;
    }

    private void backward(double end) {
        int n = network.order().length;
        boolean[][] after = new boolean[n][n];
        for (int i = n - 1; i >= 0; i--) {
            int t = network.order()[i];
            lateFinish[t] = end;
            for (int l = 0; l < network.from().length; l++) {
                if (network.from()[l] == t) {
                    int s = network.to()[l];
                    lateFinish[t] = Math.min(lateFinish[t], lateStart[s] - network.waitDays()[l]);
                    after[t][s] = true;
                    for (int k = 0; k < n; k++) {
                        after[t][k] |= after[s][k];
                    }
                }
            }
            lateStart[t] = lateFinish[t] - network.days()[t];
            for (int k = 0; k < n; k++) {
                successors[t] += after[t][k] ? 1 : 0;
            }
        }
    }

    /** All rules. */
    List<double[]> all() {
        int n = network.id().length;
        double[] slack = new double[n];
        double[] most = new double[n];
        double[] byStage = new double[n];
        for (int t = 0; t < n; t++) {
            slack[t] = lateFinish[t] - earlyFinish[t];
            most[t] = -successors[t];
            byStage[t] = stages.get(network.stage()[t]).order() * 100_000.0 + lateStart[t];
        }
        double[] soonest = soonestStages();
        return List.of(lateFinish, lateStart, slack, most, byStage, soonest);
    }

    /**
     * Stages in the order of days of work left for a unit of weight, everything a stage needs included; each task counts with the first
     * stage that needs it, by latest start within.
     */
    private double[] soonestStages() {
        int n = network.id().length;
        boolean[][] needs = new boolean[stages.size()][n];
        for (int s = 0; s < stages.size(); s++) {
            for (int i = n - 1; i >= 0; i--) {
                int t = network.order()[i];
                needs[s][t] |= network.stage()[t] == s;
                for (int l = 0; l < network.from().length; l++) {
                    needs[s][t] |= network.from()[l] == t && needs[s][network.to()[l]];
                }
            }
        }
        double[] value = new double[n];
        Arrays.fill(value, Double.MAX_VALUE);
        boolean[] placed = new boolean[n];
        boolean[] used = new boolean[stages.size()];
        for (int round = 0; round < stages.size(); round++) {
            int best = -1;
            double least = Double.MAX_VALUE;
            for (int s = 0; s < stages.size(); s++) {
                if (!used[s]) {
                    double days = 0;
                    for (int t = 0; t < n; t++) {
                        days += needs[s][t] && !placed[t] ? network.days()[t] : 0;
                    }
                    double cost = days / Math.max(1e-6, stages.get(s).weight());
                    if (best < 0 || cost < least) {
                        best = s;
                        least = cost;
                    }
                }
            }
            used[best] = true;
            for (int t = 0; t < n; t++) {
                if (needs[best][t] && !placed[t]) {
                    placed[t] = true;
                    value[t] = round * 100_000.0 + lateStart[t];
                }
            }
        }
        return value;
    }

    /** Tasks by rank, each after all it follows: of those whose predecessors stand in the list, the one of smallest rank is next. */
    static int[] keepingLinks(Network network, int[] rank) {
        int n = rank.length;
        int[] open = new int[n];
        for (int to : network.to()) {
            open[to]++;
        }
        PriorityQueue<Integer> eligible = new PriorityQueue<>(
                Comparator.<Integer>comparingInt(t -> rank[t]).thenComparingInt(t -> t));
        for (int t = 0; t < n; t++) {
            if (open[t] == 0) {
                eligible.add(t);
            }
        }
        int[] list = new int[n];
        for (int i = 0; i < n; i++) {
            int t = eligible.remove();
            list[i] = t;
            for (int l = 0; l < network.from().length; l++) {
                if (network.from()[l] == t && --open[network.to()[l]] == 0) {
                    eligible.add(network.to()[l]);
                }
            }
        }
        return list;
    }
}
