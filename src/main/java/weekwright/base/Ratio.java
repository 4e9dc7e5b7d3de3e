package weekwright.base;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** An exact quotient of two decimals: lengths in inches, densities by the cubic foot, thirds. Rounded once, at the end. */
record Ratio(BigDecimal over, BigDecimal under) {
    static final Ratio ZERO = of("0");
    static final Ratio ONE = of("1");

    /** The number of the circle; 30 places are more than any rule can measure. */
    static final Ratio PI = of("3.141592653589793238462643383280");

    Ratio {
        if (under.signum() == 0) {
            throw new ArithmeticException("divided by nothing");
        }
    }

    static Ratio of(String decimal) {
        return new Ratio(new BigDecimal(decimal), BigDecimal.ONE);
    }

    Ratio times(Ratio other) {
        return new Ratio(over.multiply(other.over), under.multiply(other.under));
    }

    Ratio dividedBy(Ratio other) {
        return new Ratio(over.multiply(other.under), under.multiply(other.over));
    }

    Ratio plus(Ratio other) {
        return new Ratio(over.multiply(other.under).add(other.over.multiply(under)), under.multiply(other.under));
    }

    Ratio minus(Ratio other) {
        return plus(new Ratio(other.over.negate(), other.under));
    }

    /** To so many places; no more is lost than here. */
    BigDecimal rounded(int places, RoundingMode mode) {
        return over.divide(under, places, mode);
    }

    boolean isWhole() {
        return over.remainder(under).signum() == 0;
    }

    int signum() {
        return over.signum() * under.signum();
    }

    int compare(Ratio other) {
        return minus(other).signum();
    }
}
