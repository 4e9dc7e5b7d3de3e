package weekwright.web.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.build.Settings;
import weekwright.build.Task;
import weekwright.build.TaskHazards;
import weekwright.build.TaskStore;
import weekwright.build.UnmetLinks;
import weekwright.db.Read;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.forecast.Forecast;
import weekwright.render.Formats;

/**
 * What could fill an empty slot: a piece from the story bank, a standby, a side story from work that can begin now. Work with
 * company by and work that cannot be repeated for the camera is never offered as story (rule 126).
 *
 * @param bank about how many minutes the bank holds by then, where that is enough for one
 * @param standbys not published, those that are ready first
 * @param side open tasks that can begin and have story, the most minutes first
 */
record SlotFillers(Optional<Long> bank, List<Filler> standbys, List<Filler> side) {
    private static final int MOST_SIDE = 5;

    /** An episode or a task. */
    record Filler(Id id, String title, String more) {}

    static SlotFillers of(Read read, Settings settings, LocalDate slot, Optional<Forecast> forecast, Formats formats) {
        return new SlotFillers(bank(settings, slot, forecast), standbys(read, formats), side(read));
    }

    /** One clause for a line of the calendar. */
    String brief() {
        if (bank.isPresent()) {
            return "The story bank could fill it: about " + Formats.count(bank.get(), "minute") + " by then.";
        }
        if (!standbys.isEmpty()) {
            return "A standby could fill it: " + standbys.get(0).title() + ".";
        }
        if (!side.isEmpty()) {
            return "A side story could fill it: " + side.get(0).title() + ".";
        }
        return "Nothing could fill it yet: no bank, no standby, no work that can begin.";
    }

    private static Optional<Long> bank(Settings settings, LocalDate slot, Optional<Forecast> forecast) {
        return forecast.flatMap(f -> f.storyBank().stream()
                        .filter(week -> week.week().isBefore(slot))
                        .reduce((first, second) -> second)
                        .or(() -> f.storyBank().stream().findFirst()))
                .map(Forecast.BankWeek::p50)
                .filter(minutes -> minutes >= settings.targetMinutes().doubleValue())
                .map(Math::round);
    }

    private static List<Filler> standbys(Read read, Formats formats) {
        List<Filler> ready = new ArrayList<>();
        List<Filler> others = new ArrayList<>();
        for (Episode one : EpisodeStore.TABLE.values(read)) {
            if (one.kindOrDefault() == Episode.Kind.STANDBY && one.published().isEmpty()) {
                String far = EpisodeSteps.of(read, one).words(formats);
                (one.cut().isPresent() ? ready : others).add(new Filler(one.id(), one.title(), far));
            }
        }
        ready.addAll(others);
        return ready;
    }

    private static List<Filler> side(Read read) {
        return TaskStore.TABLE.values(read).stream()
                .filter(task -> task.isOpen()
                        && task.isWork()
                        && task.storyMinutes().isPresent()
                        && !task.storyTold()
                        && task.cameraOrDefault() != Task.Camera.NONE
                        && task.cameraOrDefault() != Task.Camera.ONCE
                        && TaskHazards.company(read, task) != Task.Company.BY)
                .filter(task -> UnmetLinks.of(read, task).isEmpty())
                .sorted(Comparator.comparing((Task task) -> task.storyMinutes().get())
                        .reversed())
                .limit(MOST_SIDE)
                .map(task -> new Filler(
                        task.id(),
                        task.title(),
                        "about " + task.storyMinutes().get().text() + Formats.NBSP + "min of story"))
                .toList();
    }
}
