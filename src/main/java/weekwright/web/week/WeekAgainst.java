package weekwright.web.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.build.HoursEntry;
import weekwright.build.Task;
import weekwright.forecast.WeekPlan;
import weekwright.render.Formats;

/**
 * A week that is over against what its Monday proposed and the crew wrote: by task and episode, hours planned and hours
 * logged. Pure.
 *
 * @param rows most planned first, then what nobody had planned
 * @param sentence the whole in one line; empty where neither was planned nor logged anything
 */
public record WeekAgainst(List<Row> rows, String sentence) {
    public WeekAgainst {
        rows = List.copyOf(rows);
    }

    /**
     * One work.
     *
     * @param planned minutes
     * @param logged minutes
     * @param done whether it was done in that week
     */
    public record Row(String what, int planned, int logged, boolean done) {}

    /** @param plan of that week as on its Monday; empty where that is not known (yet) */
    static WeekAgainst of(Optional<WeekPlan> plan, WeekFacts facts, LocalDate monday) {
        Map<String, Integer> planned = new LinkedHashMap<>();
        plan.ifPresent(one -> one.days().stream()
                .flatMap(day -> day.people().stream())
                .flatMap(person -> person.lines().stream())
                .filter(line -> !line.kind().equals("rest") && !line.text().equals(WeekPlan.BESIDE))
                .forEach(line -> planned.merge(
                        key(line.task(), line.episode()), line.hours().minutes(), Integer::sum)));
        Map<String, Integer> logged = new HashMap<>();
        for (HoursEntry entry : facts.hours()) {
            String key = key(entry.task().map(id -> id.value()), entry.episode().map(id -> id.value()));
            logged.merge(key, entry.hours().minutes(), Integer::sum);
            planned.putIfAbsent(key, 0);
        }
        List<Row> rows = new ArrayList<>();
        planned.forEach((key, minutes) -> rows.add(new Row(
                facts.named(key),
                minutes == 0 ? 0 : WeekDays.quarters(minutes),
                logged.getOrDefault(key, 0),
                done(key, facts, monday))));
        rows.sort(Comparator.comparing(Row::planned).reversed());
        return new WeekAgainst(rows, plan.isEmpty() ? "" : sentence(rows));
    }

    private static String key(Optional<String> task, Optional<String> episode) {
        return task.map(id -> "task " + id)
                .or(() -> episode.map(id -> "episode " + id))
                .orElse("");
    }

    private static boolean done(String key, WeekFacts facts, LocalDate monday) {
        return key.startsWith("task ")
                && Optional.ofNullable(facts.tasks().get(key.substring(5)))
                        .flatMap(Task::done)
                        .filter(day -> !day.isBefore(monday) && !day.isAfter(monday.plusDays(6)))
                        .isPresent();
    }

    private static String sentence(List<Row> rows) {
        int planned = rows.stream().mapToInt(Row::planned).sum();
        int logged = rows.stream().mapToInt(Row::logged).sum();
        if (planned == 0 && logged == 0) {
            return "";
        }
        List<String> untouched = rows.stream()
                .filter(row -> row.planned() > 0 && row.logged() == 0 && !row.done())
                .map(Row::what)
                .toList();
        long done = rows.stream().filter(Row::done).count();
        return Formats.hoursLong(planned) + " planned, " + Formats.hoursLong(logged) + " logged, "
                + (done == 0 ? "nothing" : Formats.count((int) done, "task")) + " done"
                + (untouched.isEmpty() ? "." : "; not touched: " + Formats.list(untouched) + ".");
    }
}
