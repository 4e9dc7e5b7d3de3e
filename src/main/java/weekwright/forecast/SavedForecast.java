package weekwright.forecast;

import java.time.Instant;
import java.time.LocalDate;
import weekwright.engine.Inputs;

/**
 * A forecast as it is kept: named by day, inputs version, seed, trials and engine version (rule 108).
 *
 * @param day the as-of day
 * @param engine version of the engine
 * @param projectVersion of the inputs
 * @param byHand whether somebody asked for it to be kept
 * @param name that it was given, "" where it was kept by itself
 * @param ranks the rank list as JSON
 * @param results the forecast as JSON
 * @param inputs compressed JSON; not copied
 */
public record SavedForecast(
        LocalDate day,
        Instant madeAt,
        long seed,
        int trials,
        String engine,
        long projectVersion,
        boolean byHand,
        String name,
        String ranks,
        String results,
        byte[] inputs) {
    /** A finished forecast as it is kept. */
    static SavedForecast of(ForecastRun.Made made, Instant at, boolean byHand, String name) {
        return new SavedForecast(
                made.basis().asOf(),
                at,
                Forecasts.SEED,
                made.forecast().trials(),
                made.forecast().engine(),
                made.basis().version(),
                byHand,
                name,
                ForecastJson.kept(made.plan().keep()),
                new ForecastJson(made.basis().moneyDigits()).text(made.forecast()),
                ForecastJson.packed(made.basis().inputs()));
    }

    /** The forecast in dates, with chances as rounded. */
    public Forecast forecast(int moneyDigits) {
        return new ForecastJson(moneyDigits).forecast(results);
    }

    /** What it was made from. */
    public Inputs unpackedInputs() {
        return ForecastJson.unpacked(inputs);
    }
}
