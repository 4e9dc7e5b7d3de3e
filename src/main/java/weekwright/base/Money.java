package weekwright.base;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Locale;

/**
 * An amount in whole minor units of the project's currency; negative where money goes out. Text has all digits of the
 * currency: 1250 minor units are {@code 12.50} in EUR, {@code 1250} in JPY, {@code 1.250} in KWD.
 */
public record Money(long minor) implements Comparable<Money> {
    public static final Money ZERO = new Money(0);
    private static final int THOUSANDS = 3;

    /** Reads an amount; more digits than the currency has are refused, fewer are filled up. */
    public static Money parse(String text, Reading reading) throws Refused {
        int digits = reading.moneyDigits();
        String example = new Money(1250).text(digits);
        if (reading.typed() && digits > 0 && digits < THOUSANDS && Decimals.isAmbiguous(text)) {
            String cut = text.strip().substring(0, text.strip().length() - THOUSANDS + digits);
            throw Decimals.readTwoWays(text, cut.replace(',', '.'));
        }
        BigDecimal value = Decimals.parse(text.replace('−', '-'), reading, "an amount of money", example)
                .stripTrailingZeros();
        if (value.scale() > digits) {
            throw new Refused(
                    "has more decimal places than the currency",
                    digits == 0 ? "write whole units" : "write at most " + digits + " places");
        }
        return new Money(value.movePointRight(digits).longValueExact());
    }

    public String text(int digits) {
        return BigDecimal.valueOf(minor, digits).toPlainString();
    }

    public Money plus(Money other) {
        return new Money(Math.addExact(minor, other.minor));
    }

    public Money minus(Money other) {
        return new Money(Math.subtractExact(minor, other.minor));
    }

    public Money negated() {
        return new Money(Math.negateExact(minor));
    }

    public boolean isNegative() {
        return minor < 0;
    }

    @Override
    public int compareTo(Money other) {
        return Long.compare(minor, other.minor);
    }

    /**
     * Digits after the point of an ISO 4217 code.
     *
     * @throws Refused for a code that is none, or that has no minor unit (XXX)
     */
    public static int digits(String code) throws Refused {
        try {
            int digits = Currency.getInstance(code).getDefaultFractionDigits();
            if (digits >= 0) {
                return digits;
            }
        } catch (IllegalArgumentException e) {
            // no such code: told below with the same words
        }
        String upper = code.toUpperCase(Locale.ROOT);
        boolean small = !upper.equals(code)
                && Currency.getAvailableCurrencies().stream()
                        .anyMatch(one -> one.getCurrencyCode().equals(upper) && one.getDefaultFractionDigits() >= 0);
        throw new Refused(
                "is not a currency of ISO 4217", small ? "write " + upper : "write its three letters, such as EUR");
    }
}
