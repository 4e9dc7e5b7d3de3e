package weekwright.web.episodes;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import weekwright.base.Codec;
import weekwright.base.Id;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.Footage;
import weekwright.episodes.Music;
import weekwright.episodes.MusicStore;
import weekwright.episodes.Release;
import weekwright.episodes.ReleaseStore;
import weekwright.episodes.SegmentStore;
import weekwright.episodes.ShotStore;
import weekwright.episodes.Step;
import weekwright.episodes.StepByStore;
import weekwright.episodes.Tell;
import weekwright.episodes.TellStore;
import weekwright.forecast.Forecast;
import weekwright.render.Formats;
import weekwright.render.Frame;
import weekwright.web.kit.Request;
import weekwright.web.parts.Lands;

/** What the page of an episode says of its parts, music, steps, told tasks, shots and figures. */
final class EpisodeLines {
    private EpisodeLines() {}

    static List<EpisodePage.Part> parts(Read read, Episode episode) {
        return SegmentStore.ofEpisode(read, episode.id()).stream()
                .map(Stored::value)
                .map(part -> new EpisodePage.Part(
                        part.title(),
                        part.minutes()
                                .map(length -> length.clock() + Formats.NBSP + "min")
                                .orElse("")))
                .toList();
    }

    static List<String> rights(Read read, Episode episode, Formats formats) {
        List<String> rights = new ArrayList<>();
        for (Stored<Music> row : MusicStore.ofEpisode(read, episode.id())) {
            Music music = row.value();
            rights.add("“" + music.title() + "”, " + music.licence()
                    + (music.source().isEmpty() ? "" : ", " + music.source())
                    + music.until()
                            .map(day -> ", until " + formats.dateLong(day))
                            .orElse(""));
        }
        for (Stored<Release> row : ReleaseStore.ofEpisode(read, episode.id())) {
            Release release = row.value();
            rights.add(release.who() + ": "
                    + release.got()
                            .map(day -> "consent got " + formats.dateLong(day))
                            .orElse("consent not got yet")
                    + (release.note().isEmpty() ? "" : ", " + release.note()));
        }
        return rights;
    }

    static List<EpisodePage.StepLine> steps(Read read, Episode episode) {
        List<EpisodePage.StepLine> lines = new ArrayList<>();
        Map<Step, String> by = new EnumMap<>(Step.class);
        Function<Id, String> name = id -> CrewMemberStore.TABLE
                .find(read, id)
                .map(one -> one.value().name())
                .orElse("");
        StepByStore.ofEpisode(read, episode.id())
                .forEach(
                        row -> by.put(row.value().step(), name.apply(row.value().crew())));
        String editor = episode.editor().map(name).orElse("");
        Step last = null;
        for (Step step : Step.values()) {
            last = step.day(episode).isPresent() ? step : last;
        }
        for (Step step : Step.values()) {
            boolean edits = step != Step.FOOTAGE_COMPLETE && step != Step.PUBLISHED;
            String who = step.day(episode).isPresent() ? by.getOrDefault(step, "") : edits ? editor : "";
            lines.add(new EpisodePage.StepLine(Codec.word(step), step.words(), step.day(episode), who, step == last));
        }
        return lines;
    }

    static List<EpisodePage.TellLine> tells(Read read, Episode episode, Optional<Forecast> forecast, Formats formats) {
        List<EpisodePage.TellLine> lines = new ArrayList<>();
        for (Stored<Tell> tell : TellStore.ofEpisode(read, episode.id())) {
            Optional<Task> task =
                    TaskStore.TABLE.find(read, tell.value().task()).map(Stored::value);
            task.ifPresent(one -> lines.add(new EpisodePage.TellLine(
                    one.id().value(),
                    one.title(),
                    tell.value()
                            .share()
                            .filter(share -> share.doubleValue() < 1)
                            .map(share -> Math.round(share.doubleValue() * 100) + " % of it")
                            .orElse("all of it"),
                    one.done().isPresent() ? "" : EpisodeSteps.far(read, one),
                    Lands.brief(
                            one.done(),
                            forecast,
                            forecast.flatMap(f -> f.task(one.id().value())).map(Forecast.Task::landing),
                            formats))));
        }
        return lines;
    }

    static List<EpisodePage.ShotLine> shots(Read read, Episode episode) {
        return ShotStore.ofEpisode(read, episode.id()).stream()
                .map(stored -> new EpisodePage.ShotLine(
                        stored.row(),
                        stored.version(),
                        stored.value().what(),
                        stored.value().size().map(Codec::word).orElse("wide"),
                        stored.value().must(),
                        stored.value().once(),
                        stored.value().captured(),
                        stored.value().clip(),
                        stored.value().calledOff(),
                        stored.value().missed()))
                .toList();
    }

    /** "9½ hours of 20 left, Wren": what the editing is thought to take less what is logged. */
    private static String editing(Request request, Read read, Episode episode) {
        int all = episode.editLikely().orElse(request.settings().editLikely()).minutes();
        int logged = HoursEntryStore.TABLE.where(read, "episode", episode.id().value()).stream()
                .map(Stored::value)
                .filter(entry -> entry.asOrDefault() == HoursEntry.As.EDIT)
                .mapToInt(entry -> entry.hours().minutes() * entry.peopleOrDefault())
                .sum();
        if (episode.cut().isPresent()) {
            return Formats.hoursLong(logged) + " logged";
        }
        int left = Math.max(0, all - logged);
        String who = episode.editor()
                .flatMap(id -> CrewMemberStore.TABLE.find(read, id))
                .map(one -> one.value().name())
                .orElseGet(() -> editors(request));
        return (left == 0 ? "none" : Formats.hoursLong(left)) + " left of " + Formats.hoursLong(all) + ", " + who;
    }

    /** "Tomas or Wren": those who have the trade, where nobody is named. */
    private static String editors(Request request) {
        List<String> names = request.crew().stream()
                .filter(one -> one.trades().has("edit"))
                .map(CrewMember::name)
                .toList();
        return names.isEmpty() ? "nobody has the trade edit" : String.join(" or ", names);
    }

    static List<Frame.Cell> facts(Request request, Read read, Episode episode) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("Kind", Codec.word(episode.kindOrDefault()));
        episode.minutes().ifPresent(minutes -> facts.put("Length", EpisodesFootagePage.minutes(minutes.value())));
        facts.put("Editing", editing(request, read, episode));
        facts.put(
                "Footage",
                EpisodesFootagePage.words(
                        Footage.of(read), episode, request.settings().targetMinutes()));
        if (!episode.address().isEmpty()) {
            facts.put("Address", episode.address());
        }
        episode.views().ifPresent(views -> facts.put("Views", Formats.grouped(views)));
        if (!episode.heldBack().isEmpty()) {
            facts.put("Held back", episode.heldBack());
        }
        return facts.entrySet().stream()
                .map(fact -> new Frame.Cell(fact.getKey(), fact.getValue()))
                .toList();
    }
}
