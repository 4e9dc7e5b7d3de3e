package weekwright.web.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeRules;
import weekwright.episodes.KeepParts;
import weekwright.episodes.Music;
import weekwright.episodes.MusicStore;
import weekwright.episodes.Release;
import weekwright.episodes.ReleaseStore;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Music of an episode with its licence, and whose consent it needs. */
public final class EpisodeRightsPage implements Page {
    private static final PartList<Music> MUSIC =
            new PartList<>("music", Music.class, "", List.of("title", "licence", "source", "until"));
    private static final PartList<Release> RELEASES =
            new PartList<>("releases", Release.class, "", List.of("who", "got", "note"));

    /** @param warnings what is missing or ends too soon */
    public record View(
            Form form,
            String id,
            String title,
            List<String> warnings,
            List<Integer> music,
            List<Integer> releases,
            String musicSeen,
            String releasesSeen) {}

    @Override
    public View show(Request request) {
        Episode episode = EpisodePage.episode(request).value();
        Formats formats = new Formats(request.settings().project().currency(), request.today());
        return request.read(read -> {
            List<Stored<Music>> music = MusicStore.ofEpisode(read, episode.id());
            List<Stored<Release>> releases = ReleaseStore.ofEpisode(read, episode.id());
            int digits = request.settings().moneyDigits();
            Form form = request.form("");
            if (!request.wasRefused("")) {
                form = MUSIC.filled(form, music.stream().map(Stored::value).toList(), digits);
                form = RELEASES.filled(
                        form, releases.stream().map(Stored::value).toList(), digits);
            }
            return new View(
                    form,
                    episode.id().value(),
                    episode.title(),
                    warnings(read, episode, formats),
                    MUSIC.rows(form),
                    RELEASES.rows(form),
                    KeepParts.mark(music),
                    KeepParts.mark(releases));
        });
    }

    /** Of music whose licence has ended or ends before the episode is out, and of consents not got. */
    static List<String> warnings(Read read, Episode episode, Formats formats) {
        LocalDate out = episode.published()
                .or(episode::slot)
                .filter(day -> day.isAfter(formats.today()))
                .orElse(formats.today());
        List<String> warnings = new ArrayList<>();
        for (Stored<Music> row : MusicStore.ofEpisode(read, episode.id())) {
            Music music = row.value();
            music.until()
                    .filter(until -> until.isBefore(out))
                    .ifPresent(until -> warnings.add("The licence of “" + music.title() + "” "
                            + (until.isBefore(formats.today())
                                    ? "ended on " + formats.dateLong(until) + "."
                                    : "ends on " + formats.dateLong(until) + ", before the episode is out.")));
        }
        if (episode.published().isEmpty()) {
            List<String> missing = ReleaseStore.ofEpisode(read, episode.id()).stream()
                    .map(Stored::value)
                    .filter(release -> release.got().isEmpty())
                    .map(Release::who)
                    .toList();
            if (!missing.isEmpty()) {
                warnings.add("The consent of " + Formats.list(missing) + " is still to be got"
                        + episode.slot()
                                .map(day -> " before " + formats.date(day))
                                .orElse("") + ".");
            }
        }
        return warnings;
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        String musicSeen = form.text("music_seen");
        String releasesSeen = form.text("releases_seen");
        Optional<Answer> again = MUSIC.again(form).or(() -> RELEASES.again(form));
        if (again.isPresent()) {
            return again.get();
        }
        Episode episode = EpisodePage.episode(request).value();
        String id = episode.id().value();
        List<Music> music = MUSIC.read(form, id, EpisodeRules::check);
        List<Release> releases = RELEASES.read(form, id, (release, problems) -> {
            EpisodeRules.check(release, problems);
            release.got()
                    .filter(day -> day.isAfter(request.today()))
                    .ifPresent(day ->
                            problems.fault("got", day.toString(), "is after today", "write it down once you have it"));
        });
        return request.save(write -> {
            KeepParts.keep(write, MusicStore.TABLE, musicSeen, MusicStore.ofEpisode(write, episode.id()), music);
            KeepParts.keep(
                    write, ReleaseStore.TABLE, releasesSeen, ReleaseStore.ofEpisode(write, episode.id()), releases);
            return Saved.to("/episodes/" + id).saying("Music and releases are kept.");
        });
    }
}
