package weekwright.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
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
 * Adds and changes many tasks of one stage, all or none. Rows may follow each other, new ones too. A link that stands keeps
 * its share and its wait.
 */
public final class SaveTasks {
    private SaveTasks() {}

    /**
     * One row.
     *
     * @param number stands behind the column in its faults: {@code likely.3}
     * @param shown the row that is changed; empty adds
     * @param task its id stands only where it is changed
     * @param after tasks that it follows
     * @param afterRows numbers of rows that it follows
     */
    public record Row(int number, Optional<Shown> shown, Task task, List<Id> after, Set<Integer> afterRows) {}

    /** What was done, and what was odd but possible. */
    public record Saved(int added, int changed, List<Problem> remarks) {}

    /** @param today in the project's zone */
    public static Saved save(Write write, List<Row> rows, LocalDate today) throws Rejected {
        List<Problem> faults = new ArrayList<>();
        List<Problem> remarks = new ArrayList<>();
        Map<Integer, Stored<Task>> kept = new HashMap<>();
        int added = 0;
        for (Row row : rows) {
            Task task = row.shown().isPresent()
                    ? row.task()
                    : TaskStore.TABLE
                            .shape()
                            .with(
                                    row.task(),
                                    "id",
                                    TaskStore.nextId(write, row.task().stage()));
            added += row.shown().isPresent() ? 0 : 1;
            List<Link> standing = row.shown().isPresent() ? standing(write, task, row.after()) : List.of();
            save(write, row, row.shown(), task, standing, today, faults, remarks)
                    .ifPresent(stored -> kept.put(row.number(), stored));
        }
        if (faults.isEmpty()) {
            link(write, rows, kept, faults);
        }
        if (!faults.isEmpty()) {
            throw new Rejected(faults);
        }
        return new Saved(added, rows.size() - added, remarks);
    }

    /** Sets the links of all rows, then looks once for rings. */
    private static void link(Write write, List<Row> rows, Map<Integer, Stored<Task>> kept, List<Problem> faults) {
        for (Row row : rows) {
            Task task = kept.get(row.number()).value();
            Problems problems = new Problems();
            List<Link> links = links(write, row, task, kept);
            for (Link link : links) {
                LinkRules.check(link, problems);
                References.check(write, LinkStore.TABLE.shape(), link, problems);
            }
            if (problems.hasFaults()) {
                problems.faults().forEach(p -> faults.add(at(row, p)));
                continue;
            }
            try {
                SaveTask.setLinks(write, task.id(), links);
            } catch (Stale stale) {
                throw new IllegalStateException(
                        "a link read in the same transaction changed: task " + task.id(), stale);
            }
        }
        for (List<Id> ring : LinkRules.rings(LinkStore.TABLE.values(write))) {
            rows.stream()
                    .filter(row -> ring.contains(kept.get(row.number()).value().id()))
                    .findFirst()
                    .ifPresent(row -> faults.add(
                            at(row, SaveTask.ring(write, kept.get(row.number()).value(), ring))));
        }
    }

    private static List<Link> links(Write write, Row row, Task task, Map<Integer, Stored<Task>> kept) {
        Set<String> seen = new HashSet<>();
        List<Id> after = new ArrayList<>(row.after());
        row.afterRows().forEach(number -> after.add(kept.get(number).value().id()));
        after.removeIf(id -> !seen.add(id.folded()));
        List<Link> links = standing(write, task, after);
        links.forEach(link -> seen.remove(link.after().folded()));
        after.stream()
                .filter(id -> seen.contains(id.folded()))
                .map(id ->
                        new Link(task.id(), id, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()))
                .forEach(links::add);
        return links;
    }

    /** The links of a task that stand to some of these. */
    private static List<Link> standing(Write write, Task task, List<Id> after) {
        Set<String> wanted = new HashSet<>();
        after.forEach(id -> wanted.add(id.folded()));
        return new ArrayList<>(LinkStore.before(write, task.id()).stream()
                .map(Stored::value)
                .filter(link -> wanted.contains(link.after().folded()))
                .toList());
    }

    private static Optional<Stored<Task>> save(
            Write write,
            Row row,
            Optional<Shown> shown,
            Task task,
            List<Link> links,
            LocalDate today,
            List<Problem> faults,
            List<Problem> remarks) {
        try {
            SaveTask.Saved saved = SaveTask.save(write, shown, task, links, today);
            remarks.addAll(saved.remarks());
            return Optional.of(saved.task());
        } catch (Rejected rejected) {
            rejected.problems().forEach(p -> faults.add(at(row, p)));
        } catch (Stale stale) {
            Problems problems = new Problems();
            if (stale.now().isPresent()) {
                problems.fault(
                        "title",
                        task.title(),
                        "was changed by somebody else since this table was opened",
                        "load the page again for their version");
            } else {
                problems.fault("title", task.title(), "was removed by somebody else meanwhile", "empty the row");
            }
            problems.list().forEach(p -> faults.add(at(row, p)));
        }
        return Optional.empty();
    }

    private static Problem at(Row row, Problem p) {
        return Problem.fault(
                p.column().isEmpty() ? "" : p.column() + "." + row.number(), p.read(), p.rule(), p.remedy());
    }
}
