package weekwright.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rows;

/** The rules over many rows of the build: what cannot be is a fault, what is odd but possible a remark. */
public final class BuildRules {
    private final BuildRows rows;
    private final Problems problems;
    private final Map<Id, Task> tasks;
    private final Map<Id, CrewMember> crew;
    private final Map<Id, Equipment> equipment;

    private BuildRules(BuildRows rows, Problems problems) {
        this.rows = rows;
        this.problems = problems;
        tasks = rows.tasks().by(Task::id);
        crew = rows.crew().by(CrewMember::id);
        equipment = rows.equipment().by(Equipment::id);
    }

    /**
     * Checks all rows together. Ids that are not known are no matter of this.
     *
     * @param today from which on the next 12 months are looked at for people who can do the open tasks
     */
    public static void check(BuildRows rows, LocalDate today, Problems problems) {
        BuildRules rules = new BuildRules(rows, problems);
        rules.rings();
        rules.links();
        rules.days();
        rules.hoursOfTasks();
        rules.tasks(today);
        rules.week(today);
    }

    /** Rule 36: told at the first link of the ring, which the ring is written from. */
    private void rings() {
        for (List<Id> ring : LinkRules.rings(rows.links().list())) {
            List<Id> once = new ArrayList<>(ring.subList(0, ring.size() - 1));
            for (int i = 0; i < rows.links().size(); i++) {
                Link link = rows.links().get(i);
                int at = once.indexOf(link.after());
                if (at >= 0 && once.get((at + 1) % once.size()).equals(link.task())) {
                    Collections.rotate(once, -at);
                    once.add(once.get(0));
                    rows.links()
                            .fault(
                                    problems,
                                    i,
                                    "after",
                                    link.after().value(),
                                    "closes a ring in which tasks wait for each other: " + LinkRules.written(once),
                                    "take one of its links out");
                    break;
                }
            }
        }
    }

    private void links() {
        rows.links()
                .twice(
                        link -> Optional.of(
                                List.of(link.task().folded(), link.after().folded())),
                        (later, first) -> {
                            Link link = rows.links().get(later);
                            rows.links()
                                    .fault(
                                            problems,
                                            later,
                                            "after",
                                            link.after().value(),
                                            "is linked to " + link.task() + " already in "
                                                    + rows.links().place(first, "another link"),
                                            "keep one of the two");
                        });
        for (int i = 0; i < rows.links().size(); i++) {
            Link link = rows.links().get(i);
            dropped(rows.links(), i, "task", link.task(), "is dropped, so the link holds nothing");
            dropped(rows.links(), i, "after", link.after(), "is dropped, so the link counts as met");
        }
    }

    private <R extends Record> void dropped(Rows<R> of, int index, String column, Id task, String rule) {
        if (tasks.containsKey(task) && tasks.get(task).dropped().isPresent()) {
            of.remark(problems, index, column, task.value(), rule, "take it out if it is not wanted");
        }
    }

    /** At most 24 hours of one person on one day, and a remark above that day's stated hours (rule 105). */
    private void days() {
        record Day(Id crew, LocalDate date) {}
        Map<Day, List<Integer>> days = new LinkedHashMap<>();
        for (int i = 0; i < rows.hours().size(); i++) {
            HoursEntry entry = rows.hours().get(i);
            days.computeIfAbsent(new Day(entry.crew(), entry.date()), day -> new ArrayList<>())
                    .add(i);
        }
        days.forEach((day, indexes) -> {
            List<HoursEntry> entries = indexes.stream().map(rows.hours()::get).toList();
            Problems found = new Problems();
            HoursRules.dayTotal(entries, found);
            CrewMember person = crew.get(day.crew());
            if (person != null) {
                Hours stated = StatedHours.on(
                        day.date(),
                        person,
                        rows.crewHours().list(),
                        rows.daysOff().list());
                HoursRules.overStated(entries, stated, found);
            }
            int last = indexes.get(indexes.size() - 1);
            found.list().forEach(problem -> problems.add(rows.hours().placed(last, problem)));
        });
    }

    private void hoursOfTasks() {
        for (int i = 0; i < rows.hours().size(); i++) {
            HoursEntry entry = rows.hours().get(i);
            Task task = entry.task().map(tasks::get).orElse(null);
            if (task == null) {
                continue;
            }
            String rule = !task.isWork()
                    ? "is a wait, and a wait takes nobody's hours"
                    : after(entry.date(), task.done())
                            ? "was done on " + task.done().get() + ", before these hours"
                            : after(entry.date(), task.dropped())
                                    ? "was dropped on " + task.dropped().get() + ", before these hours"
                                    : "";
            if (!rule.isEmpty()) {
                rows.hours().remark(problems, i, "task", task.id().value(), rule, "");
            }
        }
    }

    private static boolean after(LocalDate date, Optional<LocalDate> bound) {
        return bound.isPresent() && date.isAfter(bound.get());
    }

    private void tasks(LocalDate today) {
        WhoCanDo who = new WhoCanDo(
                rows.crew().list(),
                rows.crewHours().list(),
                rows.daysOff().list(),
                rows.gatherings().list(),
                today);
        for (int i = 0; i < rows.tasks().size(); i++) {
            Task task = rows.tasks().get(i);
            if (!task.isOpen()) {
                continue;
            }
            int index = i;
            Set<String> hazards = EquipmentNeeds.hazards(task, equipment);
            who.whyNot(task, hazards)
                    .ifPresent(problem -> problems.add(rows.tasks().placed(index, problem)));
            tooMuch(i, task);
            if (!hazards.equals(Set.copyOf(task.hazards().list()))) {
                company(i, task, hazards);
            }
        }
    }

    /** Rule 44. */
    private void tooMuch(int index, Task task) {
        EquipmentNeeds.of(task).counts().forEach((id, count) -> {
            Equipment one = equipment.get(id);
            if (one != null && count > one.quantityOrDefault()) {
                rows.tasks()
                        .remark(
                                problems,
                                index,
                                "equipment",
                                id + ":" + count,
                                "is more than the " + one.quantityOrDefault() + " there are, so the task never starts",
                                "change one of the two");
            }
        });
    }

    /** What a machine's hazards ask for is a remark: the machine's row may have been changed long after the task's. */
    private void company(int index, Task task, Set<String> hazards) {
        Problems own = new Problems();
        TaskRules.company(task, task.hazards().list(), own);
        Problems all = new Problems();
        TaskRules.company(task, hazards, all);
        if (!own.hasFaults()) {
            all.list()
                    .forEach(p -> problems.add(
                            rows.tasks().placed(index, Problem.remark(p.column(), p.read(), p.rule(), p.remedy()))));
        }
    }

    /** Lines still to come that put somebody to hazards not for them (rule 125). */
    private void week(LocalDate today) {
        for (int i = 0; i < rows.week().size(); i++) {
            WeekLine line = rows.week().get(i);
            CrewMember person = line.crew().map(crew::get).orElse(null);
            Task task = line.task().map(tasks::get).orElse(null);
            boolean hands = line.kind().orElse(WeekLine.Kind.WORK) == WeekLine.Kind.WORK;
            if (person == null
                    || task == null
                    || !hands
                    || line.done()
                    || line.date().isBefore(today)) {
                continue;
            }
            Problems found = new Problems();
            HoursRules.keptOff(person, EquipmentNeeds.hazards(task, equipment), found);
            int index = i;
            found.list()
                    .forEach(p -> problems.add(
                            rows.week().placed(index, Problem.remark(p.column(), p.read(), p.rule(), p.remedy()))));
        }
    }
}
