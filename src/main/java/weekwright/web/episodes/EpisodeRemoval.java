package weekwright.web.episodes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.HoursEntryStore;
import weekwright.build.Said;
import weekwright.build.WeekLineStore;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.db.Write;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.MusicStore;
import weekwright.episodes.ReleaseStore;
import weekwright.episodes.RollStore;
import weekwright.episodes.SegmentStore;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
import weekwright.episodes.StepByStore;
import weekwright.episodes.TellStore;
import weekwright.notes.NoteStore;
import weekwright.render.Formats;

/**
 * An episode with all that hangs on it, as it is removed. What is only planned goes with it. What happened stays: an
 * episode that is published, or has hours, a captured shot or a build note, is not removed.
 */
final class EpisodeRemoval {
    private EpisodeRemoval() {}

    /**
     * What removing an episode means.
     *
     * @param goes what goes with it, in words
     * @param held what happened on it, so that it cannot be removed; empty where it can
     */
    record Going(List<String> goes, List<String> held) {}

    static Going of(Read read, Episode episode) {
        String id = episode.id().value();
        List<String> goes = new ArrayList<>();
        some(goes, TellStore.ofEpisode(read, episode.id()).size(), "task that it tells", "tasks that it tells");
        some(goes, ShotStore.ofEpisode(read, episode.id()).size(), "shot", "shots");
        some(
                goes,
                WeekLineStore.TABLE.where(read, "episode", id).size(),
                "line on week sheets",
                "lines on week sheets");
        some(
                goes,
                SegmentStore.ofEpisode(read, episode.id()).size(),
                "part of its running order",
                "parts of its running order");
        some(goes, MusicStore.ofEpisode(read, episode.id()).size(), "piece of music", "pieces of music");
        some(goes, ReleaseStore.ofEpisode(read, episode.id()).size(), "release", "releases");
        return new Going(goes, held(read, episode));
    }

    private static List<String> held(Read read, Episode episode) {
        String id = episode.id().value();
        List<String> held = new ArrayList<>();
        episode.published().ifPresent(day -> held.add("been published on " + Said.day(day)));
        int minutes = HoursEntryStore.TABLE.where(read, "episode", id).stream()
                .map(Stored::value)
                .mapToInt(entry -> entry.hours().minutes() * entry.peopleOrDefault())
                .sum();
        if (minutes > 0) {
            held.add(Formats.hoursLong(minutes) + " logged");
        }
        long captured = ShotStore.ofEpisode(read, episode.id()).stream()
                .map(Stored::value)
                .map(Shot::captured)
                .filter(Optional::isPresent)
                .count();
        some(held, captured, "captured shot", "captured shots");
        some(held, NoteStore.TABLE.where(read, "episode", id).size(), "build note", "build notes");
        return held;
    }

    private static void some(List<String> list, long count, String one, String several) {
        if (count > 0) {
            list.add(Said.count(count, one, several));
        }
    }

    /** @throws Rejected where something happened on it */
    static void remove(Write write, Stored<Episode> episode, long version) throws Rejected, Stale {
        List<String> held = held(write, episode.value());
        if (!held.isEmpty()) {
            throw new Rejected(Problem.fault(
                    "",
                    episode.value().title(),
                    "has " + Said.list(held),
                    "move it to another slot, or make it a standby, instead"));
        }
        Id id = episode.value().id();
        deleteAll(write, TellStore.TABLE, TellStore.ofEpisode(write, id));
        deleteAll(write, SegmentStore.TABLE, SegmentStore.ofEpisode(write, id));
        deleteAll(write, MusicStore.TABLE, MusicStore.ofEpisode(write, id));
        deleteAll(write, ReleaseStore.TABLE, ReleaseStore.ofEpisode(write, id));
        deleteAll(write, StepByStore.TABLE, StepByStore.ofEpisode(write, id));
        deleteAll(write, RollStore.TABLE, RollStore.ofEpisode(write, id));
        deleteAll(write, ShotStore.TABLE, ShotStore.ofEpisode(write, id));
        deleteAll(write, WeekLineStore.TABLE, WeekLineStore.TABLE.where(write, "episode", id.value()));
        EpisodeStore.TABLE.delete(write, episode.row(), version);
    }

    private static <R extends Record> void deleteAll(Write write, Table<R> table, List<Stored<R>> rows) throws Stale {
        for (Stored<R> row : rows) {
            table.delete(write, row.row(), row.version());
        }
    }
}
