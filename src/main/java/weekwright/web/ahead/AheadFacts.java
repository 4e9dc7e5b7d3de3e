package weekwright.web.ahead;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
import weekwright.episodes.SlotRules;
import weekwright.episodes.Tell;
import weekwright.episodes.TellStore;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;

/** What the sheet shows besides the forecast, read on one view of the store. */
record AheadFacts(
        Settings settings,
        List<Stage> stages,
        List<Task> tasks,
        List<Episode> episodes,
        List<Tell> tells,
        List<Shot> shots,
        List<Material> materials,
        List<LedgerEntry> ledger,
        Map<String, LocalDate> firstHours,
        long loggedMinutes) {

    static AheadFacts of(Read read) {
        List<Task> tasks = TaskStore.TABLE.values(read);
        Map<String, String> stageOf = new HashMap<>();
        tasks.forEach(task -> stageOf.put(task.id().folded(), task.stage().folded()));
        List<HoursEntry> hours = HoursEntryStore.TABLE.values(read);
        Map<String, LocalDate> first = new HashMap<>();
        for (HoursEntry entry : hours) {
            Optional<String> stage = entry.task().map(Id::folded).map(stageOf::get);
            stage.ifPresent(s -> first.merge(s, entry.date(), (a, b) -> a.isBefore(b) ? a : b));
        }
        return new AheadFacts(
                SettingsStore.get(read),
                StageStore.inOrder(read).stream().map(Stored::value).toList(),
                tasks,
                EpisodeStore.TABLE.values(read),
                TellStore.TABLE.values(read),
                ShotStore.TABLE.values(read),
                MaterialStore.TABLE.values(read),
                LedgerEntryStore.TABLE.values(read),
                first,
                hours.stream().mapToLong(entry -> entry.hours().minutes()).sum());
    }

    List<Task> tasksOf(Stage stage) {
        return tasks.stream()
                .filter(task -> task.stage().folded().equals(stage.id().folded()))
                .filter(task -> task.dropped().isEmpty())
                .toList();
    }

    /** The day the stage's last task was done; empty while one is open, or where it has none. */
    Optional<LocalDate> done(Stage stage) {
        List<Task> own = tasksOf(stage);
        boolean all =
                !own.isEmpty() && own.stream().allMatch(task -> task.done().isPresent());
        return all
                ? own.stream().map(task -> task.done().orElseThrow()).max(Comparator.naturalOrder())
                : Optional.empty();
    }

    Optional<Task> task(String id) {
        return tasks.stream().filter(task -> task.id().value().equals(id)).findFirst();
    }

    Optional<Material> material(String id) {
        return materials.stream().filter(line -> line.id().value().equals(id)).findFirst();
    }

    /** The episode planned for that slot, or published on it. */
    Optional<Episode> onSlot(LocalDate day) {
        return episodes.stream()
                .filter(episode -> episode.published()
                        .map(day::equals)
                        .orElseGet(() -> episode.slot().map(day::equals).orElse(false)))
                .findFirst();
    }

    /** Publication days from one day to before another. */
    List<LocalDate> slots(LocalDate from, LocalDate to) {
        return from.datesUntil(to)
                .filter(day -> SlotRules.isSlot(day, settings))
                .toList();
    }

    /** The first slot from that day on that has no published episode. */
    Optional<LocalDate> nextSlot(LocalDate today) {
        return slots(today, today.plusYears(1)).stream()
                .filter(day -> onSlot(day).map(e -> e.published().isEmpty()).orElse(true))
                .findFirst();
    }

    List<Tell> told(Episode episode) {
        return tells.stream()
                .filter(tell -> tell.episode().folded().equals(episode.id().folded()))
                .toList();
    }
}
