package weekwright.web.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import weekwright.base.Codec;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.Shown;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.CallOffShot;
import weekwright.episodes.CaptureShot;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.Footage;
import weekwright.episodes.MarkEpisode;
import weekwright.episodes.Music;
import weekwright.episodes.MusicStore;
import weekwright.episodes.Release;
import weekwright.episodes.ReleaseStore;
import weekwright.episodes.SegmentStore;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
import weekwright.episodes.Step;
import weekwright.episodes.StepByStore;
import weekwright.episodes.Tell;
import weekwright.episodes.TellStore;
import weekwright.forecast.Forecast;
import weekwright.render.Chances;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.render.Frame;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;
import weekwright.web.parts.Lands;
import weekwright.web.parts.Outlook;

/** One episode: its steps to mark, what it tells, its shots to capture. */
public final class EpisodePage implements Page {

    /**
     * @param next the step that is offered first
     * @param length of the running order against the length wanted
     * @param rights music and releases, a phrase each
     * @param warnings what of these is missing or ends too soon
     * @param people who may have done a step
     */
    public record View(
            Form form,
            Form shotForm,
            String id,
            String above,
            String title,
            String lead,
            String reel,
            List<StepLine> steps,
            String next,
            List<TellLine> tells,
            List<ShotLine> shots,
            List<Part> parts,
            String length,
            List<Credits> credits,
            List<String> rights,
            List<String> warnings,
            List<Form.Choice> people,
            List<Frame.Cell> facts,
            LocalDate today) {}

    /** A part of the running order; {@code minutes} is empty while its length is not known. */
    public record Part(String title, String minutes) {}

    /**
     * A step.
     *
     * @param day empty while it is not marked
     * @param by who did it, or who is to do it; empty where nobody is named
     */
    public record StepLine(String value, String words, Optional<LocalDate> day, String by, boolean last) {}

    /**
     * A told task.
     *
     * @param far how much of it is done
     */
    public record TellLine(String id, String title, String share, String far, String lands) {}

    /** A shot with the version of its row. */
    public record ShotLine(
            long row,
            long version,
            String what,
            String size,
            boolean must,
            boolean once,
            Optional<LocalDate> captured,
            String clip,
            boolean off,
            String missed) {}

    @Override
    public View show(Request request) {
        Stored<Episode> stored = episode(request);
        Episode episode = stored.value();
        Formats formats = new Formats(request.settings().project().currency(), request.today());
        Optional<Forecast> forecast = Outlook.forecast(request);
        String next = next(episode);
        Form first = request.form(
                "mark",
                Map.of(
                        "day", request.today().toString(),
                        "step", next,
                        "by", request.person().map(one -> one.id().value()).orElse("")));
        return request.read(read -> {
            EpisodeSteps steps = EpisodeSteps.of(read, episode);
            return new View(
                    new Form(
                            first.csrf(),
                            first.answerKey(),
                            Optional.of(stored.version()),
                            first.values(),
                            first.errors()),
                    request.form("capture"),
                    episode.id().value(),
                    above(episode, formats),
                    episode.title(),
                    lead(request, episode, steps, forecast, formats),
                    steps.reel(),
                    steps(read, episode),
                    next,
                    tells(read, episode, forecast, formats),
                    shots(read, episode),
                    parts(read, episode),
                    EpisodeOrderPage.lead(
                            SegmentStore.ofEpisode(read, episode.id()).stream()
                                    .map(Stored::value)
                                    .toList(),
                            EpisodeOrderPage.wanted(request, episode)),
                    Credits.of(read, episode),
                    rights(read, episode, formats),
                    EpisodeRightsPage.warnings(read, episode, formats),
                    request.crew().stream()
                            .map(one -> new Form.Choice(one.id().value(), one.name()))
                            .toList(),
                    facts(request, read, episode),
                    request.today());
        });
    }

    private static List<Part> parts(Read read, Episode episode) {
        return SegmentStore.ofEpisode(read, episode.id()).stream()
                .map(Stored::value)
                .map(part -> new Part(
                        part.title(),
                        part.minutes()
                                .map(minutes -> minutes.text() + Formats.NBSP + "min")
                                .orElse("")))
                .toList();
    }

    private static List<String> rights(Read read, Episode episode, Formats formats) {
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

    private static String above(Episode episode, Formats formats) {
        String number = episode.number().map(n -> "no.\u00a0" + n).orElse(Codec.word(episode.kindOrDefault()));
        return number
                + episode.slot().map(day -> ", for " + formats.dateLong(day)).orElse("");
    }

    private static String lead(
            Request request, Episode episode, EpisodeSteps steps, Optional<Forecast> forecast, Formats formats) {
        if (episode.published().isPresent()) {
            return "Published on " + formats.dateLong(episode.published().get()) + ".";
        }
        String far = Formats.sentence(steps.words(formats)) + ".";
        if (episode.cut().isPresent()) {
            return far;
        }
        return far
                + forecast.flatMap(f -> f.episode(episode.id().value()))
                        .flatMap(Forecast.Episode::onTime)
                        .map(chance -> " " + Formats.sentence(Chances.words(chance)) + " that it is ready "
                                + Formats.count(request.settings().earlyDays(), "day") + " before its slot: "
                                + Chances.safety(chance) + ".")
                        .orElse(episode.slot().isEmpty() ? "" : forecast.isEmpty() ? " There is no forecast yet." : "");
    }

    private static String next(Episode episode) {
        for (Step step : Step.values()) {
            boolean later = java.util.Arrays.stream(Step.values())
                    .anyMatch(other ->
                            other.compareTo(step) >= 0 && other.day(episode).isPresent());
            if (!later) {
                return Codec.word(step);
            }
        }
        return Codec.word(Step.PUBLISHED);
    }

    private static List<StepLine> steps(Read read, Episode episode) {
        List<StepLine> lines = new ArrayList<>();
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
            lines.add(new StepLine(Codec.word(step), step.words(), step.day(episode), who, step == last));
        }
        return lines;
    }

