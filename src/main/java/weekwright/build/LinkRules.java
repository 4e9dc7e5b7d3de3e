package weekwright.build;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.RowRules;

/** What must hold within one link, and the ring that links must not make. */
public final class LinkRules {
    private LinkRules() {}

    public static void check(Link link, Problems problems) {
        if (link.task().same(link.after())) {
            problems.fault("after", link.after().value(), "is the task itself", "name the task that comes before it");
        }
        RowRules.rising("wait_", link.waitLow(), link.waitLikely(), link.waitHigh(), problems);
    }

    /**
     * One ring of tasks that wait for each other in a circle, in the order of the work, its first task repeated at its
     * end; empty where there is none (rule 36). Walks without recursion, so that a ring of any length is told. Time
     * grows with the number of links.
     */
    public static Optional<List<Id>> ring(List<Link> links) {
        return rings(links).stream().findFirst();
    }

    /**
     * Rings that have no task in common, each as in {@link #ring}: a ring through each knot of links, found one after
     * the other with the knot's tasks then left out. A task after itself is not among them.
     */
    public static List<List<Id>> rings(List<Link> links) {
        Map<String, List<Link>> following = new LinkedHashMap<>();
        for (Link link : links) {
            if (!link.task().same(link.after())) {
                following
                        .computeIfAbsent(link.after().folded(), k -> new ArrayList<>())
                        .add(link);
            }
        }
        List<List<Id>> rings = new ArrayList<>();
        Map<String, Integer> finished = new HashMap<>();
        for (String start : following.keySet()) {
            if (!finished.containsKey(start)) {
                walk(start, following, finished, rings);
            }
        }
        return rings;
    }

    /** Depth first from one task; a task is 1 while on the path, 2 when all behind it was walked. */
    private static void walk(
            String start, Map<String, List<Link>> following, Map<String, Integer> state, List<List<Id>> rings) {
        List<Link> path = new ArrayList<>();
        List<Iterator<Link>> open = new ArrayList<>();
        state.put(start, 1);
        open.add(following.get(start).iterator());
        while (!open.isEmpty()) {
            var next = open.get(open.size() - 1);
            if (!next.hasNext()) {
                open.remove(open.size() - 1);
                state.put(
                        path.isEmpty()
                                ? start
                                : path.remove(path.size() - 1).task().folded(),
                        2);
                continue;
            }
            Link link = next.next();
            Integer seen = state.get(link.task().folded());
            if (seen == null) {
                state.put(link.task().folded(), 1);
                path.add(link);
                open.add(following.getOrDefault(link.task().folded(), List.of()).iterator());
            } else if (seen == 1) {
                List<Id> ring = ringOf(link, path);
                if (Collections.disjoint(rings.stream().flatMap(List::stream).toList(), ring)) {
                    rings.add(ring);
                }
            }
        }
    }

    private static List<Id> ringOf(Link closing, List<Link> path) {
        List<Id> ring = new ArrayList<>();
        ring.add(closing.task());
        ring.add(closing.after());
        for (int i = path.size() - 1; i >= 0 && !ring.get(ring.size() - 1).same(closing.task()); i--) {
            ring.add(path.get(i).after());
        }
        Collections.reverse(ring);
        return ring;
    }

    /** {@code a → b → a}. */
    public static String written(List<Id> ring) {
        return ring.stream().map(Id::value).collect(Collectors.joining(" → "));
    }
}
