package weekwright.episodes;

import java.time.LocalDate;
import java.util.List;
import weekwright.base.Problems;
import weekwright.build.Said;
import weekwright.db.Read;
import weekwright.db.Stored;

/**
 * What stands in the way of showing an episode.
 *
 * @param ending music whose licence ends before the day on which it is out
 * @param missing consents not got yet; none of a published episode
 */
public record Rights(List<Music> ending, List<Release> missing) {

    /** @param today in the project's zone; an episode whose day is past counts as out today */
    public static Rights of(Read read, Episode episode, LocalDate today) {
        LocalDate out = episode.published()
                .or(episode::slot)
                .filter(day -> day.isAfter(today))
                .orElse(today);
        return new Rights(
                MusicStore.ofEpisode(read, episode.id()).stream()
                        .map(Stored::value)
                        .filter(music -> music.until()
                                .filter(until -> until.isBefore(out))
                                .isPresent())
                        .toList(),
                ReleaseStore.ofEpisode(read, episode.id()).stream()
                        .map(Stored::value)
                        .filter(release ->
                                release.got().isEmpty() && episode.published().isEmpty())
                        .toList());
    }

    /** Says it of an episode that is about to be shown; that is for the crew to decide. */
    void remark(Problems problems) {
        ending.forEach(music -> problems.remark(
                "",
                music.title(),
                "is music whose licence ends on " + Said.day(music.until().orElseThrow()),
                ""));
        missing.forEach(release -> problems.remark("", release.who(), "is a consent that is not got yet", ""));
    }
}
