package weekwright.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Says that several tasks are done, all on one day, or none of them; what follows another of them comes after it. */
public final class CloseTasks {
    private CloseTasks() {}

    /**
     * @param today in the project's zone
     * @return what was odd but possible
     * @throws Rejected with the faults of all of them
     */
    public static List<Problem> close(Write write, List<Stored<Task>> tasks, LocalDate day, LocalDate today)
            throws Rejected, Stale {
        Set<Problem> faults = new LinkedHashSet<>();
        List<Problem> remarks = new ArrayList<>();
        for (Stored<Task> task : inLinkOrder(write, tasks)) {
            try {
                remarks.addAll(MarkDone.mark(write, Shown.of(task), day, today).remarks());
            } catch (Rejected rejected) {
                faults.addAll(rejected.problems());
            }
        }
        if (!faults.isEmpty()) {
            throw new Rejected(List.copyOf(faults));
        }
        return remarks;
    }

    private static List<Stored<Task>> inLinkOrder(Write write, List<Stored<Task>> tasks) {
        Set<String> waiting = new HashSet<>();
        tasks.forEach(task -> waiting.add(task.value().id().folded()));
        List<Stored<Task>> left = new ArrayList<>(tasks);
        List<Stored<Task>> ordered = new ArrayList<>();
        while (!left.isEmpty()) {
            Stored<Task> next = left.stream()
                    .filter(task -> LinkStore.before(write, task.value().id()).stream()
                            .map(link -> link.value().after())
                            .map(Id::folded)
                            .noneMatch(waiting::contains))
                    .findFirst()
                    .orElse(left.get(0));
            left.remove(next);
            waiting.remove(next.value().id().folded());
            ordered.add(next);
        }
        return ordered;
    }
}
