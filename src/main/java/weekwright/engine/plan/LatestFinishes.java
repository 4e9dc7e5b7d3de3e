package weekwright.engine.plan;

import java.util.Arrays;
import java.util.SplittableRandom;
import weekwright.engine.simulate.FixedWork;

/**
 * Earliest and latest landings of fixed work if there were equipment enough, and lists drawn from the latest: regret-biased random
 * sampling (Drexl 1991; Kolisch &amp; Drexl 1996, Naval Research Logistics 43:23-40).
 */
final class LatestFinishes {
    private final FixedWork work;
    private final int[] sorted;
    private final int[] early;
    private final int[] late;

    /** @param sorted tasks so that each stands after all it follows */
    LatestFinishes(FixedWork work, int[] sorted) {
        this.work = work;
        this.sorted = sorted;
        early = earlyLandings();
        late = lateFinishes();
    }

    /** Earliest landings by task. */
    int[] early() {
        return early;
    }

    /** A list drawn from latest finishes: with regret r = largest of those that may come next - own, the chance is (r + 1) / Σ (r + 1). */
    void sample(SplittableRandom random, int[] list) {
        int count = list.length;
        int[] open = new int[count];
        for (int t : work.to()) {
            open[t]++;
        }
        int[] eligible = new int[count];
        int n = 0;
        for (int t = 0; t < count; t++) {
            if (open[t] == 0) {
                eligible[n++] = t;
            }
        }
        for (int i = 0; i < count; i++) {
            int most = Integer.MIN_VALUE;
            long sum = 0;
            for (int k = 0; k < n; k++) {
                most = Math.max(most, late[eligible[k]]);
                sum -= late[eligible[k]];
            }
            sum += n * (most + 1L);
            double u = random.nextDouble() * sum;
            int k = 0;
            while (k < n - 1 && u >= most - late[eligible[k]] + 1) {
                u -= most - late[eligible[k++]] + 1;
            }
            int t = eligible[k];
            eligible[k] = eligible[--n];
            list[i] = t;
            for (int l = 0; l < work.from().length; l++) {
                if (work.from()[l] == t && --open[work.to()[l]] == 0) {
                    eligible[n++] = work.to()[l];
                }
            }
        }
    }

    private int[] earlyLandings() {
        int[] over = new int[sorted.length];
        for (int t : sorted) {
            int begin = 0;
            for (int l = 0; l < work.from().length; l++) {
                if (work.to()[l] == t) {
                    begin = Math.max(begin, over[work.from()[l]] + work.waitDays()[l]);
                }
            }
            over[t] = begin + work.days()[t];
        }
        return over;
    }

    private int[] lateFinishes() {
        int[] late = new int[sorted.length];
        Arrays.fill(late, Arrays.stream(early).max().orElse(0));
        for (int i = sorted.length - 1; i >= 0; i--) {
            int t = sorted[i];
            for (int l = 0; l < work.from().length; l++) {
                if (work.from()[l] == t) {
                    int s = work.to()[l];
                    late[t] = Math.min(late[t], late[s] - work.days()[s] - work.waitDays()[l]);
                }
            }
        }
        return late;
    }
}
