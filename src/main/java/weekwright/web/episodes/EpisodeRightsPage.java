package weekwright.web.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.build.Settings;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeRules;
import weekwright.episodes.KeepParts;
import weekwright.episodes.Music;
import weekwright.episodes.MusicStore;
import weekwright.episodes.Release;
import weekwright.episodes.ReleaseStore;
import weekwright.episodes.Rights;
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
        Formats formats = request.formats();
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
        Rights rights = Rights.of(read, episode, formats.today());
        List<String> warnings = new ArrayList<>();
        for (Music music : rights.ending()) {
            LocalDate until = music.until().orElseThrow();
            warnings.add("The licence of “" + music.title() + "” "
                    + (until.isBefore(formats.today())
                            ? "ended on " + formats.dateLong(until) + formats.comingOrGone(until) + "."
                            : "ends on " + formats.dateLong(until) + formats.comingOrGone(until)
                                    + ", before the episode is out."));
        }
        if (!rights.missing().isEmpty()) {
            warnings.add("The consent of "
                    + Formats.list(rights.missing().stream().map(Release::who).toList()) + " is still to be got"
                    + episode.slot()
                            .map(day -> " before " + formats.date(day) + formats.comingOrGone(day))
                            .orElse("") + ".");
        }
        return warnings;
    }

    /** An episode that is soon out, and what it still needs for that. */
    public record Owed(String id, String title, String said) {}

    /** Of the episodes that are ready, or whose slot lies within the days in which they are edited. */
    static List<Owed> owed(Read read, List<Episode> all, Settings settings, Formats formats) {
        LocalDate soon = formats.today().plusDays(settings.editWindowDays());
        List<Owed> owed = new ArrayList<>();
        for (Episode episode : all) {
            boolean near = episode.cut().isPresent()
                    || episode.slot().filter(slot -> !slot.isAfter(soon)).isPresent();
            if (near && episode.published().isEmpty()) {
                List<String> warnings = warnings(read, episode, formats);
                if (!warnings.isEmpty()) {
                    owed.add(new Owed(episode.id().value(), episode.title(), String.join(" ", warnings)));
                }
            }
        }
        return owed;
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
            return Saved.to("/episodes/" + id).saying("Music and releases are saved.");
        });
    }
}
