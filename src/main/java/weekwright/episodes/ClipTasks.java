package weekwright.episodes;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Quantity;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.db.Read;
import weekwright.db.Stored;

/**
 * Of which task a clip is, as far as the week's lines and the log tell: the task of the line with a clock time that lies
 * over most of the clip; else the day's only filmed task; else the day's only task. Two that are equal give none.
 */
public final class ClipTasks {
    private final Read read;
    private final Map<LocalDate, List<WeekLine>> lines = new HashMap<>();
    private final Map<LocalDate, List<HoursEntry>> hours = new HashMap<>();

    public ClipTasks(Read read) {
        this.read = read;
    }

    /**
     * A guess.
     *
     * @param why what it rests on: {@code by the clock}
     */
    public record Guess(Id task, String why) {}

    /** @param minutes the clip's length; a minute where it is not known */
    public Optional<Guess> of(LocalDate date, Optional<LocalTime> time, Optional<Quantity> minutes) {
        return time.flatMap(start -> byClock(date, start, minutes)).or(() -> ofTheDay(date));
    }

    private Optional<Guess> byClock(LocalDate date, LocalTime start, Optional<Quantity> minutes) {
        int from = start.toSecondOfDay();
        int to = from
                + minutes.map(Quantity::value)
                        .map(value -> value.multiply(BigDecimal.valueOf(60)).intValue())
                        .map(seconds -> Math.max(1, seconds))
                        .orElse(60);
        Map<String, Integer> covered = new HashMap<>();
        Map<String, Id> tasks = new HashMap<>();
        for (WeekLine line : lines.computeIfAbsent(
                date,
                day -> WeekLineStore.between(read, day, day).stream()
                        .map(Stored::value)
                        .toList())) {
            if (line.task().isPresent() && line.from().isPresent() && line.to().isPresent()) {
                int over = Math.min(to, line.to().get().toSecondOfDay())
                        - Math.max(from, line.from().get().toSecondOfDay());
                if (over > 0) {
                    covered.merge(line.task().get().folded(), over, Math::max);
                    tasks.put(line.task().get().folded(), line.task().get());
                }
            }
        }
        int most = covered.values().stream().mapToInt(over -> over).max().orElse(0);
        List<String> best = covered.entrySet().stream()
                .filter(one -> one.getValue() == most)
                .map(Map.Entry::getKey)
                .toList();
        return best.size() == 1 ? Optional.of(new Guess(tasks.get(best.get(0)), "by the clock")) : Optional.empty();
    }

    private Optional<Guess> ofTheDay(LocalDate date) {
        List<HoursEntry> day = hours.computeIfAbsent(
                date,
                one -> HoursEntryStore.between(read, one, one).stream()
                        .map(Stored::value)
                        .toList());
        return only(day.stream()
                        .filter(entry -> entry.filmed()
                                || entry.footageMinutes().isPresent()
                                || entry.asOrDefault() == HoursEntry.As.CAMERA)
                        .toList())
                .map(task -> new Guess(task, "the day’s only filmed task"))
                .or(() -> only(day).map(task -> new Guess(task, "the day’s only task")));
    }

    private static Optional<Id> only(List<HoursEntry> entries) {
        Map<String, Id> tasks = new LinkedHashMap<>();
        entries.forEach(entry -> entry.task().ifPresent(task -> tasks.put(task.folded(), task)));
        return tasks.size() == 1 ? Optional.of(tasks.values().iterator().next()) : Optional.empty();
    }
}
