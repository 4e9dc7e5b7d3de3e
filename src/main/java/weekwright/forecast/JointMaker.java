package weekwright.forecast;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;

/**
 * How likely a stage has landed by a day without the cash ever having gone under the reserve. Late work and thin money come
 * together, so the chance of both is counted future by future and not made from the two chances. Pure.
 */
final class JointMaker {
    /** From here on it has almost certainly landed (rule 115). */
    private static final double ALMOST_CERTAIN = 0.97;

    private JointMaker() {}

    /** By month's end; empty for a stage that has landed or has nothing to land. */
    static List<Forecast.Joint> of(Inputs inputs, Outcome outcome, int stage) {
        if (chances(outcome.workFirst, stage, inputs.asOf()).landed() == 1
                || outcome.held.stageLanding[stage][0] == Inputs.NONE) {
            return List.of();
        }
        List<Forecast.Joint> list = new ArrayList<>();
        for (int month : outcome.months) {
            LocalDate by = YearMonth.of(month / 12, month % 12 + 1).atEndOfMonth();
            int day = (int) by.toEpochDay();
            if (day >= outcome.horizon) {
                break;
            }
            Forecast.Chances held = chances(outcome.held, stage, day);
            Forecast.Chances first = chances(outcome.workFirst, stage, day);
            if (held.landed() > 0 || first.landed() > 0) {
                list.add(new Forecast.Joint(by, held, first));
            }
            if (held.landed() >= ALMOST_CERTAIN) {
                break;
            }
        }
        return list;
    }

    /** Counted over all futures of an answer. */
    static Forecast.Chances chances(Outcome.Answer answer, int stage, int day) {
        int trials = answer.firstUnderReserve.length;
        int landed = 0;
        int kept = 0;
        int both = 0;
        for (int trial = 0; trial < trials; trial++) {
            boolean there = answer.stageLanding[stage][trial] <= day;
            boolean enough = answer.firstUnderReserve[trial] > day;
            landed += there ? 1 : 0;
            kept += enough ? 1 : 0;
            both += there && enough ? 1 : 0;
        }
        return new Forecast.Chances((double) landed / trials, (double) kept / trials, (double) both / trials);
    }
}
