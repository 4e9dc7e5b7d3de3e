package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;

/**
 * Plans of small random projects with people against all there is: whole days of work for one pair of hands each, two trades, links.
 * The bound is found by a search of its own over every way in which each day can be given out, work interrupted at will, which shares
 * nothing with the engine.
 */
class PlanWithPeopleTest {
    private static final int PROJECTS = 60;
    private static final int PASSES = 200;
    private static final int MOST_DAYS = 4;

    /** The least sum of landings: each evening costs one for each task that is not done, the first evening being day 0. */
    private static final class Search {
        private final SmallSite small;
        private final Map<Integer, Integer> least = new HashMap<>();

        Search(SmallSite small) {
            this.small = small;
        }

        int from(int[] left) {
            int key = 0;
            int open = 0;
            for (int days : left) {
                key = key * (MOST_DAYS + 1) + days;
                open += days > 0 ? 1 : 0;
            }
            if (open == 0) {
                return 0;
            }
            Integer known = least.get(key);
            if (known == null) {
                known = give(left, left.clone(), 0, 0);
                least.put(key, known);
            }
            return known;
        }

        /** Gives people out from {@code p} on; {@code taken} tasks have somebody today. */
        private int give(int[] morning, int[] evening, int p, int taken) {
            if (p == small.person().length) {
                int open = 0;
                for (int days : evening) {
                    open += days > 0 ? 1 : 0;
                }
                return taken == 0 ? Integer.MAX_VALUE / 2 : open + from(evening);
            }
            int best = give(morning, evening, p + 1, taken);
            for (int t = 0; t < morning.length; t++) {
                if (morning[t] > 0 && (taken & 1 << t) == 0 && small.can(p, t) && done(morning, small.before()[t])) {
                    evening[t]--;
                    best = Math.min(best, give(morning, evening, p + 1, taken | 1 << t));
                    evening[t]++;
                }
            }
            return best;
        }

        private static boolean done(int[] left, int tasks) {
            for (int t = 0; t < left.length; t++) {
                if ((tasks & 1 << t) != 0 && left[t] > 0) {
                    return false;
                }
            }
            return true;
        }
    }

    @Test
    void small_plans_with_people_are_never_better_than_the_best_there_is_and_on_average_close_to_it() {
        SplittableRandom random = new SplittableRandom(3);
        double gaps = 0;
        int reached = 0;
        for (int i = 0; i < PROJECTS; i++) {
            SmallSite small = SmallSite.random(random, 4 + random.nextInt(3), 2 + random.nextInt(2), MOST_DAYS, 4);
            int best = new Search(small).from(small.days().clone());
            Inputs inputs = small.inputs();
            Plan plan = Planner.plan(inputs, 1, PASSES);
            assertThat(plan.landing()).as("project %d", i).doesNotContain(Outcome.LATER);
            assertThat(plan.objective()).as("project %d", i).isGreaterThanOrEqualTo(best);
            gaps += best == 0 ? 0 : (plan.objective() - best) / best;
            reached += plan.objective() == best ? 1 : 0;
        }
        // measured with this seed: 0.0007, 59 of 60 reached; no outside source
        assertThat(gaps / PROJECTS)
                .as("mean gap %.4f, %d of %d reached", gaps / PROJECTS, reached, PROJECTS)
                .isLessThan(0.005);
    }
}
