package weekwright.engine;

import java.util.OptionalDouble;

/**
 * Earned value of a day, in any one unit: CV = EV - AC, SV = EV - PV, CPI = EV/AC, SPI = EV/PV, EAC = BAC/CPI. What divides by
 * nothing is empty.
 *
 * @param budget all that was planned (BAC)
 * @param planned what was to be done by the day (PV)
 * @param earned what is done, at its planned size (EV)
 * @param actual what it took (AC)
 */
public record EarnedValue(double budget, double planned, double earned, double actual) {
    private static OptionalDouble ratio(double above, double below) {
        return below == 0 ? OptionalDouble.empty() : OptionalDouble.of(above / below);
    }

    public double costVariance() {
        return earned - actual;
    }

    public double scheduleVariance() {
        return earned - planned;
    }

    public OptionalDouble costIndex() {
        return ratio(earned, actual);
    }

    public OptionalDouble scheduleIndex() {
        return ratio(earned, planned);
    }

    /** What all of it takes if the rest goes as it has gone (EAC). */
    public OptionalDouble atCompletion() {
        return earned == 0 ? OptionalDouble.empty() : ratio(budget * actual, earned);
    }
}
