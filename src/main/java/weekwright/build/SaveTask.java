package weekwright.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * Adds a task or changes one, together with what it follows. A ring of links is refused with the ring written out; the
 * day on which a task was added is set by itself.
 */
public final class SaveTask {
    private SaveTask() {}

    /** A task as it was kept, and what was odd but possible. */
    public record Saved(Stored<Task> task, List<Problem> remarks) {}

    /**
     * @param shown the row that is changed; empty adds
     * @param links all links whose {@code task} is this task; those that stand and are not among them are taken away
     * @param today in the project's zone
     */
    public static Saved save(Write write, Optional<Shown> shown, Task task, List<Link> links, LocalDate today)
            throws Rejected, Stale {
        Problems problems = new Problems();
        References.check(write, TaskStore.TABLE.shape(), task, problems);
        checkEquipment(write, task, problems);
        checkLinks(write, task, links, problems);
        Rejected.ifFaults(problems);
        Task dated = shown.isEmpty() && task.added().isEmpty()
                ? TaskStore.TABLE.shape().with(task, "added", Optional.of(today))
                : task;
        Stored<Task> kept = shown.isPresent()
                ? TaskStore.TABLE.update(write, shown.get().row(), shown.get().version(), dated)
                : TaskStore.TABLE.insert(write, dated);
        setLinks(write, task.id(), links);
        return new Saved(kept, problems.remarks());
    }

    private static void checkEquipment(Write write, Task task, Problems problems) {
        for (String need : task.equipment().list()) {
            String id = need.replaceFirst(":.*", "");
            if (id.isEmpty() || EquipmentStore.TABLE.find(write, new Id(id)).isEmpty()) {
                problems.fault("equipment", need, "is no equipment of this project", "choose one of the list");
            }
        }
    }

    private static void checkLinks(Write write, Task task, List<Link> links, Problems problems) {
        Set<String> seen = new HashSet<>();
        boolean whole = true;
        for (Link link : links) {
            Optional<Task> after = TaskStore.TABLE.find(write, link.after()).map(Stored::value);
            String title = after.map(Task::title).orElse(link.after().value());
            if (link.after().folded().equals(task.id().folded())) {
                problems.fault("after", task.title(), "cannot follow itself", "choose another task");
                whole = false;
            } else if (after.isEmpty()) {
                problems.fault("after", title, "is no task of this project", "choose one of the tasks");
                whole = false;
            } else if (!seen.add(link.after().folded())) {
                problems.fault("after", title, "is named twice", "name each task once");
                whole = false;
            } else if (after.get().dropped().isPresent()) {
                problems.remark("after", title, "is dropped and holds nothing up", "");
            }
        }
        if (whole) {
            checkRing(write, task, links, problems);
        }
    }

    private static void checkRing(Write write, Task task, List<Link> links, Problems problems) {
        List<Link> all = new ArrayList<>(links);
        LinkStore.TABLE.values(write).stream()
                .filter(link -> !link.task().folded().equals(task.id().folded()))
                .forEach(all::add);
        Ring.through(task.id(), all).ifPresent(ring -> {
            String written = ring.stream()
                    .map(id -> id.folded().equals(task.id().folded())
                            ? task.title()
                            : TaskStore.TABLE
                                    .find(write, id)
                                    .orElseThrow()
                                    .value()
                                    .title())
                    .collect(Collectors.joining(" → "));
            problems.fault(
                    "after",
                    "",
                    written + " is a ring: each waits for the one before it",
                    "take one of these links out");
        });
    }

    private static void setLinks(Write write, Id task, List<Link> links) throws Stale {
        List<Link> fresh = new ArrayList<>(links);
        for (Stored<Link> old : LinkStore.before(write, task)) {
            Optional<Link> same = links.stream()
                    .filter(link ->
                            link.after().folded().equals(old.value().after().folded()))
                    .findFirst();
            if (same.isEmpty()) {
                LinkStore.TABLE.delete(write, old.row(), old.version());
            } else {
                fresh.remove(same.get());
                if (!same.get().equals(old.value())) {
                    LinkStore.TABLE.update(write, old.row(), old.version(), same.get());
                }
            }
        }
        for (Link link : fresh) {
            LinkStore.TABLE.insert(write, link);
        }
    }
}
