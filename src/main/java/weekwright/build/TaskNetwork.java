package weekwright.build;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import weekwright.base.Quantity;

/**
 * Tasks and the links among them: an order in which each stands after all that it follows, and the longest way through. Links
 * to other tasks are left out. Cost grows with tasks times links; a stage has some dozens of each.
 */
public final class TaskNetwork {
    private final List<Task> order;
    private final List<Arc> arcs;

    /** A link between two places of the order, {@code from} before {@code to}. */
    public record Arc(int from, int to, Link link) {}

    /**
     * The longest way.
     *
     * @param places of its tasks in the order, from its first to its last
     * @param days from its beginning to its end
     */
    public record Longest(List<Integer> places, double days) {}

    private TaskNetwork(List<Task> order, List<Arc> arcs) {
        this.order = List.copyOf(order);
        this.arcs = List.copyOf(arcs);
    }

    /**
     * @param tasks in stored order, which decides where nothing else does
     * @param links without rings (rule 36)
     */
    public static TaskNetwork of(List<Task> tasks, List<Link> links) {
        Map<String, Task> left = new LinkedHashMap<>();
        tasks.forEach(task -> left.put(task.id().folded(), task));
        List<Link> inside = links.stream()
                .filter(link -> left.containsKey(link.task().folded())
                        && left.containsKey(link.after().folded()))
                .toList();
        List<Task> order = new ArrayList<>();
        Map<String, Integer> places = new HashMap<>();
        while (!left.isEmpty()) {
            Task next = next(left, inside, order);
            left.remove(next.id().folded());
            places.put(next.id().folded(), order.size());
            order.add(next);
        }
        List<Arc> arcs = inside.stream()
                .map(link -> new Arc(
                        places.get(link.after().folded()),
                        places.get(link.task().folded()),
                        link))
                .filter(arc -> arc.from() < arc.to())
                .toList();
        return new TaskNetwork(order, arcs);
    }

    /** What follows the task placed last, if it is free to come, else the first that is. */
    private static Task next(Map<String, Task> left, List<Link> links, List<Task> order) {
        List<Task> free = left.values().stream()
                .filter(task -> links.stream()
                        .noneMatch(link -> link.task().same(task.id())
                                && left.containsKey(link.after().folded())))
                .toList();
        if (free.isEmpty()) {
            return left.values().iterator().next();
        }
        String last = order.isEmpty() ? "" : order.get(order.size() - 1).id().folded();
        return free.stream()
                .filter(task -> links.stream()
                        .anyMatch(link -> link.task().same(task.id())
                                && link.after().folded().equals(last)))
                .findFirst()
                .orElse(free.get(0));
    }

    public List<Task> order() {
        return order;
    }

    public List<Arc> arcs() {
        return arcs;
    }

    /**
     * The chain of links that takes longest: each task begins when the shares it waits for are done and the waits over. Of two
     * as long the one that comes first in the order; empty without tasks.
     *
     * @param days that a task takes, 0 or more
     */
    public Longest longest(ToDoubleFunction<Task> days) {
        double[] start = new double[order.size()];
        int[] before = new int[order.size()];
        int last = -1;
        double end = -1;
        for (int place = 0; place < order.size(); place++) {
            before[place] = -1;
            for (Arc arc : arcs) {
                if (arc.to() == place) {
                    double share = number(arc.link().share(), 1);
                    double at = start[arc.from()]
                            + share * days.applyAsDouble(order.get(arc.from()))
                            + number(arc.link().waitLikely(), 0);
                    if (before[place] < 0 || at > start[place]) {
                        start[place] = at;
                        before[place] = arc.from();
                    }
                }
            }
            double done = start[place] + days.applyAsDouble(order.get(place));
            if (done > end) {
                end = done;
                last = place;
            }
        }
        List<Integer> places = new ArrayList<>();
        for (int place = last; place >= 0; place = before[place]) {
            places.add(place);
        }
        Collections.reverse(places);
        return new Longest(places, Math.max(0, end));
    }

    private static double number(Optional<Quantity> quantity, double nothing) {
        return quantity.map(Quantity::doubleValue).orElse(nothing);
    }
}
