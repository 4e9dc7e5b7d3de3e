package weekwright.episodes;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.DateRules;
import weekwright.build.Faults;
import weekwright.build.References;
import weekwright.build.Said;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.build.Shown;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Adds an episode or changes one, with all that it tells. */
public final class SaveEpisode {
    private SaveEpisode() {}

    /** The episode as it was kept, and what was odd but possible. */
    public record Saved(Stored<Episode> episode, List<Problem> remarks) {}

    /**
     * @param shown the row that is changed; empty adds
     * @param tells all that it tells, a task once; a fault of the i-th stands on {@code task.i}
     * @param today in the project's zone
     */
    public static Saved save(Write write, Optional<Shown> shown, Episode episode, List<Tell> tells, LocalDate today)
            throws Rejected, Stale {
        Problems problems = check(write, shown, episode, tells, today);
        Faults.refuse(problems);
        Stored<Episode> kept = shown.isPresent()
                ? EpisodeStore.TABLE.update(
                        write, shown.get().row(), shown.get().version(), episode)
                : EpisodeStore.TABLE.insert(write, episode);
        keep(write, episode, tells);
        return new Saved(kept, problems.remarks());
    }

    /** Everything that the rules say of such an episode; of the i-th that it tells on {@code task.i}. */
    public static Problems check(Read read, Optional<Shown> shown, Episode episode, List<Tell> tells, LocalDate today) {
        Problems problems = new Problems();
        Settings settings = SettingsStore.get(read);
        EpisodeRules.check(episode, problems);
        DateRules.check(EpisodeStore.TABLE.shape(), episode, settings.project().started(), problems);
        References.check(read, EpisodeStore.TABLE.shape(), episode, problems);
        Optional<Episode> before =
                shown.flatMap(s -> EpisodeStore.TABLE.find(read, s.row())).map(Stored::value);
        slot(episode, before.flatMap(Episode::slot), settings, today, problems);
        List<Episode> others = EpisodeStore.TABLE.list(read).stream()
                .filter(other -> shown.map(s -> s.row() != other.row()).orElse(true))
                .map(Stored::value)
                .toList();
        taken(others, Episode::slot, episode, problems, "slot", Said::day, "choose another date");
        taken(others, Episode::number, episode, problems, "number", String::valueOf, "choose another number");
        tells(read, episode, tells, problems);
        return problems;
    }

    private static <T> void taken(
            List<Episode> others,
            Function<Episode, Optional<T>> of,
            Episode episode,
            Problems problems,
            String column,
            Function<T, String> words,
            String remedy) {
        others.stream()
                .filter(other ->
                        of.apply(episode).isPresent() && of.apply(other).equals(of.apply(episode)))
                .findFirst()
                .ifPresent(other -> problems.fault(
                        column,
                        words.apply(of.apply(episode).orElseThrow()),
                        "is the " + column + " of \"" + other.title() + "\" already",
                        remedy));
    }

    /** A slot that is past is no slot to be given; the episode that missed its own keeps it until it is moved or out. */
    private static void slot(
            Episode episode, Optional<LocalDate> before, Settings settings, LocalDate today, Problems problems) {
        if (episode.published().isPresent() || episode.slot().isEmpty()) {
            return;
        }
        LocalDate slot = episode.slot().get();
        boolean saidAlready =
                problems.faults().stream().anyMatch(fault -> fault.column().equals("slot"));
        if (saidAlready) {
            return;
        }
        if (slot.isBefore(today) && !episode.slot().equals(before)) {
            problems.fault(
                    "slot",
                    Said.day(slot),
                    "is past, and the episode is not published",
                    "choose a day from " + Said.day(today)
                            + " on; for a film that is out leave it empty, and mark then when it came out");
        } else if (!SlotRules.isSlot(slot, settings)) {
            problems.remark("slot", Said.day(slot), "is no day on which episodes come out", "");
        } else if (slot.isBefore(today)) {
            problems.remark("slot", Said.day(slot), "is past and the episode is not published", "");
        }
    }

    /** What is dropped cannot be told; a published film keeps what it told before the crew dropped it. */
    private static void tells(Read read, Episode episode, List<Tell> tells, Problems problems) {
        Set<String> kept = new HashSet<>();
        if (episode.published().isPresent()) {
            TellStore.ofEpisode(read, episode.id())
                    .forEach(tell -> kept.add(tell.value().task().folded()));
        }
        for (int i = 0; i < tells.size(); i++) {
            Tell tell = tells.get(i);
            Optional<Task> task = TaskStore.TABLE.find(read, tell.task()).map(Stored::value);
            if (task.isEmpty()) {
                problems.fault(
                        "task." + i, tell.task().value(), "is no task of this project", "choose one of the list");
            } else if (task.get().dropped().isPresent()
                    && !kept.contains(tell.task().folded())) {
                problems.fault(
                        "task." + i,
                        task.get().title(),
                        "is dropped, so there is nothing to tell of it",
                        "choose another task, empty the row, or take the task up again");
            }
        }
    }

    private static void keep(Write write, Episode episode, List<Tell> tells) throws Stale {
        Map<String, Tell> wanted = new HashMap<>();
        tells.forEach(tell -> wanted.put(tell.task().folded(), tell));
        for (Stored<Tell> row : TellStore.ofEpisode(write, episode.id())) {
            Tell tell = wanted.remove(row.value().task().folded());
            if (tell == null) {
                TellStore.TABLE.delete(write, row.row(), row.version());
            } else if (!tell.share().equals(row.value().share())) {
                TellStore.TABLE.update(
                        write,
                        row.row(),
                        row.version(),
                        TellStore.TABLE.shape().with(row.value(), "share", tell.share()));
            }
        }
        for (Tell tell : tells) {
            if (wanted.containsKey(tell.task().folded())) {
                TellStore.TABLE.insert(write, new Tell(episode.id(), tell.task(), tell.share()));
            }
        }
    }
}
