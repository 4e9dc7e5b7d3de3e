package weekwright.engine;

import java.util.OptionalDouble;

/**
 * Earned schedule: the time by which the plan had as much as is earned, ES = C + (EV - PV_C)/(PV_{C+1} - PV_C) with C the last
 * period whose plan is not over what is earned; SV(t) = ES - AT, SPI(t) = ES/AT, forecast duration = PD/SPI(t).
 *
 * @param earned time (ES), in periods
 * @param actual time gone (AT)
 * @param planned duration of all of it (PD)
 */
public record EarnedSchedule(double earned, double actual, double planned) {
    /**
     * @param plan cumulated planned value at the end of each period, never falling; before the first it is nothing
     * @param earned value so far
     * @param actual periods gone
     */
    public static EarnedSchedule of(double[] plan, double earned, double actual) {
        int last = 0;
        while (last < plan.length && plan[last] <= earned) {
            last++;
        }
        double time = last;
        if (last < plan.length) {
            double before = last == 0 ? 0 : plan[last - 1];
            time += (earned - before) / (plan[last] - before);
        }
        return new EarnedSchedule(time, actual, plan.length);
    }

    public double variance() {
        return earned - actual;
    }

    public OptionalDouble index() {
        return actual == 0 ? OptionalDouble.empty() : OptionalDouble.of(earned / actual);
    }

    /** How long all of it takes if it goes on so. */
    public OptionalDouble duration() {
        return earned == 0 ? OptionalDouble.empty() : OptionalDouble.of(planned * actual / earned);
    }
}
