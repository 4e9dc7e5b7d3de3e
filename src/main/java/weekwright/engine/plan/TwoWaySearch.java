package weekwright.engine.plan;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import weekwright.engine.simulate.FixedWork;

/**
 * Searches the order of work of a project of fixed days. A genetic search with two populations, one of schedules built from the
 * front and one of schedules built from the end: parents of the one give children of the other, so that each child is at once a
 * forward or backward improvement (Li &amp; Willis 1992, European Journal of Operational Research 56:370-379) of what its parents were.
 * After Debels &amp; Vanhoucke, "A bi-population based genetic algorithm for the RCPSP", LNCS 3483:378-387 (2005); the stretch that a child
 * takes from its first parent is a busy one, as in Valls, Ballestín &amp; Quintanilla, "A hybrid genetic algorithm for the RCPSP",
 * European Journal of Operational Research 185:495-508 (2008). The first schedules are drawn from latest finishes.
 * Written from memory of these papers; chances and sizes are our own.
 *
 * <p>Cost: one build a schedule. Ties: of equal children the later one stays, of equal best ones the first. Limits: no proof that the
 * best is found but where the longest path is reached; weights of several stages are measured on both sides, but only the end of the
 * whole is improved by building from the end. Deterministic in work, seed and budget; not for use by several threads.
 */
final class TwoWaySearch {
    /** Chance that a task changes places with its neighbour in the list, in a child of parents of different and of equal value. */
    private static final double PLAIN = 0.05;

    private static final double ALIKE = 0.2;
    /** Chance that a child takes the place of a better one. */
    private static final double WORSE = 0.2;

    private static final int FEWEST = 6;
    private static final int MOST = 300;
    /** Members of a population are this many times the root of schedules a task; found by trial on J30 and J60, as are the chances. */
    private static final double SIZE = 12;

    private final int count;
    private final FixedWork work;
    private final ToDoubleFunction<int[]> measure;
    private final SplittableRandom random;
    private final SerialBuilder[] builder;
    private final boolean[][] linked;
    /** Tasks so that each stands after all it follows, and the place of each in it. */
    private final int[] sorted;

    private final int[] placeInSorted;
    private final LatestFinishes latest;
    private final double bound;
    private final int size;
    private int left;
    private int[] best;
    private double bestValue = Double.POSITIVE_INFINITY;

    // working memory
    private final int[] place;
    private final int[] child;
    private final int[] landing;
    private final long[] key;
    private final double[] busy;
    private Member spare;

    /** A schedule in its own direction, and the list from which the other direction builds. */
    private static final class Member {
        final int[] begin;
        final int[] list;
        int end;
        double value = Double.POSITIVE_INFINITY;

        Member(int count) {
            begin = new int[count];
            list = new int[count];
        }
    }

    /**
     * @param order of tasks so that each stands after all it follows
     * @param measure of landing days by task; small is good, and never smaller for later landings
     * @param schedules how many are built
     */
    TwoWaySearch(FixedWork work, int[] order, ToDoubleFunction<int[]> measure, long seed, int schedules) {
        this.work = work;
        this.measure = measure;
        count = work.days().length;
        builder = new SerialBuilder[] {new SerialBuilder(work, false), new SerialBuilder(work, true)};
        random = new SplittableRandom(seed);
        left = schedules;
        size = Math.max(FEWEST, Math.min(MOST, (int) (SIZE * Math.sqrt((double) schedules / Math.max(1, count)))));
        sorted = order;
        placeInSorted = new int[count];
        for (int i = 0; i < count; i++) {
            placeInSorted[order[i]] = i;
        }
        linked = new boolean[count][count];
        for (int l = 0; l < work.from().length; l++) {
            linked[work.from()[l]][work.to()[l]] = true;
            linked[work.to()[l]][work.from()[l]] = true;
        }
        place = new int[count];
        child = new int[count];
        landing = new int[count];
        key = new long[count];
        busy = new double
                [2
                        + Arrays.stream(work.days()).sum()
                        + Arrays.stream(work.waitDays()).sum()];
        spare = new Member(count);
        latest = new LatestFinishes(work, order);
        bound = measure.applyAsDouble(latest.early());
    }

    /** First days by task of the best schedule found, left-justified. */
    int[] run() {
        Member[][] population = {new Member[size], new Member[size]};
        for (int i = 0; i < size && going(); i++) {
            latest.sample(random, child);
            population[0][i] = made(0, new Member(count));
        }
        int direction = 0;
        while (going()) {
            Member[] parents = population[direction];
            Member[] children = population[1 - direction];
            for (int i = 0; i < size && going(); i++) {
                Member father = parents[i];
                Member mother = tournament(parents, i);
                if (random.nextBoolean()) {
                    Member other = father;
                    father = mother;
                    mother = other;
                }
                cross(father, mother);
                mutate(father.value == mother.value ? ALIKE : PLAIN);
                Member made = made(1 - direction, spare);
                Member old = children[i];
                if (old == null) {
                    children[i] = made;
                    spare = new Member(count);
                } else if (made.value <= old.value || random.nextDouble() < WORSE) {
                    children[i] = made;
                    spare = old;
                }
            }
            direction = 1 - direction;
        }
        // built once more in the order of its first days: nothing starts later, some may start earlier
        int[] starts = new int[count];
        byBegin(best);
        builder[0].build(child, starts);
        return starts;
    }

