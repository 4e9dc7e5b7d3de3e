package weekwright.engine.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.simulate.Dispatch;
import weekwright.engine.simulate.Setup;

/**
 * Finds the order of work: priority rules, then regret-biased random sampling around the best of them (Drexl 1991; Kolisch &amp; Drexl
 * 1996, Naval Research Logistics 43:23-40), each judged by the daily dispatch with expected values.
 */
public final class Planner {
    /** A new list replaces the kept one only if it betters the objective by more than this share (rule 52). */
    private static final double WORTH = 0.01;

    private final Setup setup;
    private final Dispatch dispatch;
    private final Dispatch.Network network;
    private final int[] noHolds;
    private int[] best;
    private double[] bestValue;
    private double objective = Double.POSITIVE_INFINITY;

    private Planner(Setup setup) {
        this.setup = setup;
        dispatch = new Dispatch(setup);
        network = dispatch.network();
        noHolds = dispatch.noHolds();
    }

    /**
     * The best order found among the kept one, priority rules and {@code passes} seeded samples, judged by the dispatch with
     * expected values (rules 52, 54, 55). Deterministic in its arguments.
     *
     * @param passes random samples beside the priority rules; 0 is allowed
     * @throws IllegalArgumentException if the links form a cycle; the message names its task ids
     */
    public static Plan plan(Inputs inputs, long seed, int passes) {
        return plan(new Setup(inputs), seed, passes);
    }

    /** As {@link #plan(Inputs, long, int)}, for inputs that have been read already. */
    public static Plan plan(Setup setup, long seed, int passes) {
        return new Planner(setup).search(seed, passes);
    }

    /** The plan that an order and its holds come to; nothing is searched. */
    public static Plan follow(Setup setup, Inputs.Kept order) {
        Planner planner = new Planner(setup);
        planner.rules();
        int[] rank = planner.completed(order.ranks());
        return planner.result(rank, order.notBefore(), true);
    }

    private Plan search(long seed, int passes) {
        rules();
        SplittableRandom random = new SplittableRandom(seed);
        for (int pass = 0; pass < passes; pass++) {
            attempt(sample(random), null);
        }
        Inputs.Kept kept = setup.inputs().kept();
        if (!kept.ranks().isEmpty()) {
            int[] old = completed(kept.ranks());
            double oldObjective = dispatch.run(old, holds(kept.notBefore()));
            if (objective >= oldObjective * (1 - WORTH)) {
                return result(old, kept.notBefore(), true);
            }
        }
        return result(best, List.of(), false);
    }

    private void rules() {
        for (double[] value : new PriorityRules(network, setup.inputs().stages()).all()) {
            attempt(sorted(value), value);
        }
    }

    private void attempt(int[] rank, double[] value) {
        double reached = dispatch.run(rank, noHolds);
        if (reached < objective) {
            objective = reached;
            best = rank;
            if (value != null) {
                bestValue = value;
            }
        }
    }

    private int[] sorted(double[] value) {
        int[] list = IntStream.range(0, value.length)
                .boxed()
                .sorted(Comparator.comparingDouble(t -> value[t]))
                .mapToInt(Integer::intValue)
                .toArray();
        return positions(list);
    }

    /** Places in a list; the unlisted tasks of rough stages, which no plan names, stand at its end. */
    private int[] positions(int[] list) {
        int listed = setup.inputs().tasks().size();
        int[] rank = new int[list.length];
        int i = 0;
        for (int t : list) {
            rank[t] = t < listed ? i++ : t;
        }
        return rank;
    }

    /**
     * A list drawn task by task from those whose predecessors stand in it: with regret r = largest place - own place the chance is
     * (r + 1)² / Σ (r + 1)².
     */
    private int[] sample(SplittableRandom random) {
        int n = network.id().length;
        int[] open = new int[n];
        for (int to : network.to()) {
            open[to]++;
        }
        double[] place = new double[n];
        int[] rank = sorted(bestValue);
        for (int t = 0; t < n; t++) {
            place[t] = rank[t];
        }
        List<Integer> eligible = new ArrayList<>();
        for (int t = 0; t < n; t++) {
            if (open[t] == 0) {
                eligible.add(t);
            }
        }
        int[] list = new int[n];
        for (int i = 0; i < n; i++) {
            double most = eligible.stream().mapToDouble(t -> place[t]).max().orElseThrow();
            double[] chance = eligible.stream()
                    .mapToDouble(t -> (most - place[t] + 1) * (most - place[t] + 1))
                    .toArray();
            double u = random.nextDouble() * java.util.Arrays.stream(chance).sum();
            int k = 0;
            while (k < chance.length - 1 && u >= chance[k]) {
                u -= chance[k++];
            }
            int t = eligible.remove(k);
            list[i] = t;
            for (int l = 0; l < network.from().length; l++) {
                if (network.from()[l] == t && --open[network.to()[l]] == 0) {
                    eligible.add(network.to()[l]);
                }
            }
        }
        return positions(list);
    }

    /** The kept list with new tasks put in by the best rule: before the first kept one that the rule places after it. */
    private int[] completed(List<String> kept) {
        int n = network.id().length;
        List<String> ids = List.of(network.id());
        List<Integer> list = new ArrayList<>(
                kept.stream().map(ids::indexOf).filter(t -> t >= 0).distinct().toList());
        int[] byRule = sorted(bestValue);
        int[] rule = new int[n];
        for (int t = 0; t < n; t++) {
            rule[byRule[t]] = t;
        }
        for (int t : rule) {
            if (!list.contains(t)) {
                int at = 0;
                while (at < list.size() && byRule[list.get(at)] < byRule[t]) {
                    at++;
                }
                list.add(at, t);
            }
        }
        return positions(list.stream().mapToInt(Integer::intValue).toArray());
    }

    private int[] holds(List<Inputs.NotBefore> notBefore) {
        int[] days = noHolds.clone();
        List<String> ids = List.of(network.id());
        for (Inputs.NotBefore hold : notBefore) {
            int t = ids.indexOf(hold.task());
            if (t >= 0) {
                days[t] = hold.day() - setup.inputs().asOf();
            }
        }
        return days;
    }

    private Plan result(int[] rank, List<Inputs.NotBefore> notBefore, boolean kept) {
        double reached = dispatch.run(rank, holds(notBefore));
        int[] start = dispatch.start();
        int[] landing = dispatch.landing();
        int listed = setup.inputs().tasks().size();
        int asOf = setup.inputs().asOf();
        List<String> ranks = IntStream.range(0, rank.length)
                .boxed()
                .sorted(Comparator.comparingInt(t -> rank[t]))
                .filter(t -> t < listed && open(t))
                .map(t -> network.id()[t])
                .toList();
        return new Plan(ranks, notBefore, dates(start, listed, asOf), dates(landing, listed, asOf), reached, kept);
    }

    private boolean open(int t) {
        Inputs.Task task = setup.inputs().tasks().get(t);
        return (task.done() == Inputs.NONE || task.done() > setup.inputs().asOf())
                && (task.dropped() == Inputs.NONE
                        || task.dropped() > setup.inputs().asOf());
    }

    private static List<Integer> dates(int[] days, int listed, int asOf) {
        return IntStream.range(0, listed)
                .map(t -> days[t] == Outcome.LATER ? Outcome.LATER : days[t] + asOf)
                .boxed()
                .toList();
    }
}
