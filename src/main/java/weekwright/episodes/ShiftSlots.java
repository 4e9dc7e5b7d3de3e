package weekwright.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.Said;
import weekwright.build.SettingsStore;
import weekwright.build.ShiftDates;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Moves the slots of episodes not yet published, from a day on, by whole slots. */
public final class ShiftSlots {
    private ShiftSlots() {}

    /** @param first the day from which on they move */
    public static List<ShiftDates.Move> moves(Read read, LocalDate first, int days) {
        return planned(read, first).stream()
                .map(episode -> new ShiftDates.Move(
                        "Slot of \u201c" + episode.value().title() + "\u201d",
                        episode.value().slot().orElseThrow(),
                        episode.value().slot().get().plusDays(days)))
                .toList();
    }

    private static List<Stored<Episode>> planned(Read read, LocalDate first) {
        return EpisodeStore.TABLE.list(read).stream()
                .filter(episode -> episode.value().published().isEmpty()
                        && episode.value()
                                .slot()
                                .map(day -> !day.isBefore(first))
                                .orElse(false))
                .toList();
    }

    /** @throws Rejected where the days are no whole slots, or a slot is taken by an episode that stays */
    public static void shift(Write write, LocalDate first, int days) throws Rejected, Stale {
        int weeks = SettingsStore.get(write).everyWeeks();
        if (days % (7 * weeks) != 0) {
            throw new Rejected(Problem.fault(
                    "days",
                    String.valueOf(days),
                    "is not a number of whole slots, which are " + 7 * weeks + " days apart",
                    "write " + 7 * weeks + " or " + 14 * weeks + ", or leave the episodes where they are"));
        }
        List<Stored<Episode>> moving = planned(write, first);
        Set<Long> rows = moving.stream().map(Stored::row).collect(Collectors.toSet());
        List<Problem> faults = new ArrayList<>();
        for (Stored<Episode> episode : moving) {
            LocalDate to = episode.value().slot().orElseThrow().plusDays(days);
            EpisodeStore.TABLE.list(write).stream()
                    .filter(other ->
                            !rows.contains(other.row()) && other.value().slot().equals(Optional.of(to)))
                    .forEach(other -> faults.add(Problem.fault(
                            "slots",
                            episode.value().title(),
                            "would come on " + Said.day(to) + ", the slot of "
                                    + other.value().title(),
                            "move that one first, or leave the episodes where they are")));
        }
        if (!faults.isEmpty()) {
            throw new Rejected(faults);
        }
        for (Stored<Episode> episode : moving) {
            EpisodeStore.TABLE.update(
                    write,
                    episode.row(),
                    episode.version(),
                    EpisodeStore.TABLE
                            .shape()
                            .with(
                                    episode.value(),
                                    "slot",
                                    episode.value().slot().map(day -> day.plusDays(days))));
        }
    }
}
