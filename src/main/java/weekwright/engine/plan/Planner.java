package weekwright.engine.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.simulate.Dispatch;
import weekwright.engine.simulate.FixedWork;
import weekwright.engine.simulate.Setup;

/**
 * Finds the order of work: priority rules, then a seeded search from the best of them or from the kept order, whichever is better,
 * each order judged by the daily dispatch with expected values. A project of nothing but fixed days is searched by {@link TwoWaySearch} on its own builders, and what it finds goes
 * to the dispatch as ranks and not-before days; any other by {@link OrderSearch} through the dispatch itself.
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
     * @param passes orders tried beside the priority rules; 0 is allowed. Passes alone bound the search, never time: the same are tried
     *     on a slow machine
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
        Inputs.Kept kept = setup.inputs().kept();
        Optional<int[]> old = kept.ranks().isEmpty() ? Optional.empty() : Optional.of(completed(kept.ranks()));
        double oldObjective =
                old.map(rank -> dispatch.run(rank, holds(kept.notBefore()))).orElse(Double.POSITIVE_INFINITY);
        List<Inputs.NotBefore> notBefore = List.of();
        Optional<FixedWork> fixed = dispatch.fixedWork();
        if (passes > 0 && fixed.isPresent()) {
            notBefore = searchFixed(fixed.get(), seed, passes);
        } else if (passes > 0) {
            // what was found before is searched on: each forecast's search begins where the last one's ended
            old.ifPresent(rank -> attempt(rank, null));
            searchOrders(seed, passes);
        }
        if (old.isPresent() && objective >= oldObjective * (1 - WORTH)) {
            return result(old.get(), kept.notBefore(), true);
        }
        return result(best, notBefore, false);
    }

    private void rules() {
        for (double[] value : new PriorityRules(network, setup.inputs().stages()).all()) {
            attempt(sorted(value), value);
        }
    }

    private double attempt(int[] rank, double[] value) {
        double reached = dispatch.run(rank, noHolds);
        if (reached < objective) {
            objective = reached;
            best = rank;
            if (value != null) {
                bestValue = value;
            }
        }
        return reached;
    }

    private int[] sorted(double[] value) {
        int[] list = IntStream.range(0, value.length)
                .boxed()
                .sorted(Comparator.comparingDouble(t -> value[t]))
                .mapToInt(Integer::intValue)
                .toArray();
        return positions(list);
    }

    /** Places in a list; the unlisted tasks, which no plan names, stand at its end until the dispatch puts them in their stage. */
    private int[] positions(int[] list) {
        int listed = setup.inputs().tasks().size();
        int[] rank = new int[list.length];
        int i = 0;
        for (int t : list) {
            rank[t] = t < listed ? i++ : t;
        }
        return rank;
    }

    private void searchOrders(long seed, int passes) {
        int listed = setup.inputs().tasks().size();
        int[] first = IntStream.of(PriorityRules.keepingLinks(network, best))
                .filter(t -> t < listed && open(t))
                .toArray();
        // other moves on each day, so that what one day's search does not find another's may
        new OrderSearch(network, seed + setup.inputs().asOf())
                .run(first, objective, list -> attempt(ranksOf(list), null), passes);
    }

    /** Ranks of a list of open tasks; all others stand behind them. */
    private int[] ranksOf(int[] list) {
        int[] rank = new int[network.id().length];
        Arrays.fill(rank, rank.length);
        for (int i = 0; i < list.length; i++) {
            rank[list[i]] = i;
        }
        return rank;
    }

    /** The days before which tasks are not to begin in the best schedule, if it is better than what the rules came to. */
    private List<Inputs.NotBefore> searchFixed(FixedWork work, long seed, int passes) {
        int[] start = new TwoWaySearch(work, network.order(), dispatch::objective, seed, passes).run();
        int[] early = new int[start.length];
        for (int l = 0; l < work.from().length; l++) {
            int before = work.from()[l];
            early[work.to()[l]] =
                    Math.max(early[work.to()[l]], start[before] + work.days()[before] + work.waitDays()[l]);
        }
        int[] rank = sorted(IntStream.of(start).asDoubleStream().toArray());
        int[] days = noHolds.clone();
        List<Inputs.NotBefore> notBefore = new ArrayList<>();
        for (int t = 0; t < start.length; t++) {
            if (start[t] > early[t]) {
                days[t] = start[t];
                notBefore.add(
                        new Inputs.NotBefore(network.id()[t], setup.inputs().asOf() + start[t]));
            }
        }
        attempt(rank, null);
        double held = dispatch.run(rank, days);
        if (held >= objective) {
            return List.of();
        }
        objective = held;
        best = rank;
        return notBefore;
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