    private static List<TellLine> tells(Read read, Episode episode, Optional<Forecast> forecast, Formats formats) {
        List<TellLine> lines = new ArrayList<>();
        for (Stored<Tell> tell : TellStore.ofEpisode(read, episode.id())) {
            Optional<Task> task =
                    TaskStore.TABLE.find(read, tell.value().task()).map(Stored::value);
            task.ifPresent(one -> lines.add(new TellLine(
                    one.id().value(),
                    one.title(),
                    tell.value()
                            .share()
                            .filter(share -> share.doubleValue() < 1)
                            .map(share -> Math.round(share.doubleValue() * 100) + " % of it")
                            .orElse("all of it"),
                    EpisodeSteps.far(read, one),
                    Lands.brief(
                            one.done(),
                            forecast,
                            forecast.flatMap(f -> f.task(one.id().value())).map(Forecast.Task::landing),
                            formats))));
        }
        return lines;
    }

    private static List<ShotLine> shots(Read read, Episode episode) {
        return ShotStore.ofEpisode(read, episode.id()).stream()
                .map(stored -> new ShotLine(
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
                .orElse("whoever has the trade edit");
        return (left == 0 ? "none" : Formats.hoursLong(left)) + " left of " + Formats.hoursLong(all) + ", " + who;
    }

    private static List<Frame.Cell> facts(Request request, Read read, Episode episode) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("Kind", Codec.word(episode.kindOrDefault()));
        episode.minutes().ifPresent(minutes -> facts.put("Length", minutes.text() + " minutes"));
        facts.put("Editing", editing(request, read, episode));
        facts.put("Footage", EpisodesFootagePage.words(Footage.of(read), episode));
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

    static Stored<Episode> episode(Request request) {
        return request.read(read -> EpisodeStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no episode " + request.part("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<Episode> stored = episode(request);
        String here = "/episodes/" + stored.value().id();
        switch (form.act()) {
            case "mark", "unmark" -> {
                Optional<Step> step = form.needed("step", Step.class);
                Optional<LocalDate> day =
                        form.act().equals("mark") ? form.needed("day", LocalDate.class) : Optional.empty();
                Optional<Id> by = form.act().equals("mark")
                        ? form.oneOf(
                                "by",
                                request.crew().stream().map(CrewMember::id).toList())
                        : Optional.empty();
                Shown shown = new Shown(stored.row(), form.version());
                return request.save(write -> {
                    MarkEpisode.Marked marked =
                            MarkEpisode.mark(write, shown, step.orElseThrow(), day, request.today());
                    MarkEpisode.by(write, stored.value().id(), step.get(), by);
                    StringBuilder said = new StringBuilder(
                            day.map(d -> Formats.sentence(step.get().words()) + " on " + Formats.dayMonthLong(d) + ".")
                                    .orElse("The mark “" + step.get().words() + "” is taken away."));
                    for (Problem remark : marked.remarks()) {
                        said.append(' ')
                                .append(Formats.sentence(remark.sentence()))
                                .append('.');
                    }
                    return Saved.to(here).saying(said.toString());
                });
            }
            case "off" -> {
                long row = form.needed("shot", Integer.class).orElse(0);
                return request.save(write -> {
                    own(write, stored.value(), row);
                    CallOffShot.callOff(write, new Shown(row, form.version()));
                    return Saved.to(here).saying("Not filmed, called off for safety.");
                });
            }
            default -> {
                long row = form.needed("shot", Integer.class).orElse(0);
                Optional<LocalDate> day =
                        form.act().equals("capture") ? form.needed("day", LocalDate.class) : Optional.empty();
                String clip = form.text("clip");
                return request.save(write -> {
                    Shot shot = own(write, stored.value(), row);
                    Shown shown = new Shown(row, form.version());
                    if (day.isPresent()) {
                        CaptureShot.capture(write, shown, day.get(), clip, request.today());
                    } else {
                        CaptureShot.takeBack(write, shown);
                    }
                    return Saved.to(here)
                            .saying(
                                    day.isPresent()
                                            ? "Captured: " + shot.what() + "."
                                            : "Still to be captured: " + shot.what() + ".");
                });
            }
        }
    }

    private static Shot own(Read read, Episode episode, long row) {
        return ShotStore.TABLE
                .find(read, row)
                .map(Stored::value)
                .filter(shot ->
                        shot.episode().map(id -> Choices.same(id, episode.id())).orElse(false))
                .orElseThrow(() -> new NotFound("This shot is not there any more."));
    }
}