    private boolean going() {
        return left > 0 && bestValue > bound;
    }

    private Member tournament(Member[] parents, int not) {
        Member one = parents[other(not)];
        Member two = parents[other(not)];
        return two.value < one.value ? two : one;
    }

    private int other(int not) {
        int i = random.nextInt(size - 1);
        return i < not ? i : i + 1;
    }

    /** Builds {@link #child} in a direction. */
    private Member made(int direction, Member into) {
        left--;
        into.end = builder[direction].build(child, into.begin);
        for (int t = 0; t < count; t++) {
            landing[t] = direction == 0 ? into.begin[t] + work.days()[t] : into.end - into.begin[t];
        }
        into.value = measure.applyAsDouble(landing);
        if (into.value < bestValue) {
            bestValue = into.value;
            best = new int[count];
            for (int t = 0; t < count; t++) {
                best[t] = landing[t] - work.days()[t];
            }
        }
        list(into.begin, direction, into.list);
        return into;
    }

    /** Tasks by their ends in a direction, the last first: what the other direction builds from. */
    private void list(int[] begin, int direction, int[] list) {
        for (int t = 0; t < count; t++) {
            int tie = direction == 0 ? placeInSorted[t] : count - 1 - placeInSorted[t];
            key[t] = ((long) (begin[t] + work.days()[t]) << 42) | ((long) begin[t] << 21) | tie;
        }
        Arrays.sort(key);
        for (int i = 0; i < count; i++) {
            int tie = (int) (key[count - 1 - i] & (1 << 21) - 1);
            list[i] = sorted[direction == 0 ? tie : count - 1 - tie];
        }
    }

    /** Sets {@link #child} to the tasks by first days. */
    private void byBegin(int[] begin) {
        for (int t = 0; t < count; t++) {
            key[t] = ((long) begin[t] << 42) | ((long) (begin[t] + work.days()[t]) << 21) | placeInSorted[t];
        }
        Arrays.sort(key);
        for (int i = 0; i < count; i++) {
            child[i] = sorted[(int) (key[i] & (1 << 21) - 1)];
        }
    }

    /** The father's busiest stretch of a random length stays in his order; what comes before and after it stands in the mother's. */
    private void cross(Member father, Member mother) {
        int end = father.end;
        Arrays.fill(busy, 0, end + 1, 0);
        for (int t = 0; t < count; t++) {
            double weight = 0;
            for (int q = 0; q < work.quantity().length; q++) {
                if (work.need()[q][t] > 0) {
                    weight += (double) work.need()[q][t] / work.quantity()[q];
                }
            }
            busy[father.begin[t]] += weight;
            busy[father.begin[t] + work.days()[t]] -= weight;
        }
        int length = Math.max(1, end / 4 + random.nextInt(Math.max(1, end / 2)));
        double level = 0;
        for (int d = 0; d <= end; d++) {
            level += busy[d];
            busy[d] = level;
        }
        double sum = 0;
        double most = -1;
        int from = 0;
        for (int d = 0; d < end; d++) {
            sum += busy[d];
            if (d >= length) {
                sum -= busy[d - length];
            }
            if (d >= length - 1 && sum > most + 1e-9) {
                most = sum;
                from = d - length + 1;
            }
        }
        int to = from + length;
        int first = 0;
        int middle = 0;
        for (int t = 0; t < count; t++) {
            int over = father.begin[t] + work.days()[t];
            place[t] = over > to ? 0 : over > from ? 1 : 2;
            first += over > to ? 1 : 0;
            middle += over > from && over <= to ? 1 : 0;
        }
        int a = 0;
        int b = first;
        int c = first + middle;
        for (int i = 0; i < count; i++) {
            int t = mother.list[i];
            if (place[t] == 0) {
                child[a++] = t;
            } else if (place[t] == 2) {
                child[c++] = t;
            }
            if (place[father.list[i]] == 1) {
                child[b++] = father.list[i];
            }
        }
    }

    /** Neighbours in the list that no link joins change places, each with the same chance. */
    private void mutate(double chance) {
        for (int i = 0; i + 1 < count; i++) {
            if (random.nextDouble() < chance && !linked[child[i]][child[i + 1]]) {
                int t = child[i];
                child[i] = child[i + 1];
                child[i + 1] = t;
            }
        }
    }
}
