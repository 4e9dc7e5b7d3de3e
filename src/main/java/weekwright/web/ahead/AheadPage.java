package weekwright.web.ahead;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.forecast.Forecast;
import weekwright.forecast.Forecasts;
import weekwright.history.Examples;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture;
import weekwright.web.crew.CrewBackupsPage;
import weekwright.web.kit.Access;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/**
 * Ahead: the next landing, the next publication day, the story in hand, the next purchase and the next order, with one
 * picture of all three. Never waits for a forecast: it shows the last one, and its script brings the new one when it is
 * there.
 */
public final class AheadPage implements Page {

    /**
     * @param key names the forecast that is shown; the script asks whether there is another
     * @param moving whether a newer one is being drawn
     * @param failed why the last try did not finish; empty if it did
     * @param stopped whether somebody has stopped the drawing of a newer one
     * @param needs what is missing for any forecast; empty where nothing is
     * @param guessed how much of the forecast is guessed (rule 121); empty where nothing is
     * @param backup that the last backup is too old; empty while all is well
     * @param sight the forecast; empty before the first
     */
    public record View(
            String key,
            boolean moving,
            boolean failed,
            boolean stopped,
            Form form,
            List<Need> needs,
            boolean crew,
            String guessed,
            boolean example,
            String backup,
            Optional<Sight> sight) {}

    /** A thing that a forecast needs, and where it is said. */
    public record Need(String text, String link) {}

    /**
     * One forecast in words and as a picture.
     *
     * @param drawings SVG text, for wide, middle and narrow screens
     * @param offSheet stages that the picture does not show; may be empty
     * @param weeks which weeks are drawn, and the ways to others
     * @param moved stages then and now; empty where nothing was said a week ago
     */
    public record Sight(
            AheadSentences.Answer chief,
            List<AheadSentences.Answer> answers,
            String drawings,
            AheadWeeks.Ways weeks,
            String offSheet,
            List<AheadPicture.Table> tables,
            String since,
            List<Moved> moved,
            List<Facts> facts) {}

    /** A stage's landing as it was said before and as it is now. */
    public record Moved(String stage, String then, String now, String days, String because) {}

    /** What has changed since, under the cause it belongs to. */
    public record Facts(String cause, List<String> facts) {}

    @Override
    public View show(Request request) {
        Forecasts.Look look = request.forecast();
        AheadFacts facts = request.read(AheadFacts::of);
        List<Need> needs = needs(facts, request);
        Optional<Sight> sight =
                needs.isEmpty() ? look.shown().map(shown -> sight(request, shown, facts)) : Optional.empty();
        return new View(
                look.key(),
                look.state() == Forecasts.State.RUNNING && needs.isEmpty(),
                look.state() == Forecasts.State.FAILED,
                look.state() == Forecasts.State.STOPPED,
                request.form("stop"),
                needs,
                request.access() == Access.CREW,
                look.shown().map(shown -> guessed(shown.forecast())).orElse(""),
                request.read(Examples::there),
                CrewBackupsPage.warning(request),
                sight);
    }

    /** Stops the drawing, or begins it again; nothing of the project is touched. */
    @Override
    public Answer submit(Request request) throws Exception {
        request.form().check();
        if (request.form().act().equals("draw")) {
            request.forecasts().draw(request.today());
        } else {
            request.forecasts().stop(request.today());
        }
        return Answer.to("/ahead");
    }

    /** "Rough: 2 tasks and 3 stages are guessed." Empty where nothing is. */
    static String guessed(Forecast forecast) {
        int tasks = forecast.stages().stream()
                .mapToInt(stage -> stage.rough().tasks())
                .sum();
        int minutes = forecast.stages().stream()
                .mapToInt(stage -> stage.rough().hours().minutes())
                .sum();
        long stages = forecast.stages().stream()
                .filter(stage ->
                        stage.rough().tasks() == 0 && stage.rough().hours().minutes() > 0)
                .count();
        if (tasks == 0 && stages == 0) {
            return "";
        }
        List<String> parts = new ArrayList<>();
        if (tasks > 0) {
            parts.add(Formats.count(tasks, "task"));
        }
        if (stages > 0) {
            parts.add(Formats.count(stages, "stage"));
        }
        boolean one = tasks + stages == 1;
        return "Rough: " + Formats.list(parts) + (one ? " is" : " are") + " guessed, about "
                + Formats.hoursLong(Math.max(60, (minutes + 30) / 60 * 60)) + " of work.";
    }

    private static List<Need> needs(AheadFacts facts, Request request) {
        List<Need> needs = new ArrayList<>();
        if (facts.stages().isEmpty()) {
            needs.add(new Need("A stage: a part of the build that is done one day.", "/start/build"));
        }
        boolean rough =
                facts.stages().stream().anyMatch(stage -> stage.roughLikely().isPresent());
        if (facts.tasks().isEmpty() && !rough) {
            needs.add(new Need("Its tasks, or rough hours for the whole stage.", "/start/build"));
        }
        if (request.crew().isEmpty()) {
            needs.add(new Need("Somebody who works on it, with their hours of the week.", "/crew"));
        }
        return needs;
    }

    private static Sight sight(Request request, Forecasts.Shown shown, AheadFacts facts) {
        Formats formats = new Formats(facts.settings().project().currency(), request.today());
        Optional<Forecasts.Earlier> earlier = request.forecasts().earlier();
        Optional<weekwright.forecast.Moved> why = request.forecasts().moved();
        AheadSentences sentences = new AheadSentences(shown, facts, formats, earlier);
        AheadWeeks weeks = AheadWeeks.of(request);
        AheadModel model = new AheadModel(
                shown.forecast(),
                shown.names(),
                facts,
                sentences,
                weeks.pane(facts, earlier.map(Forecasts.Earlier::forecast)));
        AheadPicture.Model drawn = model.model();
        AheadPicture picture = new AheadPicture(drawn, formats, model.leading(drawn));
        return new Sight(
                sentences.landing(),
                List.of(sentences.nextSlot(), sentences.inHand(), sentences.purchase(), sentences.orderBy()),
                picture.drawings(),
                weeks.ways(formats, earlier.map(Forecasts.Earlier::day)),
                picture.offSheet(),
                picture.tables(shown.forecast().horizon()),
                earlier.map(then -> formats.dateLong(then.day())).orElse(""),
                earlier.map(then -> moved(then.forecast(), shown.forecast(), formats, why))
                        .orElse(List.of()),
                why.map(one -> MovedWords.facts(one, formats)).orElse(List.of()));
    }

    private static List<Moved> moved(
            Forecast then, Forecast now, Formats formats, Optional<weekwright.forecast.Moved> why) {
        List<Moved> moved = new ArrayList<>();
        for (Forecast.Stage stage : now.stages()) {
            Optional<LocalDate> old =
                    then.stage(stage.id()).flatMap(s -> s.landing().p50());
            Optional<LocalDate> today = stage.landing().p50();
            boolean past =
                    stage.landing().p90().map(day -> !day.isAfter(now.asOf())).orElse(false);
            if (old.isPresent() && today.isPresent() && !past) {
                moved.add(new Moved(
                        stage.name(),
                        formats.dateShort(old.get()),
                        formats.dateShort(today.get()),
                        Formats.daysMoved(ChronoUnit.DAYS.between(old.get(), today.get())),
                        why.flatMap(one -> one.stage(stage.id()))
                                .map(MovedWords::because)
                                .orElse("")));
            }
        }
        return moved;
    }
}
