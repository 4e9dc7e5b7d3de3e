package weekwright.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.base.Quantity;
import weekwright.db.Read;
import weekwright.db.Stored;

/**
 * What still stands before a task. A link is met when what it names is done or dropped; one that asks for a share only,
 * when that has begun.
 */
public final class UnmetLinks {
    private UnmetLinks() {}

    public static List<Task> of(Read read, Task task) {
        List<Task> unmet = new ArrayList<>();
        for (Stored<Link> link : LinkStore.before(read, task.id())) {
            Optional<Task> after =
                    TaskStore.TABLE.find(read, link.value().after()).map(Stored::value);
            boolean part = link.value()
                    .share()
                    .map(share -> share.compareTo(Quantity.ONE) < 0)
                    .orElse(false);
            if (after.isPresent()
                    && after.get().isOpen()
                    && !(part && after.get().started().isPresent())) {
                unmet.add(after.get());
            }
        }
        return unmet;
    }

    /** One fault that names all of them, or none. */
    static List<Problem> faults(Read read, Task task, String act) {
        List<String> titles = of(read, task).stream().map(Task::title).toList();
        if (titles.isEmpty()) {
            return List.of();
        }
        return List.of(Problem.fault(
                "",
                task.title(),
                "cannot " + act + " before what it follows: " + Said.list(titles)
                        + (titles.size() == 1 ? " is" : " are") + " not done",
                "mark that done first" + (task.isWork() ? ", or log the hours worked on this" : "")));
    }
}
