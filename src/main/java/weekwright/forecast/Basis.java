package weekwright.forecast;

import java.time.LocalDate;
import java.util.Currency;
import weekwright.engine.Inputs;

/**
 * What a forecast is made from: the engine's inputs as of a day, and what is needed to tell the result in words.
 *
 * @param version the project's version as it was read
 * @param currency ISO 4217
 */
public record Basis(Inputs inputs, Names names, String currency, long version) {
    /** The as-of day. */
    public LocalDate asOf() {
        return LocalDate.ofEpochDay(inputs.asOf());
    }

    /** Digits of the currency: 2 for EUR. */
    public int moneyDigits() {
        return Currency.getInstance(currency).getDefaultFractionDigits();
    }
}
