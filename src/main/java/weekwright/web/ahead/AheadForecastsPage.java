package weekwright.web.ahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.Read;
import weekwright.forecast.Forecast;
import weekwright.forecast.Forecasts;
import weekwright.forecast.SavedForecast;
import weekwright.forecast.SavedForecastStore;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** The forecasts that are kept: the first of each day for a fortnight, then of each week, and any by hand under a name. */
public final class AheadForecastsPage implements Page {
    private static final int LONGEST_NAME = 80;
    /** Of more by hand only the newest say their dates. */
    private static final int SAID = 30;

    /**
     * @param standing which one the button keeps; empty before the first is finished
     * @param byHand newest first
     * @param others days of those kept by themselves, newest first
     */
    public record View(Form form, String standing, List<Line> byHand, List<LocalDate> others) {}

    /** One kept by hand, with what it said of each stage that was open then. */
    public record Line(long id, String name, LocalDate day, String said) {}

    @Override
    public View show(Request request) {
        Formats formats = request.formats();
        Optional<Forecasts.Shown> shown = request.forecast()
                .shown()
                .filter(one -> !one.firstLook() && one.plan().isPresent());
        int digits = request.settings().moneyDigits();
        return request.read(read -> {
            List<SavedForecastStore.Line> all = SavedForecastStore.lines(read);
            return new View(
                    request.form("keep"),
                    shown.map(one -> "the one of "
                                    + formats.dateLong(one.forecast().asOf()) + ", "
                                    + Formats.grouped(one.forecast().trials()) + " futures")
                            .orElse(""),
                    byHand(read, all, digits, formats),
                    all.stream()
                            .filter(one -> !one.byHand())
                            .map(SavedForecastStore.Line::day)
                            .toList());
        });
    }

    private static List<Line> byHand(Read read, List<SavedForecastStore.Line> all, int digits, Formats formats) {
        List<Line> lines = new ArrayList<>();
        for (SavedForecastStore.Line one : all) {
            if (one.byHand()) {
                String said = lines.size() >= SAID
                        ? ""
                        : SavedForecastStore.find(read, one.id())
                                .map(saved -> said(saved.forecast(digits), formats))
                                .orElse("");
                lines.add(new Line(one.id(), one.name(), one.day(), said));
            }
        }
        return lines;
    }

    /** {@code Weir 17 Dec, wheel 4 Mar 2027}: even chances. */
    private static String said(Forecast forecast, Formats formats) {
        List<String> parts = new ArrayList<>();
        for (Forecast.Stage stage : forecast.stages()) {
            boolean past = stage.landing()
                    .p90()
                    .map(day -> !day.isAfter(forecast.asOf()))
                    .orElse(false);
            if (!past) {
                parts.add(stage.name() + " "
                        + stage.landing()
                                .p50()
                                .map(formats::dateShort)
                                .orElse("after " + formats.dateShort(forecast.horizon())));
            }
        }
        return parts.isEmpty() ? "Nothing was open." : Formats.list(parts) + ".";
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        if (form.act().equals("let-go")) {
            long id = form.needed("id", Integer.class).orElse(0);
            return request.save(write -> {
                if (!SavedForecastStore.letGo(write, id)) {
                    throw new NotFound("This forecast is not kept any more.");
                }
                return Saved.to("/ahead/forecasts").saying("It is let go.");
            });
        }
        String name = form.neededText("name");
        if (name.length() > LONGEST_NAME) {
            form.fault("name", name, "a name has at most " + LONGEST_NAME + " characters", "shorten it");
        }
        Optional<SavedForecast> saved = request.forecasts().toKeep(name);
        return request.save(write -> {
            SavedForecastStore.insert(
                    write,
                    saved.orElseThrow(() -> new Rejected(List.of(Problem.fault(
                            "",
                            "",
                            "no forecast is finished yet",
                            "wait until the first is drawn and press it again")))));
            return Saved.to("/ahead/forecasts").saying("The forecast is kept as “" + name + "”.");
        });
    }
}
