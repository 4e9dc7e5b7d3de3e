package weekwright.episodes;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Id;
import weekwright.base.Quantity;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.db.Read;

/**
 * How much was filmed, and what it made. Of a task and a day the clips count; where none is in the log, the footage that
 * stands with the hours. Footage of a task belongs to the first episode that tells it and comes out on that day or later,
 * else to the last that tells it.
 */
public final class Footage {
    private final Map<String, BigDecimal> ofTask = new HashMap<>();
    private final Map<String, BigDecimal> ofEpisode = new HashMap<>();
    private final List<Episode> measured = new ArrayList<>();

    private record Key(String task, LocalDate date) {}

    private Footage() {}

    public static Footage of(Read read) {
        Footage footage = new Footage();
        Map<Key, BigDecimal> days = new HashMap<>();
        Set<Key> byClip = new HashSet<>();
        for (Clip clip : ClipStore.TABLE.values(read)) {
            if (clip.task().isPresent() && clip.minutes().isPresent()) {
                Key key = new Key(clip.task().get().folded(), clip.date());
                byClip.add(key);
                days.merge(key, clip.minutes().get().value(), BigDecimal::add);
            }
        }
        for (HoursEntry entry : HoursEntryStore.TABLE.values(read)) {
            if (entry.task().isPresent() && entry.footageMinutes().isPresent()) {
                Key key = new Key(entry.task().get().folded(), entry.date());
                if (!byClip.contains(key)) {
                    days.merge(key, entry.footageMinutes().get().value(), BigDecimal::add);
                }
            }
        }
        Map<String, Episode> episodes = new HashMap<>();
        EpisodeStore.TABLE.values(read).forEach(one -> episodes.put(one.id().folded(), one));
        Map<String, List<Episode>> tellers = new HashMap<>();
        for (Tell tell : TellStore.TABLE.values(read)) {
            Episode episode = episodes.get(tell.episode().folded());
            if (episode != null) {
                tellers.computeIfAbsent(tell.task().folded(), task -> new ArrayList<>())
                        .add(episode);
            }
        }
        tellers.values().forEach(list -> list.sort(Comparator.comparing(Footage::out)));
        days.forEach((key, minutes) -> {
            footage.ofTask.merge(key.task(), minutes, BigDecimal::add);
            List<Episode> told = tellers.getOrDefault(key.task(), List.of());
            if (!told.isEmpty()) {
                Episode teller = told.stream()
                        .filter(one -> !out(one).isBefore(key.date()))
                        .findFirst()
                        .orElse(told.get(told.size() - 1));
                footage.ofEpisode.merge(teller.id().folded(), minutes, BigDecimal::add);
            }
        });
        episodes.values().stream()
                .filter(one -> one.published().isPresent()
                        && one.minutes()
                                .filter(minutes -> minutes.value().signum() > 0)
                                .isPresent()
                        && footage.ofEpisode.containsKey(one.id().folded()))
                .forEach(footage.measured::add);
        return footage;
    }

    /** The day on which an episode comes out; the end of time for a standby. */
    private static LocalDate out(Episode episode) {
        return episode.published().or(episode::slot).orElse(LocalDate.MAX);
    }

    /** Minutes of footage of a task; 0 where none is in the log. */
    public BigDecimal ofTask(Id task) {
        return ofTask.getOrDefault(task.folded(), BigDecimal.ZERO);
    }

    /** Minutes of footage in hand for an episode; 0 where none is in the log. */
    public BigDecimal ofEpisode(Id episode) {
        return ofEpisode.getOrDefault(episode.folded(), BigDecimal.ZERO);
    }

    /** How many published episodes the ratio rests on. */
    public int measured() {
        return measured.size();
    }

    /** Minutes of footage for each finished minute, to one decimal; empty while no published episode has both. */
    public Optional<BigDecimal> ratio() {
        if (measured.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal shot = BigDecimal.ZERO;
        BigDecimal finished = BigDecimal.ZERO;
        for (Episode episode : measured) {
            shot = shot.add(ofEpisode(episode.id()));
            finished = finished.add(episode.minutes().orElseThrow().value());
        }
        return Optional.of(shot.divide(finished, 1, RoundingMode.HALF_UP));
    }

    /** Minutes of footage that an episode of this length usually takes, to whole minutes. */
    public Optional<BigDecimal> usual(Quantity finished) {
        return ratio().map(ratio -> ratio.multiply(finished.value()).setScale(0, RoundingMode.HALF_UP));
    }
}
