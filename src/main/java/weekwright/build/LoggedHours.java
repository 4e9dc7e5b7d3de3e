package weekwright.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * An hours entry as it was kept.
 *
 * @param remarks odd but possible, said and kept: a task that is done, more than the stated hours of the day
 */
public record LoggedHours(Stored<HoursEntry> entry, List<Problem> remarks) {
    /** What an entry has to be besides its own columns. */
    static List<Problem> check(Read read, HoursEntry entry, Optional<Shown> shown, LocalDate today) throws Rejected {
        Problems problems = problems(read, entry, shown, today);
        Faults.refuse(problems);
        return problems.remarks();
    }

    /**
     * Everything that the rules say of an entry.
     *
     * @param shown the row that it changes; empty adds
     * @param today in the project's zone
     */
    public static Problems problems(Read read, HoursEntry entry, Optional<Shown> shown, LocalDate today) {
        Problems problems = new Problems();
        LocalDate started = SettingsStore.get(read).project().started();
        HoursRules.check(entry, problems);
        HoursRules.notAfter(today, entry, problems);
        if (entry.date().isBefore(started)) {
            problems.fault(
                    "date",
                    Said.day(entry.date()),
                    "is before the project began",
                    "write a day from " + Said.day(started) + " on");
        }
        Optional<CrewMember> member =
                CrewMemberStore.TABLE.find(read, entry.crew()).map(Stored::value);
        if (member.isEmpty()) {
            problems.fault("crew", entry.crew().value(), "is nobody of the crew", "choose a person of the crew");
        }
        entry.episode()
                .filter(id -> !ReferenceStore.has(read, "episodes", id))
                .ifPresent(id -> problems.fault(
                        "episode", id.value(), "is no episode of this project", "choose one of the episodes"));
        entry.task().ifPresent(task -> checkTask(read, entry, task, problems));
        member.ifPresent(person -> checkDay(read, entry, person, shown, problems));
        return problems;
    }

    private static void checkTask(Read read, HoursEntry entry, Id id, Problems problems) {
        Optional<Task> found = TaskStore.TABLE.find(read, id).map(Stored::value);
        if (found.isEmpty()) {
            problems.fault("task", id.value(), "is no task of this project", "choose one of the tasks");
            return;
        }
        Task task = found.get();
        if (!task.isWork()) {
            problems.fault("task", task.title(), "is a wait, which nobody works on", "log the hours on a task of work");
        }
        task.done()
                .ifPresent(day -> problems.remark(
                        "task", task.title(), "is done since " + Said.day(day), "the hours are kept with it"));
        task.dropped()
                .ifPresent(day -> problems.remark(
                        "task", task.title(), "is dropped since " + Said.day(day), "the hours are kept with it"));
        if (task.pieces().isEmpty()
                && (entry.pieces().orElse(0) > 0 || entry.spoiled().orElse(0) > 0)) {
            problems.fault("pieces", task.title(), "is not made in pieces", "leave the pieces empty");
        }
    }

    private static void checkDay(
            Read read, HoursEntry entry, CrewMember person, Optional<Shown> shown, Problems problems) {
        List<HoursEntry> others = HoursEntryStore.ofDay(read, entry.crew(), entry.date()).stream()
                .filter(stored -> shown.map(s -> s.row() != stored.row()).orElse(true))
                .map(Stored::value)
                .toList();
        int before = HoursRules.minutes(others);
        int sum = before + entry.hours().minutes();
        String day = person.name() + " on " + Said.day(entry.date());
        if (sum > HoursRules.MINUTES_A_DAY) {
            List<String> parts = new ArrayList<>();
            others.forEach(other -> parts.add(other.hours().text() + " on " + what(read, other)));
            String listed = parts.isEmpty() ? "" : " (already there: " + Said.list(parts) + ")";
            problems.fault(
                    "hours",
                    entry.hours().text(),
                    "makes " + Said.hours(new Hours(sum)) + " for " + day + listed,
                    "at most 24 fit in a day");
            return;
        }
        Hours stated = StatedHours.on(
                entry.date(), person, CrewHoursStore.TABLE.values(read), DaysOffStore.TABLE.values(read));
        if (sum > stated.minutes()) {
            problems.remark(
                    "hours",
                    "",
                    "makes " + Said.hours(new Hours(sum)) + " for " + day + ", more than the " + stated.text()
                            + " stated",
                    "");
        }
    }

    /** What an entry was for, by its title. */
    private static String what(Read read, HoursEntry entry) {
        return entry.task()
                .flatMap(id -> TaskStore.TABLE.find(read, id))
                .map(task -> task.value().title())
                .or(() -> entry.episode().map(id -> "episode " + id))
                .orElse("shop and office");
    }

    /**
     * Keeps the day on which a task began in step with its hours: the first of them, or none when the hours that began it
     * were taken away.
     *
     * @param touched the day of the entry that was added, changed or removed, as it stood before
     */
    public static void followStart(Write write, Optional<Id> task, LocalDate touched) {
        Optional<Stored<Task>> stored = task.flatMap(id -> TaskStore.TABLE.find(write, id));
        if (stored.isEmpty()) {
            return;
        }
        Task value = stored.get().value();
        Optional<LocalDate> first = HoursEntryStore.firstDay(write, value.id());
        boolean ours = value.started().map(touched::equals).orElse(true);
        boolean earlier =
                first.isPresent() && value.started().map(first.get()::isBefore).orElse(true);
        if (earlier || ours && !first.equals(value.started())) {
            set(write, stored.get(), first);
        }
    }

    private static void set(Write write, Stored<Task> task, Optional<LocalDate> started) {
        try {
            TaskStore.TABLE.update(
                    write, task.row(), task.version(), TaskStore.TABLE.shape().with(task.value(), "started", started));
        } catch (Stale e) {
            throw new IllegalStateException("a row read in the same transaction changed: task " + task.row(), e);
        }
    }
}
