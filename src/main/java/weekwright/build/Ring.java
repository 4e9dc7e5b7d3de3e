package weekwright.build;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Id;

/** A ring among links, by which a task would have to wait for itself. */
public final class Ring {
    private Ring() {}

    /**
     * The shortest ring through one task in the order of the work: the task, what follows it …, the task again. Breadth first,
     * in time and memory linear in the links; no recursion, so that a ring of thousands is found as well.
     */
    public static Optional<List<Id>> through(Id task, Collection<Link> links) {
        Map<String, List<Id>> follows = new HashMap<>();
        for (Link link : links) {
            follows.computeIfAbsent(link.task().folded(), t -> new ArrayList<>())
                    .add(link.after());
        }
        Map<String, Id> cameFrom = new HashMap<>();
        Set<String> seen = new HashSet<>();
        Deque<Id> queue = new ArrayDeque<>(List.of(task));
        while (!queue.isEmpty()) {
            Id at = queue.remove();
            for (Id next : follows.getOrDefault(at.folded(), List.of())) {
                if (next.folded().equals(task.folded())) {
                    return Optional.of(written(task, at, cameFrom));
                }
                if (seen.add(next.folded())) {
                    cameFrom.put(next.folded(), at);
                    queue.add(next);
                }
            }
        }
        return Optional.empty();
    }

    private static List<Id> written(Id task, Id last, Map<String, Id> cameFrom) {
        List<Id> ring = new ArrayList<>(List.of(task));
        for (Id at = last; !at.folded().equals(task.folded()); at = cameFrom.get(at.folded())) {
            ring.add(at);
        }
        ring.add(task);
        return List.copyOf(ring);
    }
}
