package weekwright.web.ahead;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import weekwright.base.Id;
import weekwright.base.Money;
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
import weekwright.funds.StageCosts;

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
        Money onOrder,
        Map<String, LocalDate> firstHours,
        long loggedMinutes,
        Index index) {

    /** By what the sheet looks things up a few hundred times. Of several under one key the first in file order. */
    private record Index(
            Map<String, List<Task>> tasksOf,
            Map<String, Task> task,
            Map<String, Material> material,
            Map<LocalDate, Episode> onSlot,
            Map<String, List<Tell>> told) {}

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
        List<Episode> episodes = EpisodeStore.TABLE.values(read);
        List<Tell> tells = TellStore.TABLE.values(read);
        List<Material> materials = MaterialStore.TABLE.values(read);
        return new AheadFacts(
                SettingsStore.get(read),
                StageStore.inOrder(read).stream().map(Stored::value).toList(),
                tasks,
                episodes,
                tells,
                ShotStore.TABLE.values(read),
                materials,
                LedgerEntryStore.TABLE.values(read),
                onOrder(read, materials),
                first,
                hours.stream().mapToLong(entry -> entry.hours().minutes()).sum(),
                new Index(
                        tasks.stream()
                                .filter(task -> task.dropped().isEmpty())
                                .collect(Collectors.groupingBy(
                                        task -> task.stage().folded())),
                        firsts(tasks, task -> Optional.of(task.id().value())),
                        firsts(materials, line -> Optional.of(line.id().value())),
                        firsts(episodes, episode -> episode.published().or(episode::slot)),
                        tells.stream()
                                .collect(Collectors.groupingBy(
                                        tell -> tell.episode().folded()))));
    }

    /** What is still to be paid for what was ordered and has not come. */
    private static Money onOrder(Read read, List<Material> materials) {
        boolean any = materials.stream()
                .anyMatch(line -> line.ordered().isPresent() && line.received().isEmpty());
        return any
                ? StageCosts.all(read).values().stream()
                        .map(StageCosts::committed)
                        .reduce(Money.ZERO, Money::plus)
                : Money.ZERO;
    }

    private static <K, V> Map<K, V> firsts(List<V> all, Function<V, Optional<K>> key) {
        Map<K, V> firsts = new HashMap<>();
        all.forEach(one -> key.apply(one).ifPresent(k -> firsts.putIfAbsent(k, one)));
        return firsts;
    }

    List<Task> tasksOf(Stage stage) {
        return index.tasksOf().getOrDefault(stage.id().folded(), List.of());
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
        return Optional.ofNullable(index.task().get(id));
    }

    Optional<Material> material(String id) {
        return Optional.ofNullable(index.material().get(id));
    }

    /** The episode planned for that slot, or published on it. */
    Optional<Episode> onSlot(LocalDate day) {
        return Optional.ofNullable(index.onSlot().get(day));
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
        return index.told().getOrDefault(episode.id().folded(), List.of());
    }
}
