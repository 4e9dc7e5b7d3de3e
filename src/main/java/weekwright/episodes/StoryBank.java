package weekwright.episodes;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import weekwright.base.Id;
import weekwright.base.Quantity;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;

/**
 * The story that finished tasks can still give (rule 72): their story minutes times the filmed share of their hours less the
 * share that any episode tells. Hours are filmed when on their day the task had camera hours, footage, a captured shot or
 * the mark "filmed".
 */
public final class StoryBank {
    private static final int PLACES = 4;

    private StoryBank() {}

    /**
     * A task with story left.
     *
     * @param told share told so far, 0 to 1
     * @param minutes finished minutes that it still can give, over 0
     */
    public record Part(Task task, Quantity told, Quantity minutes) {}

    /** What finished tasks can still give, in the order in which they were done. */
    public static List<Part> finished(Read read) {
        List<Part> parts = new ArrayList<>();
        TaskStore.TABLE.values(read).stream()
                .filter(task -> task.done().isPresent()
                        && task.storyMinutes().isPresent()
                        && !task.storyTold()
                        && task.cameraOrDefault() != Task.Camera.NONE)
                .sorted(Comparator.comparing((Task task) -> task.done().get()))
                .forEach(task -> {
                    BigDecimal told = told(read, task.id());
                    BigDecimal left = filmed(read, task).subtract(told);
                    BigDecimal minutes =
                            task.storyMinutes().get().value().multiply(left).setScale(1, RoundingMode.DOWN);
                    if (minutes.signum() > 0) {
                        parts.add(new Part(task, new Quantity(told), new Quantity(minutes)));
                    }
                });
        return parts;
    }

    /** The largest share of a task that any episode tells. */
    private static BigDecimal told(Read read, Id task) {
        return TellStore.ofTask(read, task).stream()
                .map(tell -> tell.value().share().orElse(Quantity.ONE).value())
                .max(Comparator.naturalOrder())
                .orElse(BigDecimal.ZERO);
    }

    private static BigDecimal filmed(Read read, Task task) {
        List<HoursEntry> entries = HoursEntryStore.ofTask(read, task.id()).stream()
                .map(Stored::value)
                .toList();
        Set<LocalDate> days = new HashSet<>();
        entries.stream()
                .filter(entry -> entry.filmed()
                        || entry.asOrDefault() == HoursEntry.As.CAMERA
                        || entry.footageMinutes().isPresent())
                .forEach(entry -> days.add(entry.date()));
        ShotStore.ofTask(read, task.id())
                .forEach(shot -> shot.value().captured().ifPresent(days::add));
        long all = 0;
        long filmed = 0;
        for (HoursEntry entry : entries) {
            if (entry.asOrDefault() == HoursEntry.As.HANDS) {
                long minutes = (long) entry.hours().minutes() * entry.peopleOrDefault();
                all += minutes;
                filmed += days.contains(entry.date()) ? minutes : 0;
            }
        }
        return all == 0
                ? BigDecimal.ZERO
                : BigDecimal.valueOf(filmed).divide(BigDecimal.valueOf(all), PLACES, RoundingMode.HALF_UP);
    }
}
