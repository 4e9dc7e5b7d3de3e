package weekwright.web.build;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.build.HoursEntry;
import weekwright.build.Task;
import weekwright.build.TaskFigures;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.parts.Choices;

/** "Like the last one": the hours that a finished task took, or the days of a wait, as an estimate for another. */
final class LikeTask {
    private LikeTask() {}

    /** What is filled in, and the line that says so. */
    record Copied(Map<String, List<String>> fields, String said) {}

    /** Finished tasks that took hours or days, newest first. */
    static List<Form.Choice> choices(Read read, Optional<Id> self) {
        Map<String, List<HoursEntry>> entries = TaskFigures.entries(read);
        Map<String, Task> byId = new LinkedHashMap<>();
        TaskStore.TABLE.values(read).forEach(task -> byId.put(task.id().value(), task));
        List<Form.Choice> choices = new ArrayList<>(Choices.tasks(
                read,
                task -> task.done().isPresent()
                        && self.map(id -> !id.same(task.id())).orElse(true)
                        && copied(task, entries.getOrDefault(task.id().folded(), List.of()))
                                .isPresent()));
        choices.sort(Comparator.comparing(
                        (Form.Choice choice) -> byId.get(choice.value()).done().orElseThrow())
                .reversed());
        return choices;
    }

    static Optional<Copied> of(Read read, Id id) {
        return TaskStore.TABLE
                .find(read, id)
                .map(Stored::value)
                .filter(task -> task.done().isPresent())
                .flatMap(task -> copied(
                        task, TaskFigures.entries(read).getOrDefault(task.id().folded(), List.of())));
    }

    private static Optional<Copied> copied(Task task, List<HoursEntry> entries) {
        if (!task.isWork()) {
            return task.started().map(began -> {
                long days = ChronoUnit.DAYS.between(began, task.done().orElseThrow());
                return copied("wait", String.valueOf(days), "", task, Formats.count(days, "day"));
            });
        }
        TaskFigures figures = TaskFigures.of(task, entries);
        if (figures.logged() == 0) {
            return Optional.empty();
        }
        int pieces = task.pieces().isPresent() ? figures.pieces() : 0;
        String hours = BigDecimal.valueOf(figures.logged())
                .divide(BigDecimal.valueOf(60L * Math.max(1, pieces)), 2, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
        String took = Formats.hoursLong(figures.logged());
        return Optional.of(
                pieces == 0
                        ? copied("work", hours, "", task, took)
                        : copied(
                                "pieces",
                                hours,
                                String.valueOf(pieces),
                                task,
                                took + " for " + Formats.count(pieces, "piece")));
    }

    private static Copied copied(String kind, String likely, String pieces, Task like, String took) {
        return new Copied(
                Map.of(
                        "kind", List.of(kind),
                        "likely", List.of(likely),
                        "low", List.of(),
                        "high", List.of(),
                        "pieces", pieces.isEmpty() ? List.of() : List.of(pieces),
                        "learning", List.of(),
                        "like", List.of()),
                "\u201c" + like.title() + "\u201d took " + took + ". Look at it, then save.");
    }
}
