package weekwright.web.log;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import weekwright.build.CrewMember;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.LayAside;
import weekwright.build.Task;
import weekwright.build.TaskFigures;
import weekwright.build.TaskStore;
import weekwright.build.UnmetLinks;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.EpisodeStore;
import weekwright.forecast.Forecast;
import weekwright.render.Form;
import weekwright.web.parts.Choices;

/** Which tasks somebody most likely worked on: today's lines of the week, then what is under way, then what begins next. */
final class LogTasks {
    private static final int MOST = 3;
    private static final int DAYS_BACK = 21;
    private static final int ASKED_FROM_PERCENT = 70;

    private LogTasks() {}

    /**
     * A task to press.
     *
     * @param remark why it is offered: today, yesterday, under way, next
     * @param pieces whether it goes by pieces
     * @param early whether under 70 % of its estimate is logged, so that nobody is asked yet how it stands
     */
    record Line(String id, String title, String remark, boolean pieces, boolean early) {}

    static List<Line> likely(Read read, LocalDate today, Optional<CrewMember> person, Optional<Forecast> forecast) {
        Map<String, Task> open = new LinkedHashMap<>();
        TaskStore.TABLE.values(read).stream()
                .filter(task -> task.isOpen() && task.isWork() && !LayAside.isAside(task, today))
                .forEach(task -> open.put(task.id().folded(), task));
        Map<String, String> offered = new LinkedHashMap<>();
        List<WeekLine> lines = new ArrayList<>(WeekLineStore.between(read, today, today).stream()
                .map(Stored::value)
                .toList());
        lines.sort(Comparator.comparing(line -> !mine(line, person)));
        for (WeekLine line : lines) {
            line.task().ifPresent(id -> offered.putIfAbsent(id.folded(), "today"));
        }
        List<HoursEntry> logged =
                new ArrayList<>(HoursEntryStore.between(read, today.minusDays(DAYS_BACK), today).stream()
                        .map(Stored::value)
                        .toList());
        Collections.reverse(logged);
        logged.sort(Comparator.comparing(
                entry -> !person.map(p -> p.id().same(entry.crew())).orElse(false)));
        Map<String, LocalDate> last = new HashMap<>();
        logged.forEach(entry ->
                entry.task().ifPresent(id -> last.merge(id.folded(), entry.date(), (a, b) -> a.isAfter(b) ? a : b)));
        for (HoursEntry entry : logged) {
            entry.task().ifPresent(id -> offered.putIfAbsent(id.folded(), worked(last.get(id.folded()), today)));
        }
        forecast.ifPresent(f -> f.tasks().stream()
                .filter(task -> task.start().p50().isPresent())
                .sorted(Comparator.comparing(task -> task.start().p50().get()))
                .forEach(task -> offered.putIfAbsent(task.id().toLowerCase(Locale.ROOT), "next")));
        open.values().stream()
                .filter(task -> UnmetLinks.of(read, task).isEmpty())
                .limit(MOST)
                .forEach(task -> offered.putIfAbsent(task.id().folded(), "can begin"));
        Map<String, List<HoursEntry>> entries = TaskFigures.entries(read);
        return offered.entrySet().stream()
                .filter(entry -> open.containsKey(entry.getKey()))
                .limit(MOST)
                .map(entry -> {
                    Task task = open.get(entry.getKey());
                    return new Line(
                            task.id().value(),
                            task.title(),
                            entry.getValue(),
                            task.pieces().isPresent(),
                            early(task, entries));
                })
                .toList();
    }

    private static boolean early(Task task, Map<String, List<HoursEntry>> entries) {
        TaskFigures figures =
                TaskFigures.of(task, entries.getOrDefault(task.id().folded(), List.of()));
        return figures.logged() * 100L < figures.estimate() * (long) ASKED_FROM_PERCENT;
    }

    private static boolean mine(WeekLine line, Optional<CrewMember> person) {
        return line.crew().isPresent()
                && person.map(p -> p.id().same(line.crew().get())).orElse(false);
    }

    private static String worked(LocalDate day, LocalDate today) {
        return day.equals(today) ? "today" : day.equals(today.minusDays(1)) ? "yesterday" : "under way";
    }

    /** All other tasks of work, finished ones last: hours are sometimes remembered late. */
    static List<Form.Choice> others(Read read, LocalDate today, List<Line> offered) {
        return Choices.tasks(
                read,
                task -> task.isWork()
                        && task.isOpen()
                        && offered.stream()
                                .noneMatch(line -> line.id().equals(task.id().value())));
    }

    static List<Form.Choice> episodes(Read read) {
        return EpisodeStore.TABLE.values(read).stream()
                .filter(episode -> episode.published().isEmpty())
                .map(episode -> new Form.Choice(episode.id().value(), Choices.title(episode)))
                .toList();
    }
}
