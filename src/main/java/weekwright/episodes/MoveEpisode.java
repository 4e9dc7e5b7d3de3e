package weekwright.episodes;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.Said;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * Moves an episode to another slot, or lets two change their slots. A standby that is given a slot becomes a side story, for
 * a standby has none (rule 103).
 */
public final class MoveEpisode {
    private MoveEpisode() {}

    /** What would be changed: each episode as it would be. */
    public record Changes(List<Stored<Episode>> episodes) {}

    /** @throws Rejected where the slot is past, no slot, skipped or taken, or the episode is published */
    public static void move(Write write, Shown shown, LocalDate to, LocalDate today) throws Rejected, Stale {
        keep(write, moved(write, shown(write, shown), to, today));
    }

    /** As {@link #move}, but the episode that has the slot gets this one's. */
    public static void swap(Write write, Shown shown, LocalDate to, LocalDate today) throws Rejected, Stale {
        keep(write, swapped(write, shown(write, shown), to, today));
    }

    /** What {@link #move} would keep. */
    public static Changes moved(Read read, Stored<Episode> episode, LocalDate to, LocalDate today) throws Rejected {
        Problems problems = new Problems();
        check(read, episode.value(), to, today, problems);
        taken(read, episode, to)
                .ifPresent(other -> problems.fault(
                        "slot",
                        Said.day(to),
                        "is the slot of \"" + other.value().title() + "\" already",
                        other.value().published().isPresent()
                                        || episode.value().slot().isEmpty()
                                ? "choose another"
                                : "swap the two, or move that one first"));
        Faults.refuse(problems);
        return new Changes(List.of(on(episode, Optional.of(to))));
    }

    /** What {@link #swap} would keep: this episode first. */
    public static Changes swapped(Read read, Stored<Episode> episode, LocalDate to, LocalDate today) throws Rejected {
        Problems problems = new Problems();
        check(read, episode.value(), to, today, problems);
        Optional<Stored<Episode>> other = taken(read, episode, to);
        if (other.isEmpty()) {
            problems.fault("slot", Said.day(to), "has no episode to swap with", "move this one there");
        } else if (other.get().value().published().isPresent()) {
            problems.fault(
                    "slot",
                    Said.day(to),
                    "is the slot of \"" + other.get().value().title() + "\", which is published",
                    "choose another");
        }
        Optional<LocalDate> own = episode.value().slot();
        if (own.isEmpty()) {
            problems.fault("", episode.value().title(), "has no slot to give in return", "move that one first");
        } else if (own.get().isBefore(today)) {
            problems.fault(
                    "",
                    Said.day(own.get()),
                    "is past, and would be the slot of the other",
                    "move that one to a coming slot first");
        }
        Faults.refuse(problems);
        return new Changes(List.of(on(episode, Optional.of(to)), on(other.orElseThrow(), own)));
    }

    /** The episode not yet published whose slot a day is. */
    public static Optional<Stored<Episode>> on(Read read, LocalDate slot) {
        return EpisodeStore.TABLE.list(read).stream()
                .filter(one ->
                        one.value().published().isEmpty() && one.value().slot().equals(Optional.of(slot)))
                .findFirst();
    }

    private static Stored<Episode> on(Stored<Episode> stored, Optional<LocalDate> slot) {
        Episode episode = EpisodeStore.TABLE.shape().with(stored.value(), "slot", slot);
        if (episode.kindOrDefault() == Episode.Kind.STANDBY) {
            episode = EpisodeStore.TABLE.shape().with(episode, "kind", Optional.of(Episode.Kind.SIDE));
        }
        return new Stored<>(stored.row(), stored.version(), episode);
    }

    private static Stored<Episode> shown(Read read, Shown shown) throws Stale {
        Optional<Stored<Episode>> now = EpisodeStore.TABLE.find(read, shown.row());
        if (now.isEmpty() || now.get().version() != shown.version()) {
            throw new Stale(EpisodeStore.TABLE.name(), shown.row(), now.map(stored -> stored));
        }
        return now.get();
    }

    private static void check(Read read, Episode episode, LocalDate to, LocalDate today, Problems problems) {
        Settings settings = SettingsStore.get(read);
        if (episode.published().isPresent()) {
            problems.fault("", episode.title(), "is published", "what is past stays");
        }
        if (episode.slot().equals(Optional.of(to))) {
            problems.fault("slot", Said.day(to), "is its slot already", "choose another");
        }
        if (to.isBefore(today)) {
            problems.fault("slot", Said.day(to), "is past", "choose a slot from today on");
        }
        if (settings.skip().contains(to)) {
            String why = SkippedSlotStore.of(read, to)
                    .map(one -> one.value().reason())
                    .filter(reason -> !reason.isEmpty())
                    .map(reason -> ": " + reason)
                    .orElse("");
            problems.fault("slot", Said.day(to), "is skipped" + why, "take the skipping back first, or choose another");
        } else if (!SlotRules.isSlot(to, settings)) {
            problems.fault("slot", Said.day(to), "is no day on which episodes come out", "choose a slot");
        }
    }

    /** Another episode of that slot, published or not, or one published on it without a slot of its own. */
    static Optional<Stored<Episode>> taken(Read read, Stored<Episode> episode, LocalDate slot) {
        return EpisodeStore.TABLE.list(read).stream()
                .filter(other -> other.row() != episode.row())
                .filter(other -> other.value().slot().equals(Optional.of(slot))
                        || other.value().published().equals(Optional.of(slot)))
                .findFirst();
    }

    private static void keep(Write write, Changes changes) throws Stale {
        for (Stored<Episode> one : changes.episodes()) {
            EpisodeStore.TABLE.update(write, one.row(), one.version(), one.value());
        }
    }
}
