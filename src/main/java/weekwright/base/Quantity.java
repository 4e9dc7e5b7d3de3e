package weekwright.base;

import java.math.BigDecimal;

/**
 * A decimal kept exactly, up to four places: quantities, unit prices, percents, shares, days, minutes of film. Equal
 * values are equal whatever their text (1.50 and 1.5).
 */
public record Quantity(BigDecimal value) implements Comparable<Quantity> {
    public static final Quantity ZERO = new Quantity(BigDecimal.ZERO);
    public static final Quantity ONE = new Quantity(BigDecimal.ONE);

    public Quantity {
        value = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        if (value.scale() > 4) {
            throw new IllegalArgumentException("more than four places: " + value);
        }
        if (value.scale() < 0) {
            value = value.setScale(0);
        }
    }

    public static Quantity of(long whole) {
        return new Quantity(BigDecimal.valueOf(whole));
    }

    public static Quantity parse(String text, Reading reading) throws Refused {
        BigDecimal value =
                Decimals.parse(text, reading, "a number", "12 or 2.5").stripTrailingZeros();
        if (value.scale() > 4) {
            throw new Refused("has more than four decimal places", "write at most four");
        }
        return new Quantity(value);
    }

    /** Shortest form: {@code 8}, never {@code 8.0}. */
    public String text() {
        return Decimals.text(value);
    }

    public double doubleValue() {
        return value.doubleValue();
    }

    @Override
    public int compareTo(Quantity other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return text();
    }
}
