package weekwright.web.parts;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.forecast.Forecast;
import weekwright.render.Formats;

/** Landing dates in words. */
public final class Lands {
    private Lands() {}

    /**
     * For a table: "done 19 Sep", "about 9 Dec", "after 25 Nov 2029" for what lands past the horizon (rule 7), "no forecast
     * yet".
     */
    public static String brief(
            Optional<LocalDate> done, Optional<Forecast> forecast, Optional<Forecast.Days> landing, Formats formats) {
        if (done.isPresent()) {
            return "done " + formats.dateShort(done.get());
        }
        if (forecast.isEmpty() || landing.isEmpty()) {
            return "no forecast yet";
        }
        return landing.get()
                .p50()
                .map(day -> formats.far(day).startsWith("too") ? formats.far(day) : "about " + formats.dateShort(day))
                .orElse(
                        landing.get().some()
                                ? "after " + formats.dateShort(forecast.get().horizon())
                                : "nothing to do");
    }

    /** The range beside it: "3 to 19 December"; empty where there is none to give. */
    public static String range(Optional<Forecast.Days> landing, Formats formats) {
        if (landing.isEmpty()
                || landing.get().p10().isEmpty()
                || landing.get().p90().isEmpty()) {
            return "";
        }
        return formats.span(landing.get().p10().get(), landing.get().p90().get());
    }

    /** A whole sentence for a page's head. */
    public static String sentence(Optional<Forecast.Days> landing, Formats formats, LocalDate horizon) {
        if (landing.isEmpty()) {
            return "There is no forecast yet; its date stands here as soon as one is drawn.";
        }
        Forecast.Days days = landing.get();
        if (days.p10().isPresent() && days.p50().isPresent() && days.p90().isPresent()) {
            return "It is done "
                    + formats.landingRange(
                            days.p10().get(), days.p50().get(), days.p90().get())
                    + formats.comingOrGone(days.p50().get()) + ".";
        }
        if (days.p10().isPresent()) {
            return "It is done from " + formats.date(days.p10().get()) + " on, perhaps not before "
                    + formats.date(horizon) + ".";
        }
        return days.some() ? "It is not done before " + formats.date(horizon) + "." : "There is nothing to do in it.";
    }
}
