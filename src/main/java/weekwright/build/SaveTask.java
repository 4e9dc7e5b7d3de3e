package weekwright.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
    private static final int RING_ENDS = 10;

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
        Task whole = TaskRules.onWholeMinutes(task, problems);
        TaskRules.check(whole, problems);
        DateRules.check(
                TaskStore.TABLE.shape(),
                whole,
                SettingsStore.get(write).project().started(),
                problems);
        links.forEach(link -> LinkRules.check(link, problems));
        References.check(write, TaskStore.TABLE.shape(), whole, problems);
        checkHazards(write, whole, problems);
        checkEquipment(write, task, problems);
        checkLinks(write, task, links, problems);
        Faults.refuse(problems);
        Task dated = shown.isEmpty() && task.added().isEmpty()
                ? TaskStore.TABLE.shape().with(whole, "added", Optional.of(today))
                : whole;
        Stored<Task> kept = shown.isPresent()
                ? TaskStore.TABLE.update(write, shown.get().row(), shown.get().version(), dated)
                : TaskStore.TABLE.insert(write, dated);
        setLinks(write, task.id(), links);
        return new Saved(kept, problems.remarks());
    }

    private static void checkEquipment(Write write, Task task, Problems problems) {
        EquipmentNeeds.of(task).counts().forEach((id, count) -> {
            Optional<Equipment> found = EquipmentStore.TABLE.find(write, id).map(Stored::value);
            if (found.isEmpty()) {
                problems.fault("equipment", id.value(), "is no equipment of this project", "choose one of the list");
            } else if (found.get().quantityOrDefault() < count) {
                problems.remark(
                        "equipment",
                        found.get().name(),
                        "is there " + found.get().quantityOrDefault() + " times and wanted " + count
                                + " times, so the task never starts",
                        "");
            }
        });
    }

    /** The hazards of its equipment are a task's own too, so they decide about its company with it. */
    private static void checkHazards(Write write, Task task, Problems problems) {
        Set<String> all = TaskHazards.of(write, task);
        if (all.size() > task.hazards().list().size()
                && problems.list().stream().noneMatch(p -> p.column().equals("company_reason"))) {
            TaskRules.company(task, all, problems);
        }
    }

    private static void checkLinks(Write write, Task task, List<Link> links, Problems problems) {
        Set<String> seen = new HashSet<>();
        boolean whole = true;
        for (Link link : links) {
            Optional<Task> after = TaskStore.TABLE.find(write, link.after()).map(Stored::value);
            String title = after.map(Task::title).orElse(link.after().value());
            if (link.after().same(task.id())) {
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
        // a task that follows nothing closes no ring
        if (whole && !links.isEmpty()) {
            checkRing(write, task, links, problems);
        }
    }

    private static void checkRing(Write write, Task task, List<Link> links, Problems problems) {
        List<Link> all = new ArrayList<>(links);
        LinkStore.TABLE.values(write).stream()
                .filter(link -> !link.task().same(task.id()))
                .forEach(all::add);
        LinkRules.ring(all).ifPresent(ring -> problems.add(ring(write, task, ring)));
    }

    /** The fault of a ring of links, told from this task on (rule 36). */
    static Problem ring(Write write, Task task, List<Id> ring) {
        return Problem.fault(
                "after",
                "",
                written(write, task, ring) + " is a ring: each waits for the one before it",
                "take one of these links out");
    }

    /** The titles of a ring from this task on; of a very long one its two ends. */
    private static String written(Write write, Task task, List<Id> ring) {
        List<String> titles = new ArrayList<>();
        int start = 0;
        for (int i = 0; i + 1 < ring.size(); i++) {
            boolean own = ring.get(i).same(task.id());
            start = own ? i : start;
            titles.add(
                    own
                            ? task.title()
                            : TaskStore.TABLE
                                    .find(write, ring.get(i))
                                    .orElseThrow()
                                    .value()
                                    .title());
        }
        Collections.rotate(titles, -start);
        titles.add(titles.get(0));
        int left = titles.size() - 2 * RING_ENDS;
        if (left > 1) {
            titles.subList(RING_ENDS, RING_ENDS + left).clear();
            titles.add(RING_ENDS, "… " + left + " more …");
        }
        return String.join(" → ", titles);
    }

    /** Makes these the links of a task; those that stand and are not among them are taken away. */
    static void setLinks(Write write, Id task, List<Link> links) throws Stale {
        List<Link> fresh = new ArrayList<>(links);
        for (Stored<Link> old : LinkStore.before(write, task)) {
            Optional<Link> same = links.stream()
                    .filter(link -> link.after().same(old.value().after()))
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
