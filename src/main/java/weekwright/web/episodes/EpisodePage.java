package weekwright.web.episodes;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.build.CrewMember;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.CallOffShot;
import weekwright.episodes.CaptureShot;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.MarkEpisode;
import weekwright.episodes.SegmentStore;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
import weekwright.episodes.Step;
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
        Formats formats = request.formats();
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
                    EpisodeLines.steps(read, episode),
                    next,
                    EpisodeLines.tells(read, episode, forecast, formats),
                    EpisodeLines.shots(read, episode),
                    EpisodeLines.parts(read, episode),
                    EpisodeOrderPage.lead(
                            SegmentStore.ofEpisode(read, episode.id()).stream()
                                    .map(Stored::value)
                                    .toList(),
                            EpisodeOrderPage.wanted(request, episode)),
                    Credits.of(read, episode),
                    EpisodeLines.rights(read, episode, formats),
                    EpisodeRightsPage.warnings(read, episode, formats),
                    request.crew().stream()
                            .map(one -> new Form.Choice(one.id().value(), one.name()))
                            .toList(),
                    EpisodeLines.facts(request, read, episode),
                    request.today());
        });
    }

    private static String above(Episode episode, Formats formats) {
        String number = episode.number().map(n -> "no.\u00a0" + n).orElse(Codec.word(episode.kindOrDefault()));
        return number
                + episode.slot()
                        .map(day -> ", for " + formats.dateLong(day)
                                + (episode.published().isEmpty() ? formats.comingOrGone(day) : ""))
                        .orElse("");
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
                                + early(request.settings().earlyDays()) + ": " + Chances.safety(chance) + ".")
                        .orElse(episode.slot().isEmpty() ? "" : forecast.isEmpty() ? " There is no forecast yet." : "");
    }

    /** {@code two days before its slot}, {@code on its day}. */
    private static String early(int days) {
        return days == 0 ? "on its day" : Formats.counted(days, "day", "days") + " before its slot";
    }

    private static String next(Episode episode) {
        for (Step step : Step.values()) {
            boolean later = Arrays.stream(Step.values())
                    .anyMatch(other ->
                            other.compareTo(step) >= 0 && other.day(episode).isPresent());
            if (!later) {
                return Codec.word(step);
            }
        }
        return Codec.word(Step.PUBLISHED);
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
                .filter(shot -> shot.episode().map(id -> id.same(episode.id())).orElse(false))
                .orElseThrow(() -> new NotFound("This shot is not there any more."));
    }
}
