package weekwright.build;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Hours;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * Adds a line to the week sheet or changes one. A line that puts a person alone to work that asks for company, or to
 * hazards that are not for them, with the camera too, is refused (rule 125): for "call" somebody else has hours that day; for "by" somebody
 * else who may has hours that day that no other line takes, and does not hold the camera.
 */
public final class SaveWeekLine {
    private SaveWeekLine() {}

    /**
     * @param shown the row that is changed; empty adds
     * @param today in the project's zone; company is asked for from this day on
     */
    public static Stored<WeekLine> save(Write write, Optional<Shown> shown, WeekLine line, LocalDate today)
            throws Rejected, Stale {
        Faults.refuse(check(write, shown, line, today));
        return shown.isPresent()
                ? WeekLineStore.TABLE.update(
                        write, shown.get().row(), shown.get().version(), line)
                : WeekLineStore.TABLE.insert(write, line);
    }

    /** Everything that the rules say of a line. */
    public static Problems check(Read read, Optional<Shown> shown, WeekLine line, LocalDate today) {
        Problems problems = new Problems();
        HoursRules.check(line, problems);
        References.check(read, WeekLineStore.TABLE.shape(), line, problems);
        DateRules.check(
                WeekLineStore.TABLE.shape(),
                line,
                SettingsStore.get(read).project().started(),
                problems);
        if (!problems.hasFaults()) {
            checkPeople(read, shown, line, today, problems);
        }
        return problems;
    }

    private static void checkPeople(
            Read read, Optional<Shown> shown, WeekLine line, LocalDate today, Problems problems) {
        Optional<CrewMember> person =
                line.crew().flatMap(id -> CrewMemberStore.TABLE.find(read, id)).map(Stored::value);
        Optional<Task> task =
                line.task().flatMap(id -> TaskStore.TABLE.find(read, id)).map(Stored::value);
        boolean past = line.date().isBefore(today);
        WeekLine.Kind kind = line.kind().orElse(WeekLine.Kind.WORK);
        boolean hands = kind == WeekLine.Kind.WORK;
        boolean near = hands || kind == WeekLine.Kind.FILM;
        if (person.isEmpty() || task.isEmpty() || past || !near || !task.get().isOpen()) {
            return;
        }
        Set<String> hazards = TaskHazards.of(read, task.get());
        if (HazardCodes.keptOff(person.get(), hazards)) {
            problems.fault(
                    "crew",
                    person.get().name(),
                    "is kept off " + Said.list(HazardCodes.said(hazards)),
                    "name somebody else, or change under Crew what "
                            + person.get().name() + " is kept off");
        }
        Task.Company company = TaskHazards.company(read, task.get());
        if (company == Task.Company.ALONE || !hands) {
            return;
        }
        List<WeekLine> lines = WeekLineStore.between(read, line.date(), line.date()).stream()
                .filter(other -> shown.map(s -> s.row() != other.row()).orElse(true))
                .map(Stored::value)
                .toList();
        boolean somebody = CrewMemberStore.TABLE.values(read).stream()
                .filter(other -> !other.id().same(person.get().id()))
                .anyMatch(other -> isThere(read, other, line, lines, company, hazards));
        if (!somebody) {
            boolean by = company == Task.Company.BY;
            problems.fault(
                    "date",
                    task.get().title(),
                    (by ? "needs another person beside" : "needs another person at work that day") + ", and on "
                            + Said.day(line.date()) + " there is nobody" + (by ? " free for it" : ""),
                    "choose a day on which there is, or another task");
        }
    }

    private static boolean isThere(
            Read read,
            CrewMember other,
            WeekLine line,
            List<WeekLine> lines,
            Task.Company company,
            Set<String> hazards) {
        Hours stated =
                StatedHours.on(line.date(), other, CrewHoursStore.TABLE.values(read), DaysOffStore.TABLE.values(read));
        if (stated.minutes() == 0 || company == Task.Company.CALL) {
            return stated.minutes() > 0;
        }
        int taken = 0;
        for (WeekLine own : lines) {
            boolean theirs = own.crew().map(id -> id.same(other.id())).orElse(false);
            boolean beside =
                    own.task().equals(line.task()) && own.kind().orElse(WeekLine.Kind.WORK) == WeekLine.Kind.WORK;
            if (theirs && !beside) {
                taken += own.hours().map(Hours::minutes).orElse(stated.minutes());
            }
        }
        return taken < stated.minutes() && !HazardCodes.keptOff(other, hazards);
    }
}
