package weekwright.engine.plan;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import weekwright.engine.simulate.Dispatch.Network;

/**
 * Betters the order of work of any project, each order judged by the daily dispatch with expected values. From the best list so far
 * a task, or a whole stage, is pulled forward together with all it follows, or put back together with all that follows it, so that
 * every list keeps the links; what is not worse stays (a local search by insertion over lists of
 * tasks; that moves must take along what they follow is from Baar, Brucker &amp; Knust 1999, from memory).
 *
 * <p>Cost: one run of the dispatch a pass. Ties: of equal lists the later one stays. Limits: a local search, no proof. Deterministic in
 * network, first list, seed and passes: passes alone bound it, never time, so that a slow machine finds the same.
 */
final class OrderSearch {
    /** Chance that a whole stage moves. */
    private static final double STAGE = 0.15;
    /** Chance that a move goes anywhere in the list, and not near by. */
    private static final double FAR = 0.3;

    /** Places that other moves go at most. */
    private static final int NEAR = 8;
    /** Moves drawn for one pass while they change nothing. */
    private static final int DRAWS = 4;

    private final Network network;
    private final boolean[][] follows;
    private final SplittableRandom random;

    OrderSearch(Network network, long seed) {
        this.network = network;
        random = new SplittableRandom(seed);
        int n = network.id().length;
        follows = new boolean[n][n];
        for (int t : network.order()) {
            for (int l = 0; l < network.from().length; l++) {
                if (network.to()[l] == t) {
                    int before = network.from()[l];
                    follows[t][before] = true;
                    for (int k = 0; k < n; k++) {
                        follows[t][k] |= follows[before][k];
                    }
                }
            }
        }
    }

    /**
     * The best list found.
     *
     * @param first open tasks in the order to begin with
     * @param reached what the judge says of it
     * @param judge of a list, small is good
     * @param passes lists that are judged
     */
    int[] run(int[] first, double reached, ToDoubleFunction<int[]> judge, int passes) {
        int[] best = first;
        double least = reached;
        for (int pass = 0; pass < passes && best.length > 1; pass++) {
            int[] list = best;
            for (int draw = 0; draw < DRAWS && Arrays.equals(list, best); draw++) {
                list = moved(best);
            }
            double value = judge.applyAsDouble(list);
            if (value <= least) {
                least = value;
                best = list;
            }
        }
        return best;
    }

    private int[] moved(int[] list) {
        boolean[] moved = new boolean[follows.length];
        int at = random.nextInt(list.length);
        if (random.nextDouble() < STAGE) {
            int stage = network.stage()[list[at]];
            for (int t : list) {
                moved[t] = network.stage()[t] == stage;
            }
        } else {
            moved[list[at]] = true;
        }
        int to = random.nextDouble() < FAR
                ? random.nextInt(list.length)
                : Math.max(0, Math.min(list.length - 1, at - NEAR + random.nextInt(2 * NEAR + 1)));
        return to < at ? pulled(list, moved, to) : putBack(list, moved, to);
    }

    /** The moved tasks and all they follow come to a place, unless they stand before it already. */
    private int[] pulled(int[] list, boolean[] moved, int place) {
        int n = list.length;
        boolean[] with = moved.clone();
        for (int i = n - 1; i >= 0; i--) {
            for (int k = 0; k < n && !with[list[i]]; k++) {
                with[list[i]] = moved[list[k]] && follows[list[k]][list[i]];
            }
        }
        int[] result = new int[n];
        int at = 0;
        for (int i = 0; i < place; i++) {
            result[at++] = list[i];
        }
        for (int i = place; i < n; i++) {
            if (with[list[i]]) {
                result[at++] = list[i];
            }
        }
        for (int i = place; i < n; i++) {
            if (!with[list[i]]) {
                result[at++] = list[i];
            }
        }
        return result;
    }

    /** The moved tasks and all that follow them go behind a place, unless they stand after it already. */
    private int[] putBack(int[] list, boolean[] moved, int place) {
        int n = list.length;
        boolean[] with = moved.clone();
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n && !with[list[i]]; k++) {
                with[list[i]] = moved[list[k]] && follows[list[i]][list[k]];
            }
        }
        int[] result = new int[n];
        int at = 0;
        for (int i = 0; i <= place; i++) {
            if (!with[list[i]]) {
                result[at++] = list[i];
            }
        }
        for (int i = 0; i <= place; i++) {
            if (with[list[i]]) {
                result[at++] = list[i];
            }
        }
        for (int i = place + 1; i < n; i++) {
            result[at++] = list[i];
        }
        return result;
    }
}
