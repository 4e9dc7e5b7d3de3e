package weekwright.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.db.Write;

/**
 * Moves what the build has planned from a day on by so many days: not-before and booked days of open tasks and the days until
 * which they are laid aside, gatherings, and lines of the week that are not done. What happened, and people's days off, stay.
 */
public final class ShiftDates {
    /** Days ahead that stand for "until it is taken up", which no shift touches. */
    private static final int FAR_YEARS = 20;

    private ShiftDates() {}

    /** One day that moves, and whose it is in words. */
    public record Move(String what, LocalDate from, LocalDate to) {}

    private record Planned<R extends Record>(Table<R> table, Stored<R> row, String column, String what, LocalDate day) {
        void to(Write write, LocalDate other) throws Stale {
            Stored<R> now = table.find(write, row.row()).orElseThrow();
            boolean optional = table.shape().field(column).orElseThrow().optional();
            table.update(
                    write,
                    now.row(),
                    now.version(),
                    table.shape().with(now.value(), column, optional ? Optional.of(other) : other));
        }
    }

    /** @param first the day from which on everything moves */
    public static List<Move> moves(Read read, LocalDate first, int days) {
        return planned(read, first).stream()
                .map(one -> new Move(one.what(), one.day(), one.day().plusDays(days)))
                .toList();
    }

    private static List<Planned<?>> planned(Read read, LocalDate first) {
        List<Planned<?>> all = new ArrayList<>();
        for (Stored<Task> task : TaskStore.TABLE.list(read)) {
            Task value = task.value();
            if (value.isOpen()) {
                add(all, TaskStore.TABLE, task, "not_before", value.title() + ", not before", value.notBefore(), first);
                add(all, TaskStore.TABLE, task, "booked", value.title() + ", booked", value.booked(), first);
                add(
                        all,
                        TaskStore.TABLE,
                        task,
                        "aside_until",
                        value.title() + ", laid aside until",
                        value.asideUntil().filter(day -> day.isBefore(first.plusYears(FAR_YEARS))),
                        first);
            }
        }
        for (Stored<Gathering> one : GatheringStore.TABLE.list(read)) {
            add(
                    all,
                    GatheringStore.TABLE,
                    one,
                    "date",
                    "Gathering",
                    Optional.of(one.value().date()),
                    first);
        }
        for (Stored<WeekLine> line : WeekLineStore.TABLE.list(read)) {
            if (!line.value().done()) {
                add(
                        all,
                        WeekLineStore.TABLE,
                        line,
                        "date",
                        said(read, line.value()),
                        Optional.of(line.value().date()),
                        first);
            }
        }
        return all;
    }

    private static <R extends Record> void add(
            List<Planned<?>> all,
            Table<R> table,
            Stored<R> row,
            String column,
            String what,
            Optional<LocalDate> day,
            LocalDate first) {
        day.filter(one -> !one.isBefore(first)).ifPresent(one -> all.add(new Planned<>(table, row, column, what, one)));
    }

    private static String said(Read read, WeekLine line) {
        String who = line.crew()
                .flatMap(id -> CrewMemberStore.TABLE.find(read, id))
                .map(member -> member.value().name() + ": ")
                .orElse("");
        String what = line.task()
                .flatMap(id -> TaskStore.TABLE.find(read, id))
                .map(task -> task.value().title())
                .orElse(line.text());
        return "Line of the week, " + who + what;
    }

    /**
     * Moves them all, or none.
     *
     * @param today in the project's zone
     * @throws Rejected where a line of the week would put somebody to danger without company (rule 125)
     */
    public static List<Move> shift(Write write, LocalDate first, int days, LocalDate today) throws Rejected, Stale {
        List<Planned<?>> all = planned(write, first);
        for (Planned<?> one : all) {
            one.to(write, one.day().plusDays(days));
        }
        Set<Problem> faults = new LinkedHashSet<>();
        for (Planned<?> one : all) {
            if (one.table() == WeekLineStore.TABLE) {
                Stored<WeekLine> line =
                        WeekLineStore.TABLE.find(write, one.row().row()).orElseThrow();
                try {
                    SaveWeekLine.save(write, Optional.of(Shown.of(line)), line.value(), today);
                } catch (Rejected rejected) {
                    rejected.problems()
                            .forEach(p -> faults.add(Problem.fault(
                                    "",
                                    "",
                                    one.what() + " on " + Said.day(line.value().date()) + ": " + p.sentence(),
                                    "")));
                }
            }
        }
        if (!faults.isEmpty()) {
            throw new Rejected(List.copyOf(faults));
        }
        return all.stream()
                .map(one -> new Move(one.what(), one.day(), one.day().plusDays(days)))
                .toList();
    }
}
