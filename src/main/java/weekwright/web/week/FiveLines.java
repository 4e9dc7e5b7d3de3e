package weekwright.web.week;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weekwright.base.Quantity;
import weekwright.build.HoursEntry;
import weekwright.build.Task;
import weekwright.render.Formats;

/** A week of the log in at most five lines, as the start of a script. Pure; nothing is made up. */
final class FiveLines {
    private FiveLines() {}

    static List<String> of(WeekFacts facts, LocalDate monday) {
        List<String> lines = new ArrayList<>();
        int all = minutes(facts.hours());
        if (all == 0) {
            return List.of();
        }
        Set<String> people = new LinkedHashSet<>();
        facts.hours().forEach(entry -> people.add(facts.person(entry.crew().value())));
        lines.add(Formats.list(List.copyOf(people)) + " worked " + Formats.hoursLong(all) + " in the week from "
                + Formats.dayMonthLong(monday) + ".");
        Map<String, Integer> byTask = new HashMap<>();
        facts.hours().stream()
                .filter(entry -> entry.task().isPresent())
                .forEach(entry ->
                        byTask.merge(entry.task().get().value(), entry.hours().minutes(), Integer::sum));
        byTask.entrySet().stream()
                .max(Map.Entry.<String, Integer>comparingByValue()
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .ifPresent(most -> lines.add("Most of it went into \"" + facts.task(most.getKey()) + "\", "
                        + Formats.hoursLong(most.getValue()) + "."));
        List<String> done = facts.tasks().values().stream()
                .filter(task -> task.done()
                        .filter(day -> !day.isBefore(monday) && !day.isAfter(monday.plusDays(6)))
                        .isPresent())
                .map(Task::title)
                .sorted()
                .toList();
        lines.add(done.isEmpty() ? "Nothing was finished." : "Finished: " + Formats.list(done) + ".");
        facts.hours().stream()
                .map(HoursEntry::note)
                .filter(note -> !note.isBlank())
                .max(Comparator.comparingInt(String::length))
                .ifPresent(note -> lines.add("From the log: \"" + note.strip().replaceAll("\\s+", " ") + "\""));
        BigDecimal footage = facts.hours().stream()
                .flatMap(entry -> entry.footageMinutes().stream())
                .map(Quantity::value)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        List<String> filmed = facts.hours().stream()
                .filter(entry -> entry.filmed() || entry.asOrDefault() == HoursEntry.As.CAMERA)
                .flatMap(entry -> entry.task().stream())
                .map(id -> facts.task(id.value()))
                .distinct()
                .toList();
        long minutes = footage.setScale(0, RoundingMode.HALF_UP).longValueExact();
        if (!filmed.isEmpty()) {
            lines.add("Filmed: " + Formats.list(filmed)
                    + (footage.signum() == 0 ? "" : "; " + Formats.count(minutes, "minute") + " of footage") + ".");
        }
        return lines;
    }

    private static int minutes(List<HoursEntry> hours) {
        return hours.stream().mapToInt(entry -> entry.hours().minutes()).sum();
    }
}
