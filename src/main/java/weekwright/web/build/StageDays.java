package weekwright.web.build;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weekwright.build.Task;
import weekwright.forecast.Forecast;
import weekwright.render.Formats;

/** Days of a stage that are known from its tasks. */
final class StageDays {
    private StageDays() {}

    /** The day on which the last of its tasks was done; empty while one is open, and without tasks. */
    static Optional<LocalDate> done(List<Task> tasks) {
        boolean all =
                !tasks.isEmpty() && tasks.stream().allMatch(task -> task.done().isPresent());
        return all
                ? tasks.stream().flatMap(task -> task.done().stream()).max(Comparator.naturalOrder())
                : Optional.empty();
    }

    static Optional<LocalDate> began(List<Task> tasks) {
        return tasks.stream().flatMap(task -> task.started().stream()).min(Comparator.naturalOrder());
    }

    /** "rough: 2 tasks are guessed"; empty where nothing is. */
    static String rough(Forecast.Stage stage) {
        int tasks = stage.rough().tasks();
        int minutes = stage.rough().hours().minutes();
        if (tasks == 0 && minutes == 0) {
            return "";
        }
        if (tasks == 0) {
            return "rough: about "
                    + Formats.hoursCounted(Math.max(60, (minutes + 30) / 60 * 60), "hour is", "hours are")
                    + " guessed";
        }
        return "rough: " + Formats.counted(tasks, "task is", "tasks are") + " guessed";
    }
}
