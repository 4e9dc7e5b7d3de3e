package weekwright.web.parts;

import java.util.Optional;
import weekwright.forecast.Forecast;
import weekwright.forecast.Forecasts;
import weekwright.render.Formats;
import weekwright.web.kit.Request;

/** The newest finished forecast, as a page shows it; empty until there is one. Never waits. */
public final class Outlook {
    private Outlook() {}

    public static Optional<Forecasts.Shown> shown(Request request) {
        return request.forecast().shown();
    }

    /** Its dates, money and chances. */
    public static Optional<Forecast> forecast(Request request) {
        return shown(request).map(Forecasts.Shown::forecast);
    }

    /** In which futures something was counted: {@code 10,000 futures drawn from 25 November 2026, seed 1.} */
    public static String drawn(Forecast forecast, Formats formats) {
        return Formats.grouped(forecast.trials()) + " futures drawn from " + formats.dateLong(forecast.asOf())
                + ", seed " + forecast.seed() + ".";
    }
}
